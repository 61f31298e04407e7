// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/folded.h"

#include <algorithm>
#include <utility>

#include "checklist/day/body.h"
#include "checklist/day/signatures.h"
#include "checklist/day/snapshot.h"
#include "checklist/desk/field_pins.h"
#include "checklist/desk/tell.h"

namespace walkdown::desk {

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

void Folded::watch_sleep(const record::EntryView& view) {
  const bool starts = view.kind == "resumed";
  if (!starts && view.kind != "moment" && view.kind != "suspended") return;
  const auto body = record::entry_of(view).body;
  if (starts && day::text_in(body, "clock") != "same") slept_ms_ = 0;
  slept_ms_ = day::whole_in(body, "slept_ms").value_or(slept_ms_);
}

// The oldest one's room is used again: a million readings come by here.
void Folded::remember(const record::EntryView& view) {
  watch_sleep(view);
  ++entries_;
  last_ = {view.at_ms, view.up_ms};
  Kept raw;
  if (recent_.size() >= kMostTold) {
    if (recent_.front().kind == audit::kReading) reading_ = recent_.front();
    raw = std::move(recent_.front());
    recent_.pop_front();
  }
  raw.n = view.n;
  raw.at_ms = view.at_ms;
  raw.up_ms = view.up_ms;
  raw.kind = view.kind;
  raw.body = view.n == 0 ? std::string_view("{}") : view.body;
  recent_.push_back(std::move(raw));
}

Counts Folded::counts() const {
  Counts counts{entries_, field().readings(), field().rejected(), {}};
  const auto last = std::find_if(recent_.rbegin(), recent_.rend(),
                                 [](const Kept& raw) { return raw.kind == audit::kReading; });
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
  for (auto raw = recent_.end() - count; raw != recent_.end(); ++raw) {
    all.push_back({raw->n, raw->at_ms, raw->kind, tell(day().checklist(), raw->entry())});
  }
  return all;
}

std::optional<std::string> Folded::take(const record::EntryView& view) {
  if (!opened()) {
    if (auto why = open(view)) return why;
  }
  parts_->pins.next(view);
  if (view.n == 0) {
    // The opening may be 256 MiB of show: what is folded of it is the show, and its clocks.
    parts_->fold.take(
        record::Entry{0, view.at_ms, view.up_ms, std::string(view.kind), nlohmann::json::object()});
  } else {
    parts_->fold.take(view);
  }
  auto why = parts_->pins.finish();
  remember(view);
  return why;
}

std::string Folded::save() const {
  const auto of = [](const Kept& raw) {
    return nlohmann::json::array({raw.n, raw.at_ms, raw.up_ms, raw.kind, raw.body});
  };
  nlohmann::json head = {{"entries", entries_},
                         {"at_ms", last_.at_ms},
                         {"up_ms", last_.up_ms},
                         {"slept_ms", slept_ms_},
                         {"recent", nlohmann::json::array()}};
  for (const Kept& raw : recent_) head["recent"].push_back(of(raw));
  if (reading_) head["reading"] = of(*reading_);
  return head.dump() + '\n' + day::snapshot(parts_->fold);
}

bool Folded::restore(std::string_view bytes) {
  const std::size_t end = bytes.find('\n');
  if (end == std::string_view::npos) return false;
  const auto head = nlohmann::json::parse(bytes.substr(0, end), nullptr, false);
  if (!head.is_object() || !day::restore(parts_->fold, bytes.substr(end + 1))) return false;
  // The bytes are this station's own (snapshot.h), so from here on they are as save() wrote them.
  const auto of = [](const nlohmann::json& raw) {
    return Kept{raw[0], raw[1], raw[2], raw[3], raw[4]};
  };
  entries_ = head["entries"];
  last_ = {head["at_ms"], head["up_ms"]};
  slept_ms_ = head["slept_ms"];
  recent_.clear();
  for (const auto& raw : head["recent"]) recent_.push_back(of(raw));
  if (head.contains("reading")) reading_ = of(head["reading"]);
  return true;
}

}  // namespace walkdown::desk
