// SPDX-License-Identifier: Apache-2.0
// How often what goes wrong: common practice, no source. Only their order of size matters here.
#include <array>
#include <cmath>
#include <random>

#include "reader/trainer/faults.h"

namespace walkdown::trainer {
namespace {

constexpr double kLoadFaultsPerPin = 1.0 / 30;
constexpr double kMovesPerPin = 1.0 / 150;

class Drawing {
 public:
  Drawing(const plan::Plan& plan, std::uint64_t seed) : plan_(plan), random_(seed) {}

  bool happens(double chance) { return unit_(random_) < chance; }
  std::size_t below(std::size_t n) {
    return std::min(n - 1, static_cast<std::size_t>(unit_(random_) * static_cast<double>(n)));
  }
  double log_uniform(double low, double high) { return low * std::pow(high / low, unit_(random_)); }

  Fault load_fault(const plan::PlannedPin& planned) {
    constexpr std::array kKinds{
        FaultKind::open,         FaultKind::open,          FaultKind::poor_joint,
        FaultKind::poor_joint,   FaultKind::short_circuit, FaultKind::leak,
        FaultKind::intermittent, FaultKind::wrong_lead,    FaultKind::missing_igniter,
        FaultKind::extra_igniter};
    Fault fault;
    fault.kind = kKinds.at(below(kKinds.size()));
    fault.pins = {planned.id};
    if (fault.kind == FaultKind::missing_igniter && planned.load.count < 2) {
      fault.kind = FaultKind::open;
    }
    if (fault.kind == FaultKind::poor_joint) fault.amount = log_uniform(0.5, 20);
    if (fault.kind == FaultKind::leak) fault.amount = log_uniform(5, 500);
    if (fault.kind == FaultKind::wrong_lead) fault.amount = log_uniform(1.3, 2.5);
    return fault;
  }

  Fault move() {
    const plan::PinId pin = plan_.pins[below(plan_.pins.size())].id;
    const RailId rail{pin.module, pin.rail};
    const std::uint16_t size = plan_.layout.pins_on(pin.module, pin.rail);
    Fault fault;
    const std::size_t which = size < 3 ? 0 : below(4);
    if (which == 0) {
      fault.kind = FaultKind::swapped;
      fault.pins = {pin, plan_.pins[below(plan_.pins.size())].id};
    } else if (which == 1) {
      fault.kind = FaultKind::reversed;
      fault.rails = {rail};
    } else {
      fault.kind = FaultKind::shifted;
      fault.rails = {rail};
      fault.first = static_cast<std::uint16_t>(1 + below(size - 1U));
      fault.last = static_cast<std::uint16_t>(size - 1);
      fault.by = 1;
    }
    return fault;
  }

 private:
  const plan::Plan& plan_;
  std::mt19937_64 random_;
  std::uniform_real_distribution<double> unit_{0, 1};
};

}  // namespace

std::vector<Fault> random_faults(const plan::Plan& plan, std::uint64_t seed) {
  Drawing drawing(plan, seed);
  std::vector<Fault> faults;
  for (const plan::PlannedPin& planned : plan.pins) {
    if (planned.load.count > 0 && drawing.happens(kLoadFaultsPerPin)) {
      faults.push_back(drawing.load_fault(planned));
    }
  }
  for (std::size_t i = 0; i < plan.pins.size(); ++i) {
    if (drawing.happens(kMovesPerPin)) faults.push_back(drawing.move());
  }
  return faults;
}

}  // namespace walkdown::trainer
