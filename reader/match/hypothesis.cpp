// SPDX-License-Identifier: Apache-2.0
#include "reader/match/hypothesis.h"

#include <algorithm>
#include <utility>

namespace walkdown::match {

Hypothesis::Hypothesis(const Field& field, const Mixture& mixture)
    : field_(field),
      mixture_(mixture),
      state_(field, mixture),
      used_(field.slots.size(), 0),
      of_rail_(field.rails.size()) {}

void Hypothesis::apply(const Event& event) {
  std::vector<std::pair<std::uint32_t, std::uint32_t>> next;
  next.reserve(event.effects.size());
  for (const Effect& e : event.effects) {
    const bool bare = e.source == kNowhere;
    next.emplace_back(bare ? kNothing : state_.on[e.source],
                      bare ? kNowhere : state_.from[e.source]);
    ++used_[e.slot];
  }
  for (std::size_t i = 0; i < next.size(); ++i) {
    state_.set(field_, mixture_, event.effects[i].slot, next[i].first, next[i].second);
  }
}

void Hypothesis::reset(const Event& event) {
  for (const Effect& e : event.effects) {
    --used_[e.slot];
    const std::uint32_t planned = field_.slots[e.slot].spec;
    const std::uint32_t source = planned == kNothing ? kNowhere : e.slot;
    if (state_.on[e.slot] == planned && state_.from[e.slot] == source) continue;
    state_.set(field_, mixture_, e.slot, planned, source);
  }
}

std::size_t Hypothesis::take(Event event) {
  const std::size_t i = events_.size();
  apply(event);
  for (const Effect& e : event.effects) {
    auto& list = of_rail_[field_.rail_of[e.slot]];
    if (list.empty() || list.back() != i) list.push_back(static_cast<std::uint32_t>(i));
  }
  events_.push_back(std::move(event));
  held_.push_back(1);
  return i;
}

bool Hypothesis::alone(std::size_t i) const {
  return std::all_of(events_[i].effects.begin(), events_[i].effects.end(),
                     [&](const Effect& e) { return used_[e.slot] == 1; });
}

bool Hypothesis::untouched(const Event& event) const {
  return std::all_of(event.effects.begin(), event.effects.end(),
                     [&](const Effect& e) { return used_[e.slot] == 0; });
}

void Hypothesis::lift(std::size_t i) {
  reset(events_[i]);
  held_[i] = 0;
}

void Hypothesis::put_back(std::size_t i) {
  apply(events_[i]);
  held_[i] = 1;
}

void Hypothesis::put_instead(std::size_t i, Event event) {
  for (const Effect& e : event.effects) {
    auto& list = of_rail_[field_.rail_of[e.slot]];
    if (std::find(list.begin(), list.end(), i) == list.end()) {
      list.push_back(static_cast<std::uint32_t>(i));
    }
  }
  events_[i] = std::move(event);
  put_back(i);
}

std::vector<std::uint32_t> Hypothesis::rails_of(std::size_t i) const {
  std::vector<std::uint32_t> rails;
  for (const Effect& e : events_[i].effects) rails.push_back(field_.rail_of[e.slot]);
  std::sort(rails.begin(), rails.end());
  rails.erase(std::unique(rails.begin(), rails.end()), rails.end());
  return rails;
}

std::vector<std::size_t> Hypothesis::closed(std::vector<std::uint32_t>& rails,
                                            std::size_t most) const {
  std::vector<std::size_t> events;
  std::vector<std::uint32_t> open = rails;
  while (!open.empty()) {
    const std::uint32_t rail = open.back();
    open.pop_back();
    for (const std::uint32_t i : of_rail_[rail]) {
      if (held_[i] == 0 || std::find(events.begin(), events.end(), i) != events.end()) continue;
      events.push_back(i);
      for (const Effect& e : events_[i].effects) {
        const std::uint32_t other = field_.rail_of[e.slot];
        if (std::find(rails.begin(), rails.end(), other) != rails.end()) continue;
        rails.push_back(other);
        open.push_back(other);
      }
    }
    if (rails.size() > most) {
      rails.clear();
      return {};
    }
  }
  std::sort(rails.begin(), rails.end());
  std::sort(events.begin(), events.end());
  return events;
}

void Hypothesis::lift_all(const std::vector<std::size_t>& events) {
  for (const std::size_t i : events) lift(i);
}

void Hypothesis::put_all_back(const std::vector<std::size_t>& events) {
  for (const std::size_t i : events) put_back(i);
}

void Hypothesis::ease(double nats) {
  for (Event& event : events_) {
    event.price -= nats;
    event.net += nats;
  }
}

double Hypothesis::cost(const std::vector<std::uint32_t>& rails) const {
  double sum = 0;
  for (const std::uint32_t r : rails) {
    const Rail& rail = field_.rails[r];
    for (std::uint32_t i = rail.first; i < rail.first + rail.size; ++i) sum += state_.cost[i];
  }
  return sum;
}

}  // namespace walkdown::match
