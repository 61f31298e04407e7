// SPDX-License-Identifier: Apache-2.0
// The mistakes that are taken to have been made, and the state of the field under them.
#pragma once

#include <cstdint>
#include <vector>

#include "reader/match/search.h"

namespace walkdown::match {

class Hypothesis {
 public:
  Hypothesis(const Field& field, const Mixture& mixture);

  [[nodiscard]] State& state() { return state_; }
  [[nodiscard]] const State& state() const { return state_; }

  // Events are numbered in the order they were taken; a number stays when others go.
  [[nodiscard]] std::size_t size() const { return events_.size(); }
  [[nodiscard]] bool held(std::size_t i) const { return held_[i] != 0; }
  [[nodiscard]] const Event& event(std::size_t i) const { return events_[i]; }

  std::size_t take(Event event);

  // Only a mistake whose slots no other has touched can be lifted out on its own: what was there
  // before it is the plan.
  [[nodiscard]] bool alone(std::size_t i) const;
  void lift(std::size_t i);
  void put_back(std::size_t i);
  void put_instead(std::size_t i, Event event);

  // No event touches any slot of this one.
  [[nodiscard]] bool untouched(const Event& event) const;

  // The rails that event i touches, sorted.
  [[nodiscard]] std::vector<std::uint32_t> rails_of(std::size_t i) const;

  // Those held that touch one of the rails, in the order taken; adds to `rails`, sorted, every rail
  // that they touch, until the set is closed. Empty `rails` on return: it grew beyond `most`.
  [[nodiscard]] std::vector<std::size_t> closed(std::vector<std::uint32_t>& rails,
                                                std::size_t most) const;
  // Takes out a closed set of events, latest first.
  void lift_all(const std::vector<std::size_t>& events);
  void put_all_back(const std::vector<std::size_t>& events);

  // All prices fall by so much.
  void ease(double nats);

  // Nats of the readings over these rails; the prices of events are not in it.
  [[nodiscard]] double cost(const std::vector<std::uint32_t>& rails) const;

 private:
  void apply(const Event& event);
  void reset(const Event& event);

  const Field& field_;
  const Mixture& mixture_;
  State state_;
  std::vector<Event> events_;
  std::vector<char> held_;
  std::vector<std::uint16_t> used_;                  // slot -> how many events touch it
  std::vector<std::vector<std::uint32_t>> of_rail_;  // rail -> events that touch it, or once did
};

}  // namespace walkdown::match
