// SPDX-License-Identifier: Apache-2.0
#include "reader/match/search_rail.h"

#include <algorithm>
#include <functional>
#include <utility>

namespace walkdown::match {
namespace {

constexpr int kMostShift = 12;
constexpr double kMostMild = 1.5;   // nats
constexpr std::size_t kFewBad = 6;  // bad pins of a rail that are held against each of its loads

}  // namespace

void RailSearch::run() {
  const double least = std::min({search_.prices_.reversal(), shift_price(1), shift_price(-1)});
  if (!hope(least)) return;
  prepare();
  reversal();
  for (int size = 1; size <= std::min(kMostShift, n_ - 1); ++size) {
    if (size > 2 && room_.bad.size() < 3) break;
    for (const int by : {size, -size}) shifts(by);
  }
}

void RailSearch::turn() {
  if (!hope(search_.prices_.reversal())) return;
  prepare();
  reversal();
}

// The least that a shift by so many costs.
double RailSearch::shift_price(int by) const {
  return std::min(search_.prices_.slide(rail_.length, by), search_.prices_.wrap(rail_.length, by));
}

// Whether any mistake at this price could pay. Most rails end here.
bool RailSearch::hope(double price) {
  std::size_t bad = 0;
  for (int t = 0; t < n_; ++t) {
    const double excess = state_.excess[slot(t)];
    (excess > kBad ? excess_ : mild_) += excess;
    bad += excess > kBad ? 1 : 0;
  }
  // Middling readings that another load would suit by chance add up to little.
  excess_ += std::min(mild_, kMostMild);
  if (bad == 0 || excess_ - price < search_.keep_) return false;
  bounds_.lay_out(field_, search_.mixture_, state_, rail_.first, n_);
  const bool few = bad <= kFewBad;
  room_.bad.clear();
  room_.heads.clear();
  for (int t = 0; t < n_; ++t) {
    if (bounds_.excess(t) <= kBad) continue;
    room_.bad.push_back(t);
    room_.heads.push_back(few ? bounds_.recovered(t) : bounds_.excess(t));
    excess_ += room_.heads.back() - bounds_.excess(t);
  }
  return excess_ - price >= search_.keep_;
}

void RailSearch::prepare() {
  room_.wrong.assign(static_cast<std::size_t>(n_) + 1, 0.0);
  room_.bare.assign(static_cast<std::size_t>(n_) + 1, 0.0);
  for (int t = 0; t < n_; ++t) {
    const auto i = static_cast<std::size_t>(t);
    room_.wrong[i + 1] = room_.wrong[i] + bounds_.excess(t);
    room_.bare[i + 1] = room_.bare[i] + bounds_.bare(t);
  }
  room_.bares.clear();
  for (const int t : room_.bad) {
    if (field_.slots[slot(t)].seen.open()) room_.bares.push_back(bounds_.excess(t));
  }
  std::sort(room_.heads.begin(), room_.heads.end(), std::greater<>());
  std::sort(room_.bares.begin(), room_.bares.end(), std::greater<>());
  room_.bare_gain.clear();
}

void RailSearch::add(Event event) {
  finish(event, field_, state_);
  // Where nothing is planned, another rail's loads may have been plugged in askew.
  if (event.members.empty()) {
    for (const Effect& e : event.effects) event.members.push_back(e.slot);
  }
  if (!event.effects.empty()) out_.push_back(std::move(event));
}

void RailSearch::reversal() {
  const double price = search_.prices_.reversal();
  if (excess_ - price < search_.keep_ || n_ < 3) return;
  double room = room_.wrong.back() - price;
  double bound = room;
  for (int t = 0; t < n_; ++t) {
    bound -= state_.excess[slot(t)] - bounds_.most(t, n_ - 1 - t);
    if (bound < search_.keep_) return;
  }
  for (int t = 0; t < n_; ++t) {
    room -= state_.excess[slot(t)] - gain(t, n_ - 1 - t);
    if (room < search_.keep_) return;
  }
  Event event;
  event.kind = Kind::reversed;
  event.price = price;
  event.net = room;
  for (int t = 0; t < n_; ++t) {
    event.effects.push_back(effect(t, n_ - 1 - t));
    if (field_.slots[slot(t)].spec != kNothing) event.members.push_back(slot(t));
  }
  add(std::move(event));
}

void Search::rail(std::uint32_t rail, Events& out) const { RailSearch(*this, rail, out).run(); }

void Search::reversed(std::uint32_t rail, Events& out) const {
  RailSearch(*this, rail, out).turn();
}

}  // namespace walkdown::match
