// SPDX-License-Identifier: Apache-2.0
#include "checklist/audit/field.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>
#include <variant>

#include "checklist/audit/claim.h"
#include "checklist/record/json_text.h"

namespace walkdown::audit {
namespace {

// Whether the line itself says what the entry claims. A line without an address says nothing of the
// pin: that is then the walk's.
bool same_value(const tester::Parsed& parsed, const RecordedReading& claimed) {
  const tester::Reading& reading = claimed.reading;
  if (const auto* own = std::get_if<tester::Reading>(&parsed)) {
    return !claimed.walked && own->pin == reading.pin && own->over == reading.over &&
           own->micro_ohm == reading.micro_ohm;
  }
  if (const auto* bare = std::get_if<tester::BareValue>(&parsed)) {
    return claimed.walked && bare->over == reading.over && bare->micro_ohm == reading.micro_ohm;
  }
  return false;
}

}  // namespace

bool touches_field(std::string_view kind) {
  return kind == kReading || kind == kRehook || kind == kEntered;
}

Field::Field(Planned planned, tester::LineParser parser, bool layout_known)
    : planned_(std::move(planned)), parser_(std::move(parser)), layout_known_(layout_known) {}

Result<Field> Field::make(Planned planned, bool layout_known) {
  auto parser = tester::LineParser::make(planned.tester);
  if (!parser) return parser.error();
  return Field(std::move(planned), std::move(parser).value(), layout_known);
}

Result<Field> Field::open(const nlohmann::json& opening_body) {
  if (!opening_body.contains("show")) {
    return Error{Code::bad_input, "the record's first entry has no show", "", ""};
  }
  const auto show = show::from_json(opening_body["show"]);
  if (!show) return show.error();
  auto outcome = import(*show);
  if (!outcome.planned) {
    return Error{Code::bad_input, "the show in the record cannot be read", outcome.errors.front(),
                 ""};
  }
  return make(std::move(*outcome.planned), show->find(show::Role::modules) != nullptr);
}

std::optional<std::string> Field::take(const record::EntryView& entry) {
  if (entry.kind == kReading) return take_reading(entry.body);
  if (entry.kind == kRehook) return take_rehook(record::entry_of(entry).body);
  if (entry.kind == kEntered) take_entered(record::entry_of(entry).body);
  if (entry.kind == kClaim) return check_claim(record::entry_of(entry).body, diagnose());
  if (entry.kind == kRejected) ++rejected_;
  return std::nullopt;
}

std::optional<std::string> Field::take_reading(std::string_view body) {
  auto claimed = quick_reading_of(body);
  if (!claimed) {
    auto slowly = reading_of(record::parse_canonical(body));
    if (!slowly) return slowly.error().sentence();
    claimed = std::move(slowly).value();
  }
  const tester::Reading& reading = claimed->reading;
  if (!same_value(parser_.parse(claimed->raw), *claimed)) {
    return fmt::format("The entry claims a reading of {} that its own line '{}' does not say.",
                       plan::text(reading.pin), claimed->raw);
  }
  samples_.push_back({reading.pin, reading.ohm(), reading.over});
  if (!stale_.empty()) stale_.erase(reading.pin);
  if (read_.size() < planned_.plan.pins.size()) read_.insert(reading.pin);
  ++readings_;
  return std::nullopt;
}

std::optional<std::string> Field::take_rehook(const nlohmann::json& body) {
  const auto rehook = rehook_of(body);
  if (!rehook) return rehook.error().sentence();
  const auto position = [this](plan::PinId pin) {
    const plan::PlannedPin* planned = planned_.plan.find(pin);
    return planned == nullptr ? std::string_view() : std::string_view(planned->position);
  };
  std::set<plan::PinId> touched;
  for (const plan::PlannedPin& pin : planned_.plan.pins) {
    if (rehook->covers(pin.id, pin.position)) touched.insert(pin.id);
  }
  if (touched.empty()) {
    samples_.clear();
    for (const plan::PlannedPin& pin : planned_.plan.pins) stale_.insert(pin.id);
    return std::nullopt;
  }
  std::erase_if(samples_, [&](const match::Sample& sample) {
    return rehook->covers(sample.pin, position(sample.pin));
  });
  stale_.merge(touched);
  return std::nullopt;
}

// Whoever went to a position may have touched what hangs there: its readings stay, and are old.
void Field::take_entered(const nlohmann::json& body) {
  Rehook there;
  if (const auto found = body.find("positions"); found != body.end() && found->is_array()) {
    for (const auto& each : *found) {
      if (each.is_string()) there.positions.push_back(each.get<std::string>());
    }
  }
  const auto& pins = planned_.plan.pins;
  const bool known = std::any_of(pins.begin(), pins.end(), [&](const plan::PlannedPin& pin) {
    return there.covers(pin.id, pin.position);
  });
  for (const plan::PlannedPin& pin : pins) {
    if (read_.contains(pin.id) && (!known || there.covers(pin.id, pin.position))) {
      stale_.insert(pin.id);
    }
  }
}

match::Outcome Field::diagnose() const {
  match::Options options;
  options.stale.assign(stale_.begin(), stale_.end());
  options.layout_known = layout_known_;
  return match::diagnose(planned_.plan, planned_.tester.model, samples_, options);
}

}  // namespace walkdown::audit
