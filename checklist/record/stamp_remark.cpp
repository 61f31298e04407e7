// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/stamp_remark.h"

namespace walkdown::record {

namespace {

constexpr std::int64_t kSlack_ms = 60'000;  // our choice: a phone's clock is nearer than that

}  // namespace

std::string stamp_remark(const StampAt& at, bool none_given,
                         const std::optional<std::string>& not_vouched) {
  const std::string said = "entry " + std::to_string(at.n) + ": " + at.stamp.authority +
                           " signed that the first " + std::to_string(at.entries) +
                           " entries stood at " + stamp_time(at.stamp.at_ms);
  if (none_given) {
    return said +
           "; no certificates of authorities were given, so whose signature this is is not "
           "known, and it shows nothing yet";
  }
  if (not_vouched) return said + "; " + *not_vouched + ", so it shows nothing";
  return said + "; its certificate leads to an authority that you gave";
}

std::optional<std::string> clocks_apart(const StampAt& at) {
  const std::int64_t stamped_ms = at.stamp.at_ms;
  std::int64_t apart_ms = 0;
  if (stamped_ms > at.entry_at_ms + kSlack_ms) apart_ms = stamped_ms - at.entry_at_ms;
  if (at.head_at_ms && stamped_ms < *at.head_at_ms - kSlack_ms) {
    apart_ms = *at.head_at_ms - stamped_ms;
  }
  if (apart_ms == 0) return std::nullopt;
  return "entry " + std::to_string(at.n) + ": the station's clock and the authority's are " +
         std::to_string(apart_ms / 1000) + " s apart at least";
}

}  // namespace walkdown::record
