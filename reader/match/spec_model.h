// SPDX-License-Identifier: Apache-2.0
// What a pin shows that is planned to carry one spec, sound or faulty: all that can be worked out
// before the reading is known.
#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include "reader/match/cause.h"
#include "reader/match/priors.h"
#include "reader/match/shared_fit.h"
#include "reader/match/spec.h"

namespace walkdown::match {

// Logarithms of the ranges in Sizes.
struct SizeLogs {
  explicit SizeLogs(const Sizes& size);
  double joint, leak, lead_short, lead_long;
};

class SpecModel {
 public:
  // For means of readings with this variance of noise. The references outlive it.
  SpecModel(const SpecTable& table, const Spec& spec, const Shared& shared, const Priors& priors,
            const SizeLogs& ln, double noise);

  // Adds the weight (rate times density) of each cause that shows a steady number, at y.
  void faults(double y, Weights& w) const;
  [[nodiscard]] double sound(double y) const { return keep_ * sound_.at(y); }

 private:
  struct Instead {
    Cause cause = Cause::missing;
    double rate = 0;
    Ready load;
  };

  void instead(Cause cause, double rate, const Shape& load, const Spec& spec, double noise);
  void loads(const Spec& spec, double noise);
  void lead(const Spec& spec, double noise);

  const SpecTable& table_;
  const Shared& shared_;
  const Priors& priors_;
  const SizeLogs& ln_;
  double keep_ = 0;  // probability that nothing is wrong
  Ready sound_;
  double base_ = 0, width_ = 0;  // of a sound load, as one box: what a joint or a leak changes
  std::vector<Instead> instead_;
  Ready end_, along_;  // shunted at the end of the lead, or along it
  double short_below_ = 0;
  bool has_lead_ = false;
  double lead_ = 0, rest_ = 0, rest_width_ = 0;  // the lead, and everything but the lead
};

}  // namespace walkdown::match
