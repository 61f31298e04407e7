// SPDX-License-Identifier: Apache-2.0
// wind, thunder, rehook, suspended, show-time
#include <fmt/format.h>

#include <array>

#include "checklist/day/body.h"
#include "checklist/day/duration.h"
#include "checklist/day/rules.h"

namespace walkdown::day {
namespace {

constexpr std::int64_t kFastest_mm_per_s = 120'000;
constexpr std::int64_t kMostOffset_min = 840;                // UTC+14 is the farthest of all
constexpr std::int64_t kEndOfTime_ms = 253'402'300'800'000;  // year 10000

Roles wind_roles(const Checklist& list) {
  Roles roles;
  for (const Item& item : list.items) {
    if (item.kind == Kind::wind) roles.insert(roles.end(), item.by.begin(), item.by.end());
  }
  return roles;
}

Error no_wind_item() {
  return refusal("the checklist asks nobody for the wind",
                 "keep it as a note, or begin a record with a checklist that has a wind item");
}

Done check_wind(const Scene& scene) {
  const auto mean = whole_in(scene.body(), "mean_mm_per_s");
  const auto gust = whole_in(scene.body(), "gust_mm_per_s");
  const auto period = whole_in(scene.body(), "period_ms");
  if (!period || (*period != 600'000 && *period != 120'000)) {
    return refusal("a mean wind is over 10 min or 2 min", "give one of the two");
  }
  if (!mean || !gust || *mean < 0 || *gust < *mean || *gust > kFastest_mm_per_s) {
    return refusal("a wind has a mean, and gusts no lower than it, up to 120 m/s",
                   "give both in m/s, and the highest 3 s mean as the gust");
  }
  if (scene.text("from") == "instrument") return done();
  const Roles roles = wind_roles(scene.view.list);
  if (roles.empty()) return no_wind_item();
  return signed_by(scene, roles);
}

void apply_wind(const Scene& scene, Day& day, PinBook& /*book*/) {
  const bool instrument = scene.text("from") == "instrument";
  const std::int64_t period_ms = whole_in(scene.body(), "period_ms").value_or(0);
  day.winds[period_ms] = {scene.entry.n,
                          scene.moment.aged_ms,
                          whole_in(scene.body(), "mean_mm_per_s").value_or(0),
                          whole_in(scene.body(), "gust_mm_per_s").value_or(0),
                          instrument ? "instrument" : scene.by(),
                          instrument ? std::string() : scene.text("role")};
}

Done always(const Scene& /*scene*/) { return done(); }

// Only the last thunders can matter: a wait is 48 h at most, and each far one needs a near one.
constexpr std::size_t kMostThunder = 10'000;

void apply_thunder(const Scene& scene, Day& day, PinBook& book) {
  auto flash_ms = whole_in(scene.body(), "flash_ms");
  if (flash_ms && *flash_ms < 0) flash_ms.reset();
  if (day.thunder.size() >= kMostThunder) day.thunder.erase(day.thunder.begin());
  day.thunder.push_back({scene.entry.n, scene.moment.sure_ms, flash_ms});
  break_items(scene.view.list, day, book, Event::thunder, scene.entry.n, "thunder was heard");
}

std::string module_named(const nlohmann::json& body) {
  const auto module = whole_in(body, "module");
  const auto rail = whole_in(body, "rail");
  if (!module) return {};
  return rail ? fmt::format("M{:02}/R{}/", *module, *rail) : fmt::format("M{:02}/", *module);
}

// Pins, positions, a module or a rail named; nothing: the whole field.
void apply_rehook(const Scene& scene, Day& day, PinBook& book) {
  undo(scene.view.outside, day, book, scene.entry.n,
       {texts_in(scene.body(), "pins"), texts_in(scene.body(), "positions"),
        module_named(scene.body())});
  if (scene.view.outside.source != nullptr) scene.view.outside.source->take(scene.entry);
  break_items(scene.view.list, day, book, Event::rehook, scene.entry.n, "pins were hooked up anew");
}

void apply_suspended(const Scene& scene, Day& day, PinBook& book) {
  break_items(scene.view.list, day, book, Event::suspend, scene.entry.n, "the machine slept");
}

Done check_show_time(const Scene& scene) {
  const auto show_at_ms = whole_in(scene.body(), "show_at_ms");
  if (!show_at_ms || *show_at_ms < 0 || *show_at_ms >= kEndOfTime_ms) {
    return refusal("it does not say when the show is", "give a date and a time of day");
  }
  const std::int64_t offset_min = whole_in(scene.body(), "utc_offset_min").value_or(0);
  if (offset_min < -kMostOffset_min || offset_min > kMostOffset_min) {
    return refusal("no clock on the wall is so far from UTC",
                   "give its distance from UTC, 14 h at most");
  }
  return signed_by(scene, scene.view.list.lead);
}

void apply_show_time(const Scene& scene, Day& day, PinBook& book) {
  const bool moved = day.show_at_ms.has_value();
  day.show_at_ms = whole_in(scene.body(), "show_at_ms");
  day.utc_offset_min = whole_in(scene.body(), "utc_offset_min").value_or(0);
  if (!moved) return;
  const std::string why = "the show was moved to " + say_clock(*day.show_at_ms, day.utc_offset_min);
  break_items(scene.view.list, day, book, Event::show_time, scene.entry.n, why);
  fall(day, why);
}

constexpr std::array<Rule, 5> kRules = {{{"wind", check_wind, apply_wind},
                                         {"thunder", always, apply_thunder},
                                         {"rehook", always, apply_rehook},
                                         {"suspended", always, apply_suspended},
                                         {"show-time", check_show_time, apply_show_time}}};

}  // namespace

std::span<const Rule> event_rules() { return kRules; }

}  // namespace walkdown::day
