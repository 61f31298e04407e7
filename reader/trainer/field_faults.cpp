// SPDX-License-Identifier: Apache-2.0
// The part of Field that puts something wrong with one load, and mends it.
#include <fmt/format.h>

#include "reader/trainer/field.h"

namespace walkdown::trainer {
namespace {

Error cannot(plan::PinId pin, FaultKind kind, const std::string& why) {
  return {Code::usage, "cannot change the simulated field",
          fmt::format("{} at {}: {}", word(kind), plan::text(pin), why), ""};
}

}  // namespace

std::optional<std::uint16_t> Field::other_igniter(std::uint16_t than) const {
  for (std::size_t i = 0; i < plan_.catalogue.igniters.size(); ++i) {
    if (i != than) return static_cast<std::uint16_t>(i);
  }
  return std::nullopt;
}

Done Field::hang_stray(plan::PinId pin, std::optional<std::uint16_t> igniter) {
  if (!exists(pin)) return cannot(pin, FaultKind::stray, "there is no such pin");
  if (hangs_on(pin) != nullptr) return cannot(pin, FaultKind::stray, "a load hangs there");
  const std::uint16_t kind = igniter.value_or(0);
  if (kind >= plan_.catalogue.igniters.size()) {
    return cannot(pin, FaultKind::stray, "there is no such igniter");
  }
  Hung hung = draw(plan::Load{kind, 1, plan::Join::series, plan::kNoWire, 0}, plan_.catalogue,
                   warm_k_, random_);
  hung.fault = FaultKind::stray;
  hang(pin, std::move(hung));
  return done();
}

Done Field::replace_legs(Hung& hung, FaultKind kind, std::optional<std::uint16_t> igniter) {
  const plan::PinId pin = hung.home.value_or(plan::PinId{});
  std::uint16_t made_of = hung.load.igniter;
  std::size_t count = hung.load.count;
  if (kind == FaultKind::missing_igniter) {
    if (count < 2) return cannot(pin, kind, "it has one igniter; that would be an open");
    --count;
  }
  if (kind == FaultKind::extra_igniter) ++count;
  if (kind == FaultKind::wrong_igniter) {
    const auto other = igniter ? igniter : other_igniter(made_of);
    if (!other || *other >= plan_.catalogue.igniters.size() || *other == made_of) {
      return cannot(pin, kind, "there is no such other igniter");
    }
    made_of = *other;
  }
  hung.leg_ohm = draw_legs(made_of, count, plan_.catalogue, random_);
  return done();
}

Done Field::set_fault(plan::PinId pin, FaultKind kind, double amount,
                      std::optional<std::uint16_t> igniter) {
  if (!is_of_one_load(kind)) return cannot(pin, kind, "it is not a fault of one load");
  if (kind == FaultKind::stray) return hang_stray(pin, igniter);
  const auto found = hung_.find(pin);
  if (found == hung_.end()) return cannot(pin, kind, "nothing hangs there");
  Hung& hung = found->second;
  const bool has_amount =
      kind == FaultKind::poor_joint || kind == FaultKind::leak || kind == FaultKind::wrong_lead;
  if (has_amount && !(amount > 0)) return cannot(pin, kind, "it needs an amount above 0");
  if (kind == FaultKind::missing_igniter || kind == FaultKind::extra_igniter ||
      kind == FaultKind::wrong_igniter) {
    if (Done replaced = replace_legs(hung, kind, igniter); !replaced) return replaced;
  }
  hung.fault = kind;
  hung.amount = amount;
  return done();
}

Done Field::clear_fault(plan::PinId pin) {
  const auto found = hung_.find(pin);
  if (found == hung_.end()) return cannot(pin, FaultKind::none, "nothing hangs there");
  Hung& hung = found->second;
  if (hung.fault == FaultKind::stray) {
    hung_.erase(found);
    return done();
  }
  const bool other_legs = hung.fault == FaultKind::missing_igniter ||
                          hung.fault == FaultKind::extra_igniter ||
                          hung.fault == FaultKind::wrong_igniter;
  if (other_legs) {
    hung.leg_ohm = draw_legs(hung.load.igniter, hung.load.count, plan_.catalogue, random_);
  }
  hung.fault = FaultKind::none;
  hung.amount = 0;
  return done();
}

}  // namespace walkdown::trainer
