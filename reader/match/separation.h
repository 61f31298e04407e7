// SPDX-License-Identifier: Apache-2.0
// How well two specs can be told apart by this tester.
#pragma once

#include <cstdint>
#include <memory>
#include <unordered_map>
#include <vector>

#include "reader/match/mixture.h"

namespace walkdown::match {

// One pin is planned to carry `planned` and carries a sound `there`.
struct Apart {
  double mean = 0;  // of the evidence ln p(y | there) - ln p(y | planned), nats
  double variance = 0;
  double flagged = 0;  // probability that the pin does not fit
};

// A mixture for a field that reads as planned, and probe slots to put values on.
class Separation {
 public:
  Separation(const plan::Plan& plan, const tester::Model& tester, const Priors& priors,
             unsigned readings);

  [[nodiscard]] const Apart& apart(std::uint32_t planned, std::uint32_t there);

  // Share of sound loads of the spec, each changed by `change`, that do not fit.
  template <typename Change>
  [[nodiscard]] double flagged(std::uint32_t spec, Change change) {
    const Shape sound = table_.specs[spec].sound;
    double sum = 0;
    for (std::size_t k = 0; k < kProbes; ++k) {
      put(k, change(draw(sound, k)));
      if (mixture_->sound(probe(k), spec) < 0.5) sum += 1.0 / kProbes;
    }
    return sum;
  }

  // Share of loads of another shape (without lead) in place of the spec's own that do not fit.
  [[nodiscard]] double flagged_load(std::uint32_t spec, const Shape& load);

  [[nodiscard]] const Field& field() const { return field_; }
  [[nodiscard]] const SpecTable& table() const { return table_; }

 private:
  static constexpr std::size_t kProbes = 40;

  [[nodiscard]] const Slot& probe(std::size_t k) const { return field_.slots[first_ + k]; }
  void put(std::size_t k, double ohm);
  [[nodiscard]] double draw(const Shape& shape, std::size_t k) const;
  [[nodiscard]] Apart weigh(std::uint32_t planned, std::uint32_t there);

  SpecTable table_;
  std::vector<Sample> samples_;
  tester::Model tester_;
  Field field_;
  Shared shared_;
  std::size_t first_ = 0;  // probe slots
  std::size_t open_ = 0;   // a slot that reads over range
  unsigned readings_;
  std::unique_ptr<Mixture> mixture_;
  std::unordered_map<std::uint64_t, Apart> known_;
};

}  // namespace walkdown::match
