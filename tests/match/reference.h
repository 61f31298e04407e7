// SPDX-License-Identifier: Apache-2.0
// A slow, near-exact search for the explanation of least cost, with the likelihoods and the prices
// of the diagnosis: what the fast search loses against it is the search's fault, and nobody else's.
//
// Every single mistake of every kind is tried at every step, without any bound; then each is
// dropped, replaced and added to until nothing changes; then all of it again from every block
// mistake that loses at first, down to -12 nats.
#pragma once

#include <vector>

#include "reader/match/explain.h"
#include "reader/match/field_wide.h"
#include "tests/match/simulator.h"

namespace walkdown::simulated {

// The diagnosis of one simulated field, taken apart: everything up to the search.
class Bench {
 public:
  explicit Bench(const Field& simulated);

  [[nodiscard]] double cost(std::uint32_t slot, std::uint32_t spec) const;

  // Cost in nats of a hypothesis: readings and prices. The plan itself has no mistakes.
  [[nodiscard]] double total(const std::vector<match::Event>& mistakes) const;
  [[nodiscard]] double truth() const;

  // All mistakes are that much likelier than their rates: what the diagnosis learned of the crew.
  void ease(double nats) { prices_.ease(nats); }

  // The mistakes that were made, as events with their prices; only those that moved a load.
  [[nodiscard]] std::vector<match::Event> made() const;

  // What the diagnosis says of each pin when this hangs in the field.
  [[nodiscard]] std::vector<match::PinVerdict> verdicts(const match::State& state) const;

  [[nodiscard]] const match::Field& field() const { return field_; }
  [[nodiscard]] const match::Mixture& mixture() const { return mixture_; }
  [[nodiscard]] const match::Prices& prices() const { return prices_; }

 private:
  const Field& simulated_;
  match::Priors priors_;
  match::SpecTable planned_;
  match::Field field_;
  match::FieldWide wide_;
  match::Mixture mixture_;
  match::Prices prices_;
  mutable std::vector<double> known_;  // slot by spec; NaN where not worked out yet
};

// What is on each slot: its spec.
using On = std::vector<std::uint32_t>;
void apply(const match::Event& event, On& on);

// The explanation of least cost that the slow search finds.
[[nodiscard]] std::vector<match::Event> reference_search(const Bench& bench);

}  // namespace walkdown::simulated
