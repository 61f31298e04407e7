// SPDX-License-Identifier: Apache-2.0
#include "reader/match/replacement.h"

#include <algorithm>
#include <utility>

namespace walkdown::match {
namespace {

constexpr double kTie = 1e-9;
constexpr double kOneMore = 4;     // nats that another mistake costs, at least
constexpr double kMostMild = 1.5;  // middling readings that another load suits by chance add up to

void unique(std::vector<std::uint32_t>& values) {
  std::sort(values.begin(), values.end());
  values.erase(std::unique(values.begin(), values.end()), values.end());
}

void add_slots(const Event& event, std::vector<std::uint32_t>& slots) {
  for (const Effect& e : event.effects) slots.push_back(e.slot);
}

}  // namespace

Replacement::Replacement(Hypothesis& held, const Field& field, std::vector<std::size_t> old,
                         std::vector<std::uint32_t> rails)
    : held_(held), field_(field), old_(std::move(old)), all_rails_(std::move(rails)) {
  before_ = held_.cost(all_rails_) + prices_of(old_);
  held_.lift_all(old_);
}

void Replacement::put(Event event) {
  add_slots(event, slots_);
  unique(slots_);
  put_back_apart();
  for (const std::uint32_t slot : slots_) around_.push_back(field_.rail_of[slot]);
  unique(around_);
  first_ = held_.size();
  held_.take(std::move(event));
}

// In the order taken: one that lay on top of one that is out stays out too.
void Replacement::put_back_apart() {
  for (const std::size_t i : old_) {
    const auto& effects = held_.event(i).effects;
    const bool apart = std::none_of(effects.begin(), effects.end(), [&](const Effect& e) {
      return std::binary_search(slots_.begin(), slots_.end(), e.slot);
    });
    if (apart) {
      held_.put_back(i);
      kept_.push_back(i);
    } else {
      add_slots(held_.event(i), slots_);
      unique(slots_);
    }
  }
}

// Readings of other slots were not explained before, and are not now.
double Replacement::to_explain() const {
  double bad = 0;
  double mild = 0;
  for (const std::uint32_t slot : slots_) {
    const double excess = held_.state().excess[slot];
    (excess > kBad ? bad : mild) += excess;
  }
  return bad + std::min(mild, kMostMild);
}

double Replacement::cost_now() const {
  double sum = held_.cost(all_rails_) + prices_of(kept_);
  for (std::size_t i = first_; i < held_.size(); ++i) sum += held_.event(i).price;
  return sum;
}

bool Replacement::hopeless() const {
  return cost_now() - std::max(0.0, to_explain() - kOneMore) >= before_ - kTie;
}

void Replacement::settle() {
  if (cost_now() < before_ - kTie) return;
  std::vector<std::size_t> now = kept_;
  for (std::size_t i = first_; i < held_.size(); ++i) now.push_back(i);
  std::reverse(now.begin(), now.end());
  held_.lift_all(now);
  held_.put_all_back(old_);
}

double Replacement::prices_of(const std::vector<std::size_t>& events) const {
  double sum = 0;
  for (const std::size_t i : events) sum += held_.event(i).price;
  return sum;
}

}  // namespace walkdown::match
