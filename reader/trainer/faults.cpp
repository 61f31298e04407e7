// SPDX-License-Identifier: Apache-2.0
#include "reader/trainer/faults.h"

#include <fmt/format.h>

namespace walkdown::trainer {
namespace {

std::optional<std::uint16_t> igniter_index(const Fault& fault, const plan::Catalogue& catalogue) {
  if (fault.igniter.empty()) return std::nullopt;
  const std::size_t index = catalogue.igniter(fault.igniter);
  // Not in the catalogue: an index that no catalogue has, which the field then refuses.
  return index < catalogue.igniters.size() ? static_cast<std::uint16_t>(index)
                                           : std::uint16_t{0xFFFF};
}

Done apply_one(const Fault& fault, Field& field) {
  switch (fault.kind) {
    case FaultKind::swapped:
      return field.swap_loads(fault.pins.at(0), fault.pins.at(1));
    case FaultKind::shifted:
      return field.shift(fault.rails.at(0), fault.first, fault.last, fault.by);
    case FaultKind::reversed:
      return field.reverse(fault.rails.at(0));
    case FaultKind::rails_exchanged:
      return field.exchange_rails(fault.rails.at(0), fault.rails.at(1));
    case FaultKind::modules_exchanged:
      return field.exchange_modules(fault.modules.at(0), fault.modules.at(1));
    case FaultKind::tester_offset:
      field.set_tester_offset(fault.amount);
      return done();
    case FaultKind::wire_differs:
      field.set_lead_factor(fault.amount);
      return done();
    default:
      return field.set_fault(fault.pins.at(0), fault.kind, fault.amount,
                             igniter_index(fault, field.plan().catalogue));
  }
}

}  // namespace

Done apply_faults(const std::vector<Fault>& faults, Field& field) {
  for (const bool loads : {true, false}) {
    for (const Fault& fault : faults) {
      if (is_of_one_load(fault.kind) != loads) continue;
      const Done made = apply_one(fault, field);
      if (made) continue;
      Error error = made.error();
      if (fault.line != 0) error.where = fmt::format("line {}, {}", fault.line, error.where);
      return error;
    }
  }
  return done();
}

}  // namespace walkdown::trainer
