// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/folded.h"

#include <algorithm>
#include <utility>

#include "checklist/day/body.h"
#include "checklist/day/signatures.h"
#include "checklist/desk/field_pins.h"
#include "checklist/desk/tell.h"

namespace walkdown::desk {

namespace {

// What the day takes from a body. Entry 0 may be 256 MiB of show, of which it takes nothing; of a
// reading, and there may be a million, it takes the pin.
nlohmann::json body_for_fold(const record::EntryView& view) {
  if (view.n == 0) return nlohmann::json::object();
  if (view.kind == audit::kReading) {
    const auto reading = audit::quick_reading_of(view.body);
    if (reading) return {{"pin", plan::text(reading->reading.pin)}};
  }
  return record::entry_of(view).body;
}

}  // namespace

struct Folded::Parts {
  Prepared prepared;
  FieldPins pins;
  day::Fold fold;

  Parts(Prepared made, audit::Field field)
      : prepared(std::move(made)), pins(std::move(field)), fold(prepared.checklist, outside()) {
    pins.count_alike();
  }

  day::Outside outside() {
    day::Outside made = prepared.outside();
    made.source = &pins;
    made.check_note = day::check_record_notes();
    return made;
  }
};

Folded::Folded() = default;
Folded::~Folded() = default;

const Prepared& Folded::prepared() const { return parts_->prepared; }
const day::Fold& Folded::day() const { return parts_->fold; }
const audit::Field& Folded::field() const { return parts_->pins.field(); }
std::shared_ptr<const match::Outcome> Folded::outcome() const { return parts_->pins.outcome(); }

std::optional<std::string> Folded::open(const record::EntryView& entry) {
  const auto body = record::entry_of(entry).body;
  if (!body.contains("show")) return "The record's first entry has no show.";
  if (body.contains("origin") && body["origin"].is_string()) origin_ = body["origin"];
  const auto show = show::from_json(body["show"]);
  if (!show) return show.error().sentence();
  auto outcome = prepare(*show);
  if (!outcome.prepared) return "The show in the record cannot be read: " + outcome.errors.front();
  auto field = audit::Field::make(outcome.prepared->planned, outcome.prepared->layout_known);
  if (!field) return field.error().sentence();
  parts_ = std::make_unique<Parts>(std::move(*outcome.prepared), std::move(field).value());
  return std::nullopt;
}

void Folded::watch_sleep(const record::Entry& entry) {
  if (entry.kind == "resumed" && day::text_in(entry.body, "clock") != "same") slept_ms_ = 0;
  if (entry.kind != "moment" && entry.kind != "suspended") return;
  slept_ms_ = day::whole_in(entry.body, "slept_ms").value_or(slept_ms_);
}

void Folded::remember(const record::EntryView& view) {
  ++entries_;
  last_ = {view.at_ms, view.up_ms};
  recent_.push_back({view.n, view.at_ms, view.up_ms, std::string(view.kind),
                     view.n == 0 ? std::string("{}") : std::string(view.body)});
  if (recent_.size() <= kMostTold) return;
  if (recent_.front().kind == audit::kReading) reading_ = std::move(recent_.front());
  recent_.pop_front();
}

Counts Folded::counts() const {
  Counts counts{entries_, field().readings(), field().rejected(), {}};
  const auto last = std::find_if(recent_.rbegin(), recent_.rend(),
                                 [](const Kept& entry) { return entry.kind == audit::kReading; });
  if (last != recent_.rend()) {
    counts.last_reading = tell(day().checklist(), last->entry());
  } else if (reading_) {
    counts.last_reading = tell(day().checklist(), reading_->entry());
  }
  return counts;
}

std::vector<Told> Folded::told(std::size_t most) const {
  std::vector<Told> all;
  const auto count = static_cast<std::ptrdiff_t>(std::min(most, recent_.size()));
  for (auto entry = recent_.end() - count; entry != recent_.end(); ++entry) {
    all.push_back({entry->n, entry->at_ms, entry->kind, tell(day().checklist(), entry->entry())});
  }
  return all;
}

std::optional<std::string> Folded::take(const record::EntryView& view) {
  if (!opened()) {
    if (auto why = open(view)) return why;
  }
  const record::Entry entry{view.n, view.at_ms, view.up_ms, std::string(view.kind),
                            body_for_fold(view)};
  parts_->pins.next(view);
  parts_->fold.take(entry);
  auto why = parts_->pins.finish();
  watch_sleep(entry);
  remember(view);
  return why;
}

}  // namespace walkdown::desk
