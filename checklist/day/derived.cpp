// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/derived.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

#include "checklist/day/duration.h"
#include "checklist/weather/thunder.h"

namespace walkdown::day {
namespace {

Judgement holding(std::string why, std::optional<std::int64_t> until = std::nullopt) {
  return {Standing::holds, until, {}, std::move(why), {}};
}

Judgement failing(Standing standing, std::string why, std::uint64_t n = 0, std::string what = {}) {
  return {
      standing, {}, {}, std::move(why), {static_cast<std::uint8_t>(standing), n, std::move(what)}};
}

Judgement continuity(const View& view, const Item& item, Moment moment) {
  const Continuity& sum =
      view.book.continuity(view.outside, view.day, item.valid_for_ms, moment.aged_ms);
  if (sum.holds) return holding(sum.why, sum.until_aged_ms);
  const Standing standing = !sum.bad.empty() ? Standing::refused
                            : sum.stale > 0  ? Standing::expired
                                             : Standing::open;
  Judgement found = failing(standing, sum.why, 0, sum.failure);
  // Were it waived, the next reading to grow stale would be another failure.
  found.until_aged_ms = sum.until_aged_ms;
  return found;
}

Judgement zone(const View& view) {
  const auto& zone = view.outside.zone;
  if (!zone) return failing(Standing::open, "the show has no site to measure on");
  return zone->holds ? holding(zone->why) : failing(Standing::refused, zone->why);
}

Judgement thunder(const View& view, const Item& item, Moment moment) {
  weather::ThunderWait wait({item.near_ms, item.wait_ms});
  std::uint64_t last = 0;
  for (const ThunderLog& each : view.day.thunder) {
    wait.hear(each.sure_ms, each.flash_ms);
    last = each.n;
  }
  if (!wait.waiting(moment.sure_ms)) {
    return holding(wait.clear_at_ms() ? "the wait after the last thunder is over"
                                      : "no thunder near enough was told");
  }
  Judgement found = failing(
      Standing::broken,
      fmt::format("thunder: wait until {}", say_clock(view.day.time.at_of_sure(*wait.clear_at_ms()),
                                                      view.day.utc_offset_min)),
      last);
  found.ready_sure_ms = wait.clear_at_ms();
  return found;
}

bool has_role(const Day& day, const std::string& person, std::string_view role) {
  return std::any_of(day.people.begin(), day.people.end(), [&](const Enrolled& each) {
    return each.name == person && each.role == role;
  });
}

// "with the lead or in the firing position"
std::string wanted(const Item& item) {
  std::string all;
  for (const std::string& place : item.places) {
    if (!all.empty()) all += " or ";
    all += place.starts_with("role:") ? "with the " + place.substr(5) : "in the " + place;
  }
  return all;
}

Judgement custody(const View& view, const Item& item) {
  const std::size_t index = view.list.key(item.key);
  const KeyLog& key = view.day.keys[index];
  std::string where = key.person ? fmt::format("{} has the {}", key.holder, item.key)
                                 : fmt::format("the {} is in the {}", item.key, key.holder);
  if (!view.day.tags.empty()) {
    return failing(Standing::open,
                   fmt::format("the tag of {} is not back", view.day.tags.begin()->first));
  }
  if (key.person && view.day.in_field.contains(key.holder)) {
    return failing(Standing::open, where + ", in the field");
  }
  if (!key.person && key.holder == view.list.keys[index].firing && !view.day.in_field.empty()) {
    return failing(Standing::open, fmt::format("{} while {} is in the field", where,
                                               view.day.in_field.begin()->first));
  }
  for (const std::string& place : item.places) {
    const bool there = place.starts_with("role:")
                           ? key.person && has_role(view.day, key.holder, place.substr(5))
                           : !key.person && key.holder == place;
    if (there) return holding(where);
  }
  return failing(Standing::open, fmt::format("{}; it has to be {}", where, wanted(item)),
                 key.since_n);
}

Judgement headcount(const View& view) {
  const auto& inside = view.day.in_field;
  if (inside.empty()) return holding("nobody is in the field");
  std::string why = inside.size() == 1 ? inside.begin()->first + " is in the field"
                                       : fmt::format("{} are in the field: ", inside.size());
  for (auto each = inside.begin(); inside.size() > 1 && each != inside.end(); ++each) {
    why += (each == inside.begin() ? "" : ", ") + each->first;
  }
  return failing(Standing::open, std::move(why));
}

Judgement wait(const View& view, const Item& item, Moment moment) {
  const ItemLog& from = view.day.items[*item.after];
  const std::string& name = view.list.items[*item.after].id;
  if (!from.answer || !from.answer->good || from.broken) {
    return failing(Standing::open, "the wait begins with " + name);
  }
  const std::int64_t over = from.answer->claim.moment.sure_ms + item.wait_ms;
  if (moment.sure_ms >= over) return holding("the wait is over");
  Judgement found = failing(Standing::open,
                            fmt::format("wait until {}", say_clock(view.day.time.at_of_sure(over),
                                                                   view.day.utc_offset_min)),
                            from.answer->claim.n);
  found.ready_sure_ms = over;
  return found;
}

std::string tenths(std::int64_t mm_per_s) {
  // Rounded up: a wind over its limit never reads as if it were at it.
  const std::int64_t value = (mm_per_s + 99) / 100;
  return fmt::format("{}.{} m/s", value / 10, value % 10);
}

std::string over_limit(const Item& item, const WindLog& wind) {
  if (item.gust_max_mm_per_s && wind.gust_mm_per_s > *item.gust_max_mm_per_s) {
    return fmt::format("gusts of {} are above {}", tenths(wind.gust_mm_per_s),
                       tenths(*item.gust_max_mm_per_s));
  }
  if (item.mean_max_mm_per_s && wind.mean_mm_per_s > *item.mean_max_mm_per_s) {
    return fmt::format("a mean wind of {} is above {}", tenths(wind.mean_mm_per_s),
                       tenths(*item.mean_max_mm_per_s));
  }
  return {};
}

Judgement judge_wind_log(const Item& item, const WindLog& wind, Moment moment) {
  std::string over = over_limit(item, wind);
  if (!over.empty()) return failing(Standing::refused, std::move(over), wind.n);
  if (wind.by != "instrument" && !contains(item.by, wind.role)) {
    return failing(Standing::open, "the last wind was read by somebody who may not", wind.n);
  }
  std::string why = fmt::format("mean {}, gusts {}, by {}", tenths(wind.mean_mm_per_s),
                                tenths(wind.gust_mm_per_s), wind.by);
  if (!item.valid_for_ms) return holding(std::move(why));
  const std::int64_t until = wind.aged_ms + *item.valid_for_ms;
  if (moment.aged_ms < until) return holding(std::move(why), until);
  return failing(Standing::expired,
                 fmt::format("was read more than {} ago", say_duration(*item.valid_for_ms)),
                 wind.n);
}

// Means over other times do not compare, but a wind above the limit is one, however it was
// averaged: it stands until the next reading over the item's own time.
std::optional<Judgement> later_above_limit(const View& view, const Item& item, const WindLog& own) {
  for (const auto& [period_ms, wind] : view.day.winds) {
    if (period_ms == item.period_ms || wind.n < own.n) continue;
    const std::string over = over_limit(item, wind);
    if (over.empty()) continue;
    return failing(Standing::refused, fmt::format("{}, over {}", over, say_duration(period_ms)),
                   wind.n);
  }
  return std::nullopt;
}

}  // namespace

bool is_derived(Kind kind) {
  return kind == Kind::continuity || kind == Kind::zone || kind == Kind::thunder ||
         kind == Kind::custody || kind == Kind::headcount || kind == Kind::wait;
}

Judgement judge_derived(const View& view, std::size_t index, Moment moment) {
  const Item& item = view.list.items[index];
  switch (item.kind) {
    case Kind::continuity:
      return continuity(view, item, moment);
    case Kind::zone:
      return zone(view);
    case Kind::thunder:
      return thunder(view, item, moment);
    case Kind::custody:
      return custody(view, item);
    case Kind::headcount:
      return headcount(view);
    case Kind::wait:
      return wait(view, item, moment);
    default:
      return failing(Standing::open, "nothing is known");
  }
}

Judgement judge_wind(const View& view, std::size_t index, Moment moment) {
  const Item& item = view.list.items[index];
  const auto found = view.day.winds.find(item.period_ms);
  if (found == view.day.winds.end()) {
    return failing(Standing::open,
                   fmt::format("no wind over {} was read yet", say_duration(item.period_ms)));
  }
  const auto& broken = view.day.items[index].broken;
  if (broken && broken->n >= found->second.n) {
    return failing(Standing::broken, broken->why, broken->n);
  }
  if (const auto above = later_above_limit(view, item, found->second)) return *above;
  return judge_wind_log(item, found->second, moment);
}

}  // namespace walkdown::day
