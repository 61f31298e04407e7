// SPDX-License-Identifier: Apache-2.0
// What can be on a pin, and how likely the pin's readings are under each: the mixture. Slots handed
// in are slots of the field that it was made for.
#pragma once

#include <array>
#include <cstddef>
#include <span>
#include <vector>

#include "reader/match/field.h"
#include "reader/match/priors.h"
#include "reader/match/sample.h"
#include "reader/match/shared_fit.h"
#include "reader/match/spec.h"

namespace walkdown::match {

enum class Cause : std::size_t {
  sound,
  open,
  shorted,
  missing,
  extra,
  poor_joint,
  leak,
  intermittent,
  wrong_igniter,
  wrong_lead,
  repeated,   // the tester sent the line before once more: nothing is known of the pin
  unplanned,  // somebody's load where none is planned
  unknown,
};
inline constexpr std::size_t kCauses = 13;

// Probability of each cause; adds to 1.
using Posterior = std::array<double, kCauses>;

// Everything the likelihood needs, made once a field. The references outlive it.
class Mixture {
 public:
  Mixture(const Field& field, SpecTable& table, const Shared& shared, const Priors& priors,
          std::span<const Sample> samples, const tester::Model& tester);

  // -ln p(readings of the slot | this spec is planned there, faults included), up to a constant of
  // the slot. 0 for a slot that was not read. Never NaN.
  [[nodiscard]] double cost(const Slot& slot, std::uint32_t spec) const;

  // Why the readings are what they are, given the spec. Sound with certainty for an unread slot.
  [[nodiscard]] Posterior posterior(const Slot& slot, std::uint32_t spec) const;

  // Of that, the probability of a sound load; cheaper where the readings are in the middle.
  [[nodiscard]] double sound(const Slot& slot, std::uint32_t spec) const;

  // Density of the readings of anybody's sound load.
  [[nodiscard]] double anybody(double y) const;

  // True where repeats differ by more than the tester explains.
  [[nodiscard]] bool unsteady(const Slot& slot) const { return unsteady_[index(slot)]; }

  [[nodiscard]] const SpecTable& table() const { return table_; }
  [[nodiscard]] const Shared& shared() const { return shared_; }
  [[nodiscard]] const Priors& priors() const { return priors_; }

 private:
  using Weights = std::array<double, kCauses>;

  [[nodiscard]] std::size_t index(const Slot& slot) const {
    return static_cast<std::size_t>(&slot - field_.slots.data());
  }
  [[nodiscard]] bool jumps(const Seen& seen) const;

  // Density of a sound load where it is so much likelier than any fault that these need not be
  // weighed; 0 elsewhere.
  [[nodiscard]] double clearly_sound(const Slot& slot, const Spec& spec) const;
  [[nodiscard]] double noise_of(const Seen& seen) const;
  [[nodiscard]] Weights weights(const Slot& slot, std::uint32_t spec) const;
  [[nodiscard]] Weights numbers(const Slot& slot, const Spec& spec) const;
  void load_faults(Weights& w, const Spec& spec, double y, double noise) const;
  void lead_faults(Weights& w, const Spec& spec, double y, double noise) const;
  [[nodiscard]] Weights overs(const Slot& slot, const Spec& spec) const;
  [[nodiscard]] Weights bare(const Slot& slot) const;
  [[nodiscard]] double wobble(const Slot& slot, const Shape& sound) const;
  [[nodiscard]] double repeat_gain(const Slot& slot) const;
  [[nodiscard]] double per_spread(const Slot& slot) const;
  void prepare_levels();
  void prepare_anybody();
  void prepare_spreads();

  const Field& field_;
  SpecTable& table_;
  const Shared& shared_;
  Priors priors_;
  std::span<const Sample> samples_;
  const tester::Model& tester_;
  std::vector<double> anybody_;  // per bin of kBin ohm, from -1 ohm up
  // Slot -> one over the likelihood of the repeats' spread about their mean, when they share one
  // resistance. It stands in every ordinary explanation, so the others are set against it.
  std::vector<double> per_spread_;
  std::vector<bool> unsteady_;
};

}  // namespace walkdown::match
