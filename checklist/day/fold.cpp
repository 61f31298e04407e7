// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/fold.h"

#include <fmt/format.h>

#include <utility>

#include "checklist/day/body.h"
#include "checklist/day/duration.h"
#include "checklist/day/gate.h"
#include "checklist/day/rules.h"
#include "checklist/day/scene.h"
#include "checklist/record/canonical.h"

namespace walkdown::day {
namespace {

constexpr std::string_view kReading = "reading";

// The pin of a reading's body as it is nearly always written; nothing for any other.
std::optional<std::string> pin_of_reading(std::string_view text) {
  record::Canonical body(text);
  if (!body.take('{')) return std::nullopt;
  body.take("\"over\":true,");
  std::string_view pin;
  if (!body.take("\"pin\":") || !body.take_string(&pin)) return std::nullopt;
  if (pin.find('\\') != std::string_view::npos) return std::nullopt;
  return std::string(pin);
}

Day first_day(const Checklist& list, const Outside& outside) {
  Day day;
  day.items.resize(list.items.size());
  day.pauses.resize(list.stages.size());
  day.pins.resize(outside.pins.size());
  for (const Key& key : list.keys) day.keys.push_back({key.starts, false, {}, 0, 0});
  return day;
}

// Everything that ages, when no age is known.
void break_ages(const Checklist& list, Day& day, PinBook& book, std::uint64_t n) {
  const std::string why = "the clock went back over a restart, so its age is not known";
  for (std::size_t i = 0; i < list.items.size(); ++i) {
    if (list.items[i].valid_for_ms) day.items[i].broken = Broken{n, why};
  }
  for (PinLog& pin : day.pins) pin.undone_n = n;
  book.forget();
}

}  // namespace

Fold::Fold(Checklist checklist, Outside outside)
    : list_(std::move(checklist)),
      outside_(std::move(outside)),
      day_(first_day(list_, outside_)),
      book_(outside_) {}

void Fold::restore(Day day) {
  day_ = std::move(day);
  book_.forget();
}

Moment Fold::clocks(const record::Entry& entry) {
  const Clocks seen = day_.time.look(entry);
  day_.time.take(entry, seen);
  if (seen.stepped) {
    break_items(list_, day_, book_, Event::clock, entry.n, "the wall clock stepped");
  }
  if (seen.restarted) {
    break_items(list_, day_, book_, Event::restart, entry.n, "the machine was started anew");
    ask_again(list_, day_, entry.n, "comes up again after the restart");
  }
  if (seen.age_unknown) break_ages(list_, day_, book_, entry.n);
  return seen.moment;
}

Moment Fold::begin(const record::Entry& entry) {
  const Moment before_entry = day_.time.look(entry).moment;
  if (day_.release.word == ReleaseWord::stands && day_.release.until_aged_ms &&
      before_entry.aged_ms >= *day_.release.until_aged_ms) {
    watch_release(entry, before_entry);
  }
  ++day_.entries;
  return clocks(entry);
}

void Fold::take(const record::Entry& entry) {
  const Moment moment = begin(entry);
  if (entry.kind == kReading) return reading(entry, text_in(entry.body, "pin"), moment);
  ruled(entry, moment);
  watch_release(entry, moment);
}

void Fold::take(const record::EntryView& view) {
  const auto pin = view.kind == kReading ? pin_of_reading(view.body) : std::nullopt;
  if (!pin) return take(record::entry_of(view));
  const record::Entry entry{view.n, view.at_ms, view.up_ms, std::string(kReading), {}};
  reading(entry, *pin, begin(entry));
}

// The hot path: a million of them in a day.
void Fold::reading(const record::Entry& entry, const std::string& pin, Moment moment) {
  ++day_.readings;
  const std::size_t index = book_.find(pin);
  if (index != PinBook::npos) {
    day_.pins[index].read_n = entry.n;
    day_.pins[index].read_aged_ms = moment.aged_ms;
  }
  if (outside_.source != nullptr) outside_.source->take(entry);
  book_.forget();
  // WAC 212-17-317(7): no test of the firing circuits while the show could go.
  fall(day_, "a pin was read after the release");
}

void Fold::ruled(const record::Entry& entry, Moment moment) {
  const Rule* const found = rule(entry.kind);
  if (found == nullptr) return;
  const View view{list_, outside_, day_, book_};
  const Scene scene{view, entry, moment, false};
  const Done fine = found->check(scene);
  if (!fine) return ignore(entry, fine.error().sentence());
  found->apply(scene, day_, book_);
}

void Fold::ignore(const record::Entry& entry, std::string why) {
  ++day_.ignored_count;
  if (day_.ignored.size() >= Day::kMostIgnored) day_.ignored.erase(day_.ignored.begin());
  day_.ignored.push_back({entry.n, fmt::format("{}: {}", entry.kind, why)});
}

void Fold::watch_release(const record::Entry& /*entry*/, Moment moment) {
  const ReleaseWord word = day_.release.word;
  if (word != ReleaseWord::stands && word != ReleaseWord::pending) return;
  const Gate now = gate(view(), moment);
  if (!now.open()) fall(day_, now.against.front());
}

Done Fold::would_take(std::string_view kind, const nlohmann::json& body, Now now) const {
  const Rule* const found = rule(kind);
  if (found == nullptr) return done();
  const record::Entry entry{day_.entries, now.at_ms, now.up_ms, std::string(kind), body};
  const View view{list_, outside_, day_, book_};
  return found->check(Scene{view, entry, day_.time.moment(now), true});
}

}  // namespace walkdown::day
