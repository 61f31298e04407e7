// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/seconds.h"

#include <algorithm>

#include "checklist/day/gate.h"

namespace walkdown::day {
namespace {

// Who may stand by the lead in what is not an item.
Roles either(const Checklist& list) {
  Roles roles = list.release_second;
  roles.insert(roles.end(), list.lead.begin(), list.lead.end());
  return roles;
}

bool waits(const Claim& claim, std::uint64_t n) { return claim.n == n && claim.second.empty(); }

std::optional<OpenClaim> of_items(const View& view, std::uint64_t n) {
  for (std::size_t i = 0; i < view.day.items.size(); ++i) {
    const ItemLog& log = view.day.items[i];
    const Item& item = view.list.items[i];
    if (log.answer && waits(log.answer->claim, n) && !item.second.empty()) {
      return OpenClaim{log.answer->claim, item.second, {}, false};
    }
    if (log.waiver && waits(log.waiver->claim, n)) {
      return OpenClaim{log.waiver->claim, either(view.list), {}, false};
    }
  }
  return std::nullopt;
}

void set(Claim& claim, const Confirmed& second) {
  claim.second = second.by;
  claim.second_n = second.n;
}

bool confirm_return(std::uint64_t n, Day& day) {
  const auto found = std::find_if(day.returns.begin(), day.returns.end(),
                                  [&](const Return& each) { return waits(each.claim, n); });
  if (found == day.returns.end()) return false;
  (found->tag ? day.tags : day.in_field).erase(found->person);
  day.returns.erase(found);
  return true;
}

}  // namespace

std::optional<OpenClaim> open_claim(const View& view, std::uint64_t n) {
  if (auto found = of_items(view, n)) return found;
  const Day& day = view.day;
  for (const auto& [pin, waiver] : day.pin_waivers) {
    if (waits(waiver.claim, n)) return OpenClaim{waiver.claim, either(view.list), {}, false};
  }
  for (const Return& each : day.returns) {
    if (waits(each.claim, n)) return OpenClaim{each.claim, either(view.list), each.person, false};
  }
  if (day.release.word == ReleaseWord::pending && waits(day.release.claim, n)) {
    return OpenClaim{day.release.claim, view.list.release_second, {}, true};
  }
  return std::nullopt;
}

void confirm(const View& view, std::uint64_t n, const Confirmed& second, Moment moment, Day& day) {
  for (ItemLog& log : day.items) {
    if (log.answer && waits(log.answer->claim, n)) return set(log.answer->claim, second);
    if (log.waiver && waits(log.waiver->claim, n)) return set(log.waiver->claim, second);
  }
  for (auto& [pin, waiver] : day.pin_waivers) {
    if (waits(waiver.claim, n)) return set(waiver.claim, second);
  }
  if (confirm_return(n, day)) return;
  const Gate now = gate(view, moment);
  set(day.release.claim, second);
  day.release.word = ReleaseWord::stands;
  day.release.until_aged_ms = now.until_aged_ms;
  day.release.why =
      now.first_to_go.empty() ? "every item holds" : "stands until " + now.first_to_go + " expires";
  day.released_once = true;
}

}  // namespace walkdown::day
