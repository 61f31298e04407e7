// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/standing.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "checklist/day/derived.h"
#include "checklist/day/duration.h"

namespace walkdown::day {
namespace {

constexpr std::array<std::string_view, 7> kWords = {"open",   "due",     "holds", "expired",
                                                    "broken", "refused", "waived"};

Judgement unanswered(const View& view, const Item& item, Moment moment) {
  const Day& day = view.day;
  Judgement found{Standing::open, {}, {}, "not answered yet", {}};
  if (!day.show_at_ms || !item.due_ms) return found;
  const std::int64_t begin_ms = *day.show_at_ms + *item.due_ms - item.takes_ms;
  if (day.time.at_of_aged(moment.aged_ms) >= begin_ms) {
    found.standing = Standing::due;
    found.why = fmt::format("due at {}, not answered yet",
                            say_clock(*day.show_at_ms + *item.due_ms, day.utc_offset_min));
  }
  return found;
}

// What the answer itself is worth.
Judgement answered(const Item& item, const ItemLog& log, Moment moment) {
  const Answer& answer = *log.answer;
  if (log.broken) return {Standing::broken, {}, {}, log.broken->why, {0, log.broken->n, ""}};
  if (!answer.good) return {Standing::refused, {}, {}, answer.why, {0, answer.claim.n, ""}};
  if (!item.second.empty() && answer.claim.second.empty()) {
    return {Standing::open, {}, {}, "waits for its second signature", {0, answer.claim.n, ""}};
  }
  Judgement found{Standing::holds, {}, {}, answer.value, {0, answer.claim.n, ""}};
  if (!item.valid_for_ms) return found;
  found.until_aged_ms = answer.claim.moment.aged_ms + *item.valid_for_ms;
  if (moment.aged_ms < *found.until_aged_ms) return found;
  found.standing = Standing::expired;
  found.why = fmt::format("was answered more than {} ago", say_duration(*item.valid_for_ms));
  return found;
}

Judgement asked(const View& view, std::size_t index, Moment moment) {
  const Item& item = view.list.items[index];
  const ItemLog& log = view.day.items[index];
  Judgement found = log.answer ? answered(item, log, moment) : unanswered(view, item, moment);
  // Growing late is not another failure.
  const bool late = found.standing == Standing::due;
  found.failure.standing = static_cast<std::uint8_t>(late ? Standing::open : found.standing);
  return found;
}

Judgement raw(const View& view, std::size_t index, Moment moment) {
  const Item& item = view.list.items[index];
  if (item.kind == Kind::wind) return judge_wind(view, index, moment);
  const bool derives = is_derived(item.kind);
  if (!derives) return asked(view, index, moment);
  Judgement derived = judge_derived(view, index, moment);
  derived.failure.standing = static_cast<std::uint8_t>(derived.standing);
  if (!item.asked()) return derived;
  Judgement answer = asked(view, index, moment);
  if (answer.standing != Standing::holds) return answer;
  if (derived.standing != Standing::holds) return derived;
  if (!answer.until_aged_ms) answer.until_aged_ms = derived.until_aged_ms;
  if (derived.until_aged_ms) {
    answer.until_aged_ms = std::min(*answer.until_aged_ms, *derived.until_aged_ms);
  }
  answer.why = derived.why + "; " + answer.why;
  return answer;
}

}  // namespace

std::string_view word(Standing standing) { return kWords.at(static_cast<std::size_t>(standing)); }

bool can_be_waived(const Item& item) {
  return item.kind != Kind::headcount && item.kind != Kind::custody;
}

bool locked(const View& view, std::size_t stage) {
  if (stage == 0) return false;
  const std::size_t last = view.list.last_release_stage();
  if (stage - 1 == last) return !view.day.released_once;
  return !view.day.pauses[stage - 1].has_value();
}

Judgement judge(const View& view, std::size_t index, Moment moment) {
  Judgement found = raw(view, index, moment);
  const auto& waiver = view.day.items[index].waiver;
  if (found.standing == Standing::holds || !waiver || waiver->claim.second.empty()) return found;
  if (!can_be_waived(view.list.items[index]) || waiver->failure != found.failure) return found;
  found.why = fmt::format("waived by {} and {}: {} ({})", waiver->claim.by, waiver->claim.second,
                          waiver->reason, found.why);
  found.standing = Standing::waived;
  if (view.list.items[index].kind != Kind::continuity) found.until_aged_ms.reset();
  return found;
}

}  // namespace walkdown::day
