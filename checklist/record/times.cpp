// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/times.h"

#include <cstdlib>

#include "checklist/record/clock.h"
#include "checklist/record/json_text.h"

namespace walkdown::record {

namespace {

std::optional<std::int64_t> whole(std::string_view body, const char* name) {
  const nlohmann::json tree = parse_canonical(body);
  const auto found = tree.find(name);
  if (found == tree.end() || !found->is_number_integer()) return std::nullopt;
  return found->get<std::int64_t>();
}

}  // namespace

std::optional<std::int64_t> Times::step(std::int64_t at_ms, std::int64_t up_ms) const {
  const std::int64_t off = at_ms - up_ms - offset_ms_;
  if (at_ms >= at_ms_ && std::abs(off) <= kPaceMs) return std::nullopt;
  return off;
}

bool Times::same_run(std::int64_t at_ms, std::int64_t up_ms) const {
  return up_ms >= up_ms_ && std::abs(at_ms - up_ms - offset_ms_) <= kPaceMs;
}

std::optional<std::string> Times::check(const EntryView& entry) const {
  if (entry.n == 0) return std::nullopt;
  if (entry.kind == "resumed") {
    if (entry.at_ms >= at_ms_ || whole(entry.body, "back_ms") == at_ms_ - entry.at_ms) {
      return std::nullopt;
    }
    return "the time went back to " + rfc3339(entry.at_ms) + ", and the entry does not tell it";
  }
  if (entry.up_ms < up_ms_) return "the boot clock went back, and no entry tells of a reboot";
  const auto by = step(entry.at_ms, entry.up_ms);
  if (entry.kind == "clock-step") {
    if (whole(entry.body, "by_ms") == entry.at_ms - entry.up_ms - offset_ms_) return std::nullopt;
    return "the clock stepped by another time than the entry tells";
  }
  if (!by) return std::nullopt;
  return entry.at_ms < at_ms_
             ? "the time went back to " + rfc3339(entry.at_ms) + ", and no entry tells it"
             : "the clock stepped by " + std::to_string(*by) + " ms, and no entry tells it";
}

std::optional<std::string> Times::accept(const EntryView& entry) {
  if (auto why = check(entry)) return why;
  const bool anew = entry.n == 0 || entry.kind == "resumed" || entry.kind == "clock-step";
  if (anew) offset_ms_ = entry.at_ms - entry.up_ms;
  at_ms_ = entry.at_ms;
  up_ms_ = entry.up_ms;
  return std::nullopt;
}

}  // namespace walkdown::record
