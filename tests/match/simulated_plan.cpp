// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>
#include <numbers>

#include "tests/match/simulator.h"

namespace walkdown::simulated {

double Dice::uniform(double lo, double hi) {
  return lo + (hi - lo) * static_cast<double>(bits_() >> 11U) * 0x1p-53;
}
double Dice::log_uniform(double lo, double hi) {
  return lo * std::exp(uniform() * std::log(hi / lo));
}
double Dice::normal(double sigma) {
  const double r = std::sqrt(-2 * std::log(uniform(1e-300, 1)));
  return sigma * r * std::cos(2 * std::numbers::pi * uniform());
}
std::size_t Dice::below(std::size_t n) {
  return std::min(n - 1, static_cast<std::size_t>(uniform() * static_cast<double>(n)));
}

namespace {

// ASTM B258 diameters and 1/58 ohm mm2/m, worked out here once more.
double awg_ohm_per_km(int n) {
  const double d_mm = 0.127 * std::pow(92.0, (36.0 - n) / 39.0);
  return 1000.0 / 58.0 / (std::numbers::pi / 4 * d_mm * d_mm);
}

plan::Catalogue catalogue() {
  plan::Catalogue c;
  const auto type = [&](const char* name, double lo, double hi) {
    c.igniters.push_back({name, {lo, hi}, "simulated", {}, {}, {}, {0, 0}});
  };
  type("A", 1.4, 1.9);
  type("B", 2.0, 2.6);
  type("C", 0.9, 1.2);
  const auto wire = [&](const char* name, double lo, double hi) {
    c.wires.push_back({name, {lo, hi}, 0.00393, "simulated"});
  };
  wire("AWG24", awg_ohm_per_km(24), awg_ohm_per_km(24));
  wire("AWG22", awg_ohm_per_km(22), awg_ohm_per_km(22));
  wire("0.5mm2", 1000.0 / 58 / 0.5, 39.0);  // IEC 60228 class 5
  wire("0.22mm2", 1000.0 / 58 / 0.22, 1.16 * 1000 / 58 / 0.22);
  return c;
}

plan::Load random_load(Dice& dice) {
  plan::Load load;
  load.igniter = static_cast<std::uint16_t>(dice.chance(0.6) ? 0 : 1 + dice.below(2));
  const double kind = dice.uniform();
  if (kind > 0.60) load.count = static_cast<std::uint16_t>(2 + dice.below(4));
  if (kind > 0.85) {
    load.count = static_cast<std::uint16_t>(2 + dice.below(2));
    load.join = plan::Join::parallel;
  }
  load.wire = static_cast<std::uint16_t>(dice.below(4));
  load.lead_m = 3 + static_cast<double>(dice.below(28));
  return load;
}

plan::Load alike_load() {
  plan::Load load;
  load.wire = 0;
  load.lead_m = 10;
  return load;
}

void fill_rail(const Setting& setting, Dice& dice, plan::Plan& plan, std::uint16_t module,
               std::uint16_t rail, std::uint16_t size) {
  plan::Load load = random_load(dice);
  std::size_t left = 0;
  for (std::uint16_t pin = 1; pin <= size; ++pin) {
    if (setting.style == Style::alike) load = alike_load();
    if (setting.style == Style::mixed || left == 0) {
      if (setting.style != Style::alike) load = random_load(dice);
      left = 3 + dice.below(10);
    }
    --left;
    const bool tail = pin + 2 > size;
    if (dice.chance(tail ? 0.5 : 0.08)) continue;
    plan::PlannedPin planned;
    planned.id = {module, rail, pin};
    planned.load = load;
    planned.cue = std::to_string(plan.pins.size() + 1);
    plan.pins.push_back(planned);
  }
}

}  // namespace

void wire_up(const Setting& setting, Dice& dice, plan::Plan& plan) {
  plan.catalogue = catalogue();
  if (setting.style == Style::alike) plan.catalogue.wires.resize(1);
  for (std::uint16_t module = 1; plan.pins.size() < setting.pins; ++module) {
    static constexpr std::uint16_t kSizes[] = {16, 16, 16, 18, 24, 32, 36};
    const std::uint16_t size = kSizes[dice.below(5)];
    const auto rails = static_cast<std::uint16_t>(1 + dice.below(size > 24 ? 2 : 4));
    plan.layout.rails[module].assign(rails, size);
    for (std::uint16_t rail = 1; rail <= rails; ++rail) {
      fill_rail(setting, dice, plan, module, rail, size);
    }
  }
}

bool same_load(const plan::Load* a, const plan::Load* b) {
  if (a == nullptr || b == nullptr) return a == b;
  return *a == *b;
}

Field simulate(const Setting& setting) {
  Field field;
  Dice dice(setting.seed * 0x9E3779B97F4A7C15U + static_cast<std::uint64_t>(setting.style));
  wire_up(setting, dice, field.plan);
  make_mistakes(setting, dice, field);
  take_readings(setting, dice, field);
  return field;
}

}  // namespace walkdown::simulated
