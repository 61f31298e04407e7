// SPDX-License-Identifier: Apache-2.0
#include "reader/trainer/field.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace walkdown::trainer {
namespace {

using plan::PinId;

Error no_such(const std::string& what) {
  return {Code::usage, "cannot change the simulated field", "the plan's layout has no " + what,
          "name one that is there"};
}

std::string rail_text(RailId rail) {
  return fmt::format("rail M{:02}/R{}", rail.module, rail.rail);
}

double symmetric(double half, std::mt19937_64& random) {
  return std::uniform_real_distribution<double>(-1, 1)(random) * half;
}

std::vector<PinId> all_pins(const plan::Layout& layout) {
  std::vector<PinId> pins;
  for (const auto& [module, rails] : layout.rails) {
    for (std::size_t rail = 0; rail < rails.size(); ++rail) {
      for (unsigned pin = 1; pin <= rails[rail]; ++pin) {
        pins.push_back(
            {module, static_cast<std::uint16_t>(rail + 1), static_cast<std::uint16_t>(pin)});
      }
    }
  }
  return pins;
}

PinId at(RailId rail, int pin) { return {rail.module, rail.rail, static_cast<std::uint16_t>(pin)}; }

}  // namespace

Field::Field(const plan::Plan& plan, const tester::Model& model, std::uint64_t seed)
    : plan_(plan), model_(model), random_(seed), pins_(all_pins(plan.layout)) {
  const plan::Wiring& wiring = plan_.catalogue.wiring;
  warm_k_ = wiring.temp_c - 20 + symmetric(wiring.temp_tol_k, random_);
  gain_ = 1 + symmetric(model_.accuracy_pct / 100, random_);
  offset_ohm_ = symmetric(model_.accuracy_ohm, random_) + model_.zero_ohm;
  for (const plan::PlannedPin& planned : plan_.pins) {
    if (planned.load.count == 0) continue;  // planned to stay free
    Hung hung = draw(planned.load, plan_.catalogue, warm_k_, random_);
    hung.home = planned.id;
    hung_.emplace(planned.id, std::move(hung));
  }
}

bool Field::exists(PinId pin) const {
  return pin.pin >= 1 && pin.pin <= plan_.layout.pins_on(pin.module, pin.rail);
}

const Hung* Field::hangs_on(PinId pin) const {
  const auto found = hung_.find(pin);
  return found != hung_.end() ? &found->second : nullptr;
}

std::optional<Hung> Field::take(PinId pin) {
  auto node = hung_.extract(pin);
  return node.empty() ? std::nullopt : std::optional(std::move(node.mapped()));
}

void Field::hang(PinId pin, std::optional<Hung> hung) {
  if (hung) hung_.insert_or_assign(pin, *std::move(hung));
}

Done Field::swap_loads(PinId a, PinId b) {
  for (const PinId pin : {a, b}) {
    if (!exists(pin)) return no_such("pin " + plan::text(pin));
  }
  std::optional<Hung> from_a = take(a);
  hang(a, take(b));
  hang(b, std::move(from_a));
  return done();
}

Done Field::shift(RailId rail, std::uint16_t first, std::uint16_t last, int by) {
  const int size = plan_.layout.pins_on(rail.module, rail.rail);
  if (first < 1 || first > last || last > size || std::abs(by) > size) {
    return no_such(
        fmt::format("block {}..{} to move by {} on {}", first, last, by, rail_text(rail)));
  }
  // Rotated over all places from the block to where it goes, also those beyond the rail's ends.
  const int low = std::min<int>(first, first + by);
  const int high = std::max<int>(last, last + by);
  std::vector<std::optional<Hung>> places(static_cast<std::size_t>(high - low + 1));
  for (int pin = std::max(low, 1); pin <= std::min(high, size); ++pin) {
    places[static_cast<std::size_t>(pin - low)] = take(at(rail, pin));
  }
  const auto turn = by >= 0 ? places.end() - by : places.begin() - by;
  std::rotate(places.begin(), turn, places.end());
  for (int pin = low; pin <= high; ++pin) {
    std::optional<Hung>& hung = places[static_cast<std::size_t>(pin - low)];
    if (pin >= 1 && pin <= size) {
      hang(at(rail, pin), std::move(hung));
    } else if (hung) {
      loose_.push_back(*std::move(hung));
    }
  }
  return done();
}

Done Field::reverse(RailId rail) {
  const int size = plan_.layout.pins_on(rail.module, rail.rail);
  if (size == 0) return no_such(rail_text(rail));
  for (int pin = 1; pin <= size / 2; ++pin) {
    Done swapped = swap_loads(at(rail, pin), at(rail, size + 1 - pin));
    if (!swapped) return swapped;
  }
  return done();
}

Done Field::exchange_rails(RailId a, RailId b) {
  const int size_a = plan_.layout.pins_on(a.module, a.rail);
  const int size_b = plan_.layout.pins_on(b.module, b.rail);
  if (size_a == 0) return no_such(rail_text(a));
  if (size_b == 0) return no_such(rail_text(b));
  for (int pin = 1; pin <= std::min(size_a, size_b); ++pin) {
    Done swapped = swap_loads(at(a, pin), at(b, pin));
    if (!swapped) return swapped;
  }
  return done();
}

Done Field::exchange_modules(std::uint16_t a, std::uint16_t b) {
  const auto in_a = plan_.layout.rails.find(a);
  const auto in_b = plan_.layout.rails.find(b);
  if (in_a == plan_.layout.rails.end()) return no_such(fmt::format("module M{:02}", a));
  if (in_b == plan_.layout.rails.end()) return no_such(fmt::format("module M{:02}", b));
  const std::size_t rails = std::min(in_a->second.size(), in_b->second.size());
  for (std::size_t i = 0; i < rails; ++i) {
    const auto rail = static_cast<std::uint16_t>(i + 1);
    if (in_a->second[i] == 0 || in_b->second[i] == 0) continue;
    Done exchanged = exchange_rails({a, rail}, {b, rail});
    if (!exchanged) return exchanged;
  }
  return done();
}

Done Field::rehook(PinId pin) {
  if (!exists(pin)) return no_such("pin " + plan::text(pin));
  const auto belongs = [&](const Hung& hung) { return hung.home == pin; };
  const auto loose = std::find_if(loose_.begin(), loose_.end(), belongs);
  if (loose != loose_.end()) {
    Hung own = std::move(*loose);
    loose_.erase(loose);
    if (auto other = take(pin)) loose_.push_back(*std::move(other));
    hang(pin, std::move(own));
    return done();
  }
  for (const auto& [where, hung] : hung_) {
    if (belongs(hung)) return where == pin ? done() : swap_loads(pin, PinId(where));
  }
  return no_such("load planned for " + plan::text(pin));
}

std::optional<tester::Reading> Field::read(PinId pin) {
  if (!exists(pin)) return std::nullopt;
  const tester::Reading over{pin, true, 0, std::nullopt};
  const Hung* hung = hangs_on(pin);
  if (hung == nullptr) return over;
  const std::optional<double> truth = ohm(*hung, lead_factor_, random_);
  if (!truth) return over;
  const double noise =
      model_.noise() > 0 ? std::normal_distribution<double>(0, model_.noise())(random_) : 0;
  const double seen = *truth * gain_ + offset_ohm_ + offset_fault_ohm_ + noise;
  if (seen > model_.range_ohm) return over;
  const double digits = std::round(seen / model_.resolution_ohm);
  const auto micro = std::llround(digits * model_.resolution_ohm * 1e6);
  return tester::Reading{pin, false, micro, std::nullopt};
}

}  // namespace walkdown::trainer
