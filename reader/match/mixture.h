// SPDX-License-Identifier: Apache-2.0
// What can be on a pin, and how likely the pin's readings are under each: the mixture. Slots handed
// in are slots of the field that it was made for.
#pragma once

#include <array>
#include <cmath>
#include <cstddef>
#include <memory>
#include <span>
#include <vector>

#include "reader/match/cause.h"
#include "reader/match/field.h"
#include "reader/match/priors.h"
#include "reader/match/sample.h"
#include "reader/match/shared_fit.h"
#include "reader/match/spec.h"
#include "reader/match/spec_model.h"

namespace walkdown::match {

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

  // Of that, the probability of a sound load; cheaper where the readings are in the middle. `cost`
  // is what cost() gave.
  [[nodiscard]] double sound(const Slot& slot, std::uint32_t spec, double cost) const;
  [[nodiscard]] double sound(const Slot& slot, std::uint32_t spec) const {
    return sound(slot, spec, cost(slot, spec));
  }

  // What a sound load shows, and how far from it; for "nothing" both are 0.
  struct Reach {
    float mean = 0, width = 0;
  };
  [[nodiscard]] const Reach& reach(std::uint32_t spec) const { return reaches_[spec]; }

  // The mean of the slot's numbers; without any, more than any load shows.
  [[nodiscard]] float shown(std::uint32_t slot) const { return shown_[slot]; }

  // True where the readings could come from a sound load of this spec; a number could come from
  // anything but "nothing".
  [[nodiscard]] bool near(std::uint32_t slot, std::uint32_t spec) const {
    if (spec == kNothing) return shown_[slot] == kOver;
    return std::abs(shown_[slot] - reaches_[spec].mean) < reaches_[spec].width;
  }

  // Density of the readings of anybody's sound load.
  [[nodiscard]] double anybody(double y) const;

  // True where repeats differ by more than the tester explains.
  [[nodiscard]] bool unsteady(const Slot& slot) const { return unsteady_[index(slot)] != 0; }

  // For a slot whose readings jump: the cost under the load that would suit them best.
  [[nodiscard]] double least_jump(const Slot& slot) const;

  // Cost of a sound reading of the load that is known most narrowly.
  [[nodiscard]] double least_usual() const { return least_usual_; }

  [[nodiscard]] const SpecTable& table() const { return table_; }
  [[nodiscard]] const Shared& shared() const { return shared_; }
  [[nodiscard]] const Priors& priors() const { return priors_; }

 private:
  // Models by spec for means of so many numbers; made when first asked for.
  using Models = std::vector<std::unique_ptr<SpecModel>>;
  static constexpr std::size_t kModelled = 4;
  static constexpr float kOver = 1e30F;

  [[nodiscard]] std::size_t index(const Slot& slot) const {
    return static_cast<std::size_t>(&slot - field_.slots.data());
  }
  // Steady numbers and nothing else: what nearly every slot has.
  [[nodiscard]] bool plain(const Slot& slot) const { return plain_[index(slot)] != 0; }

  // Density of a sound load where it is so much likelier than any fault that these need not be
  // weighed; 0 elsewhere.
  [[nodiscard]] double clearly_sound(const Slot& slot, std::uint32_t spec) const;
  [[nodiscard]] const SpecModel& model(std::uint32_t numbers, std::uint32_t spec) const;
  [[nodiscard]] double noise_of(std::uint32_t numbers) const;
  [[nodiscard]] Weights weights(const Slot& slot, std::uint32_t spec) const;
  [[nodiscard]] Weights numbers(const Slot& slot, std::uint32_t spec) const;
  [[nodiscard]] Weights overs(const Slot& slot, const Spec& spec) const;
  [[nodiscard]] Weights bare(const Slot& slot) const;
  [[nodiscard]] double wobble(const Slot& slot, const Shape& sound) const;
  [[nodiscard]] double steady_wobble(const Seen& seen, const Shape& sound) const;
  [[nodiscard]] double each_jump(const Seen& seen, double base) const;
  [[nodiscard]] double repeat_gain(const Slot& slot) const;
  // One over the likelihood of the repeats' spread about their mean, when they share one
  // resistance. It stands in every ordinary explanation, so the others are set against it.
  [[nodiscard]] double per_spread(const Seen& seen) const;
  // Its logarithm where there is no spread.
  [[nodiscard]] double least_spread(std::uint32_t numbers) const;
  [[nodiscard]] double unknown(const Seen& seen) const;
  void prepare_slots();
  void prepare_levels();
  void prepare_anybody();

  const Field& field_;
  SpecTable& table_;
  const Shared& shared_;
  Priors priors_;
  SizeLogs ln_;
  std::span<const Sample> samples_;
  const tester::Model& tester_;
  double least_usual_ = 0;
  std::array<double, kModelled> least_spread_{};  // by numbers, less one
  std::uint32_t usual_ = 1;                       // numbers that most pins have
  double each_jump_ = 0;         // density of one reading of an intermittent, times its ohms
  std::vector<double> anybody_;  // per bin of kBin ohm, from -1 ohm up
  std::vector<char> plain_, unsteady_;
  std::vector<float> shown_;    // slot -> mean of its numbers, kOver without any
  std::vector<Reach> reaches_;  // by spec
  mutable std::array<Models, kModelled> models_;
  mutable std::unique_ptr<SpecModel> other_;  // for more numbers: the last one asked for
};

}  // namespace walkdown::match
