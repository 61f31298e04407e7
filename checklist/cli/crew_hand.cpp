// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/crew_hand.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

#include "checklist/cli/pin_runs.h"

namespace walkdown::cli {
namespace {

using match::Kind;
using trainer::RailId;

std::vector<RailId> rails_of(const match::Finding& finding) {
  std::set<RailId> rails;
  for (const auto pin : finding.pins) rails.insert({pin.module, pin.rail});
  return {rails.begin(), rails.end()};
}

std::vector<std::uint16_t> modules_of(const match::Finding& finding) {
  std::set<std::uint16_t> modules;
  for (const auto pin : finding.pins) modules.insert(pin.module);
  return {modules.begin(), modules.end()};
}

// A whole rail, also its free pins: what was unplugged has to be read again.
void touch_rail(RailId rail, const trainer::Field& field, const std::string& by,
                const std::string& why, HandsOn& hands) {
  audit::Rehook rehook;
  rehook.module = rail.module;
  rehook.rail = rail.rail;
  rehook.by = by;
  rehook.why = why;
  hands.rehooks.push_back(std::move(rehook));
  for (const auto pin : field.pins()) {
    if (pin.module == rail.module && pin.rail == rail.rail) hands.read_again.push_back(pin);
  }
}

void touch_rails_of_modules(const match::Finding& finding, const trainer::Field& field,
                            const std::string& by, HandsOn& hands) {
  for (const auto module : modules_of(finding)) {
    audit::Rehook rehook;
    rehook.module = module;
    rehook.by = by;
    rehook.why = match::text(finding.kind);
    hands.rehooks.push_back(std::move(rehook));
    for (const auto pin : field.pins()) {
      if (pin.module == module) hands.read_again.push_back(pin);
    }
  }
}

void touch_pins(const match::Finding& finding, const std::string& by, HandsOn& hands) {
  audit::Rehook rehook;
  rehook.pins = finding.pins;
  rehook.by = by;
  rehook.why = match::text(finding.kind);
  hands.rehooks.push_back(std::move(rehook));
  hands.read_again = finding.pins;
}

Result<HandsOn> turn_rail(const match::Finding& finding, trainer::Field& field,
                          const std::string& by) {
  HandsOn hands;
  const auto rails = rails_of(finding);
  for (const auto rail : rails) {
    if (const auto turned = field.reverse(rail); !turned) return turned.error();
    touch_rail(rail, field, by, "reversed", hands);
    hands.did = fmt::format("turned rail {} of module {} round", rail.rail, rail.module);
  }
  return hands;
}

Result<HandsOn> exchange_rails(const match::Finding& finding, trainer::Field& field,
                               const std::string& by) {
  const auto rails = rails_of(finding);
  if (rails.size() != 2) return Error{Code::refused, "no two rails to exchange", "", ""};
  if (const auto done = field.exchange_rails(rails[0], rails[1]); !done) return done.error();
  HandsOn hands;
  for (const auto rail : rails) touch_rail(rail, field, by, "rails-exchanged", hands);
  hands.did = fmt::format("exchanged the plugs of M{:02}/R{} and M{:02}/R{}", rails[0].module,
                          rails[0].rail, rails[1].module, rails[1].rail);
  return hands;
}

Result<HandsOn> exchange_modules(const match::Finding& finding, trainer::Field& field,
                                 const std::string& by) {
  const auto modules = modules_of(finding);
  if (modules.size() != 2) return Error{Code::refused, "no two modules to exchange", "", ""};
  if (const auto done = field.exchange_modules(modules[0], modules[1]); !done) return done.error();
  HandsOn hands;
  touch_rails_of_modules(finding, field, by, hands);
  hands.did = fmt::format("exchanged modules {} and {}", modules[0], modules[1]);
  return hands;
}

// Moves each load of the block to its planned pin, and looks at the places it was on.
Result<HandsOn> shift_back(const match::Finding& finding, trainer::Field& field,
                           const std::string& by) {
  for (const auto pin : finding.pins) {
    if (const auto hung = field.rehook(pin); !hung) return hung.error();
  }
  HandsOn hands;
  for (const auto rail : rails_of(finding)) touch_rail(rail, field, by, "shifted", hands);
  hands.did = fmt::format("moved {} back by {}", pin_runs(finding.pins, 4), finding.by);
  return hands;
}

Result<HandsOn> swap_back(const match::Finding& finding, trainer::Field& field,
                          const std::string& by) {
  if (finding.pins.size() != 2) return Error{Code::refused, "no two pins to swap", "", ""};
  const auto swapped = field.swap_loads(finding.pins[0], finding.pins[1]);
  if (!swapped) return swapped.error();
  HandsOn hands;
  touch_pins(finding, by, hands);
  hands.did = fmt::format("swapped {}", pin_runs(finding.pins, 4));
  return hands;
}

// Whatever was found at the pin is put right with new parts.
Result<HandsOn> mend_pins(const match::Finding& finding, trainer::Field& field,
                          const std::string& by) {
  for (const auto pin : finding.pins) {
    if (field.hangs_on(pin) == nullptr) continue;
    if (const auto mended = field.clear_fault(pin); !mended) return mended.error();
  }
  HandsOn hands;
  touch_pins(finding, by, hands);
  hands.did = fmt::format("mended {}", pin_runs(finding.pins, 4));
  return hands;
}

}  // namespace

Result<HandsOn> act_on(const match::Finding& finding, trainer::Field& field,
                       const std::string& by) {
  switch (finding.kind) {
    case Kind::reversed:
      return turn_rail(finding, field, by);
    case Kind::rails_exchanged:
      return exchange_rails(finding, field, by);
    case Kind::modules_exchanged:
      return exchange_modules(finding, field, by);
    case Kind::shifted:
      return shift_back(finding, field, by);
    case Kind::swapped:
      return swap_back(finding, field, by);
    case Kind::tester_offset:
    case Kind::wire_differs:
      return Error{Code::refused, "a finding about the whole field is not mended at one module",
                   std::string(match::text(finding.kind)),
                   "zero the tester's leads, or correct the plan's wire"};
    default:
      return mend_pins(finding, field, by);
  }
}

}  // namespace walkdown::cli
