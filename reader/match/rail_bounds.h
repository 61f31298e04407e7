// SPDX-License-Identifier: Apache-2.0
// What the slots of one rail could save at most under each other's loads, without weighing a
// reading: laid out side by side, since a search asks for every slot under many loads.
#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

#include "reader/match/mixture.h"
#include "reader/match/state.h"

namespace walkdown::match {

// Where a load could not be sound, it would be moved and faulty. In nats.
inline constexpr double kOpenEither = 0.3;  // an open load is as likely as another open load
inline constexpr double kStray = 5;         // a number where nothing hangs, above a sound load
inline constexpr double kFaultToo = 3;      // at least, of a load that was moved and is faulty

class RailBounds {
 public:
  // The slots [first, first + count), numbered from 0 from here on.
  void lay_out(const Field& field, const Mixture& mixture, const State& state, std::uint32_t first,
               int count);

  // Nats saved when slot t gets the load of slot s, or is left bare, at most.
  [[nodiscard]] double most(int t, int s) const {
    const auto at = static_cast<std::size_t>(t);
    const auto of = static_cast<std::size_t>(s);
    if (on_[at] == on_[of]) return 0;
    if (on_[of] == kNothing) return bare_[at];
    return std::abs(shown_[at] - mean_[of]) < reach_[of] ? excess_[at] : other_[at];
  }
  [[nodiscard]] double bare(int t) const { return bare_[static_cast<std::size_t>(t)]; }
  [[nodiscard]] bool loaded(int t) const { return on_[static_cast<std::size_t>(t)] != kNothing; }
  [[nodiscard]] double excess(int t) const { return excess_[static_cast<std::size_t>(t)]; }

  // The most that slot t could save under any load of the rail, or bare.
  [[nodiscard]] double recovered(int t) const;

 private:
  std::vector<std::uint32_t> on_;
  std::vector<float> shown_, mean_, reach_;    // the reading; the load, as a sound one shows
  std::vector<double> excess_, other_, bare_;  // saved under a load that suits; does not; none
};

// Room that the search of one rail works in, kept from rail to rail.
struct RailRoom {
  RailBounds bounds;
  std::vector<double> wrong, bare;   // sums up to each slot: of excess; of what it gives bare
  std::vector<int> bad;              // slots
  std::vector<double> heads, bares;  // what these could save, largest first; bare: the open ones
  std::vector<double> sum, top;      // along the diagonal; the largest from there on
  std::vector<double> bare_gain;     // by slot, weighed
  std::vector<std::pair<int, int>> moves;  // of a sequence: position, source position
  std::vector<char> filled;
  enum class Form : std::uint8_t { slide, sequence, wrap };
  struct Shift {
    int lo = 0, end = 0;  // positions [lo, end)
    double net = 0;
    Form form = Form::slide;
  };
  std::vector<Shift> found;  // those of one size that would pay
};

}  // namespace walkdown::match
