// SPDX-License-Identifier: Apache-2.0
// Candidates: single mistakes that would explain readings which the present hypothesis does not.
//
// A mistake can only pay where readings are bad, and by no more than the excess of the slots that
// it touches. Every generator starts from that bound and gives up as soon as what is left of it is
// below `keep`: so the work follows the bad pins, not the square of the field.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#include "reader/match/rail_bounds.h"
#include "reader/match/state.h"

namespace walkdown::match {

using Events = std::vector<Event>;

// Prior costs in nats, from MoveRates and the number of other ends there are.
class Prices {
 public:
  Prices(const Field& field, const MoveRates& rates);

  [[nodiscard]] double swap(std::uint32_t a, std::uint32_t b) const;
  [[nodiscard]] double far_swap() const;  // the least for two pins of different modules
  // The least that a swap of a pin of this rail costs: with a neighbour; with another pin of the
  // rail or of its module.
  [[nodiscard]] double near_swap() const;
  [[nodiscard]] double least_swap(std::uint32_t rail) const;
  [[nodiscard]] double slide(std::uint32_t length, int by) const;
  [[nodiscard]] double wrap(std::uint32_t length, int by) const;
  [[nodiscard]] double reversal() const;
  [[nodiscard]] double rails(std::uint32_t a, std::uint32_t b) const;
  [[nodiscard]] double modules() const;

  // Mistakes to be made in this field.
  [[nodiscard]] double expected() const { return expected_; }

  // Every mistake is that much likelier than its rate says: this crew has made more of them.
  void ease(double nats) { eased_ += nats; }

 private:
  [[nodiscard]] double step(int by) const;

  const Field& field_;
  MoveRates rates_;
  double eased_ = 0, expected_ = 0;
  double neighbour_ = 0, elsewhere_ = 0;
  double slide_ = 0, wrap_ = 0, reversal_ = 0;  // of some shift of a rail of one pin
  std::array<double, 3> step_{};                // on top, by one, by two, by more
  std::vector<double> ln_;                      // of the lengths that rails have
  std::vector<double> rail_, module_;           // of a swap within each
};

class Search {
 public:
  Search(const Field& field, const Mixture& mixture, const State& state, const Prices& prices)
      : field_(field), mixture_(mixture), state_(state), prices_(prices) {}

  // Candidates below this net are not made.
  void keep(double nats) { keep_ = nats; }

  // Turned round or shifted; turned round only.
  void rail(std::uint32_t rail, Events& out) const;
  void reversed(std::uint32_t rail, Events& out) const;
  void rail_pair(std::uint32_t a, std::uint32_t b, Events& out) const;
  void module_pair(std::uint32_t a, std::uint32_t b, Events& out) const;
  // With any slot of its own module.
  void swaps(std::uint32_t slot, Events& out) const;
  void swap(std::uint32_t a, std::uint32_t b, Events& out) const;

  // Nats saved when the slot gets this spec.
  [[nodiscard]] double gain(std::uint32_t slot, std::uint32_t spec) const;
  // The event's net under the present state.
  [[nodiscard]] double net(const Event& event) const;
  [[nodiscard]] double excess(std::uint32_t first, std::uint32_t count) const;

 private:
  friend class RailSearch;

  // Runs of slots that change places, and slots that the other side does not have.
  struct Run {
    std::uint32_t a = 0, b = 0, count = 0;
  };
  struct Exchange {
    Kind kind = Kind::rails_exchanged;
    double price = 0;
    std::vector<Run> runs;
    std::vector<std::uint32_t> alone;
  };

  // Nats saved when the slot gets this spec, at most, without weighing the readings.
  [[nodiscard]] double most(std::uint32_t slot, std::uint32_t spec) const {
    const Seen& seen = field_.slots[slot].seen;
    if (state_.on[slot] == spec || seen.unread()) return 0;
    if (mixture_.near(slot, spec)) return state_.excess[slot];
    if (seen.open() && state_.on[slot] != kNothing) return kOpenEither;
    return state_.excess[slot] - (spec == kNothing ? kStray : kFaultToo);
  }
  [[nodiscard]] bool hopeless(const Exchange& exchange) const;
  void weigh(const Exchange& exchange, Events& out) const;
  bool add_side(std::uint32_t first, std::uint32_t count, Event& event) const;
  [[nodiscard]] Exchange module_runs(const Module& a, const Module& b) const;

  const Field& field_;
  const Mixture& mixture_;
  const State& state_;
  const Prices& prices_;
  double keep_ = -3;
  mutable RailRoom room_;
  struct Known {
    std::uint64_t pair = ~std::uint64_t{0};  // slot and spec
    double cost = 0;
  };
  static constexpr unsigned kKnownBits = 13;
  mutable std::vector<Known> known_ = std::vector<Known>(std::size_t{1} << kKnownBits);
};

// Keeps the slots that really change place, sorts, and fills in the net.
void finish(Event& event, const Field& field, const State& state);

}  // namespace walkdown::match
