// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numbers>

#include "reader/match/search.h"

namespace walkdown::match {
namespace {

// A rate of 0 is taken as so small that no reading outweighs it.
double nats(double probability) { return -std::log(std::max(probability, 1e-30)); }

// Loads that would be seen to have changed places with their neighbour.
double visible_swaps(const Field& field) {
  std::size_t ends = 0;
  for (const Rail& rail : field.rails) {
    for (std::uint32_t i = rail.first; i + 1 < rail.first + rail.size; ++i) {
      const std::uint32_t a = field.slots[i].spec;
      const std::uint32_t b = field.slots[i + 1].spec;
      if (a != b) ends += (a != kNothing ? 1U : 0U) + (b != kNothing ? 1U : 0U);
    }
  }
  return static_cast<double>(ends) / 2;
}

}  // namespace

Prices::Prices(const Field& field, const MoveRates& rates) : field_(field), rates_(rates) {
  neighbour_ = nats(rates.swap * rates.swap_neighbour / 2);
  const auto all = static_cast<double>(field.slots.size());
  elsewhere_ = nats(rates.swap * rates.swap_elsewhere / std::max(1.0, all));
  expected_ = rates.swap * visible_swaps(field) +
              static_cast<double>(field.rails.size()) *
                  (rates.shift + rates.reversal + rates.rail_exchange) +
              static_cast<double>(field.modules.size()) * rates.module_exchange;
  for (const Rail& rail : field.rails) {
    rail_.push_back(nats(rates.swap * rates.swap_rail / std::max(1.0, rail.size - 1.0)));
  }
  for (const Module& module : field.modules) {
    module_.push_back(nats(rates.swap * rates.swap_module / std::max(1.0, module.slots - 1.0)));
  }
  slide_ = nats(rates.shift * rates.slide_share);
  wrap_ = nats(rates.shift * (1 - rates.slide_share) * 2);
  reversal_ = nats(rates.reversal);
  step_ = {nats(rates.by_one), nats(rates.by_two), nats(rates.by_more)};
  std::uint32_t longest = 1;
  for (const Rail& rail : field.rails) longest = std::max(longest, rail.length);
  for (std::uint32_t n = 0; n <= longest; ++n) ln_.push_back(std::log(std::max(1U, n)));
}

// Both planned ends can have started it; a free pin starts nothing.
double Prices::swap(std::uint32_t a, std::uint32_t b) const {
  const std::uint32_t ra = field_.rail_of[a];
  const std::uint32_t rb = field_.rail_of[b];
  const bool both = field_.slots[a].spec != kNothing && field_.slots[b].spec != kNothing;
  const double twice = (both ? std::numbers::ln2 : 0) + eased_;
  if (ra == rb) return (a + 1 == b || b + 1 == a ? neighbour_ : rail_[ra]) - twice;
  const std::uint32_t module = field_.module_of[ra];
  return (module == field_.module_of[rb] ? module_[module] : elsewhere_) - twice;
}

double Prices::near_swap() const { return neighbour_ - std::numbers::ln2 - eased_; }

double Prices::least_swap(std::uint32_t rail) const {
  return std::min(rail_[rail], module_[field_.module_of[rail]]) - std::numbers::ln2 - eased_;
}

double Prices::far_swap() const { return elsewhere_ - std::numbers::ln2 - eased_; }

double Prices::step(int by) const {
  const int size = std::abs(by);
  return size <= 2 ? step_[size == 2 ? 1 : 0] : step_[2] + (size - 2) * std::numbers::ln2;
}

double Prices::slide(std::uint32_t length, int by) const {
  return slide_ + step(by) + ln_[length] - eased_;
}

double Prices::wrap(std::uint32_t length, int by) const {
  return wrap_ + step(by) + 2 * ln_[length] - eased_;
}

double Prices::reversal() const { return reversal_ - eased_; }

double Prices::rails(std::uint32_t a, std::uint32_t b) const {
  const bool inside = field_.module_of[a] == field_.module_of[b];
  const double here = field_.modules[field_.module_of[a]].rails;
  const double others = inside ? here - 1 : static_cast<double>(field_.rails.size()) - here;
  const double share = inside ? rates_.rails_of_one_module : 1 - rates_.rails_of_one_module;
  return nats(2 * rates_.rail_exchange * share / std::max(1.0, others)) - eased_;
}

double Prices::modules() const {
  const double others = std::max(1.0, static_cast<double>(field_.modules.size()) - 1);
  return nats(2 * rates_.module_exchange / others) - eased_;
}

}  // namespace walkdown::match
