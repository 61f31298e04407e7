// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/field_pins.h"

#include "reader/match/alike.h"
#include "reader/match/words.h"
#include "reader/plan/pin.h"

namespace walkdown::desk {

void FieldPins::feed() {
  taken_ = true;
  if (next_ == nullptr) return;
  why_ = field_.take(*next_);
  if (audit::touches_field(next_->kind)) outcome_.reset();
}

void FieldPins::take(const record::Entry& /*entry*/) { feed(); }

std::optional<std::string> FieldPins::finish() {
  if (!taken_) feed();
  next_ = nullptr;
  return why_;
}

std::shared_ptr<const match::Outcome> FieldPins::outcome() const {
  if (!outcome_) outcome_ = std::make_shared<const match::Outcome>(field_.diagnose());
  return outcome_;
}

std::vector<day::PinFacts> FieldPins::facts() const {
  std::vector<day::PinFacts> all;
  const auto seen = outcome();
  all.reserve(seen->pins.size());
  for (const match::PinVerdict& pin : seen->pins) {
    all.push_back({plan::text(pin.pin), std::string(match::text(pin.verdict))});
  }
  return all;
}

void FieldPins::count_alike() {
  const auto& planned = field_.planned();
  alike_groups_ = static_cast<std::int64_t>(match::alike(planned.plan).size());
}

}  // namespace walkdown::desk
