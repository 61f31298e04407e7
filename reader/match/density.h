// SPDX-License-Identifier: Apache-2.0
// Densities of sums of uniform quantities and noise, and of what a log-uniform fault makes of them.
// All per ohm.
#pragma once

#include <array>

namespace walkdown::match {

// A sum of independent uniforms and a normal: up to three of the widest uniforms are kept exactly,
// the rest is a normal of variance `rest`. Three hold a single igniter on a lead (bridge, lead,
// contacts) without loss; a longer series string is close to normal anyway.
struct Shape {
  double mean = 0;
  std::array<double, 3> box{};  // widths, widest first; 0 where there is none
  double rest = 0;              // variance

  [[nodiscard]] double variance() const;
  // The plateau: |y - mean| below this, the density is 1 / box[0]. Negative: there is none.
  [[nodiscard]] double plateau(double sigma) const;
};

// Adds one uniform of the given full width.
void add_box(Shape& shape, double width);

// Density at y, with `noise` (a variance) on top.
[[nodiscard]] double density(const Shape& shape, double y, double noise);

// The same for one noise, with everything worked out that does not depend on y: what a field asks
// for thousands of times.
class Ready {
 public:
  Ready() = default;
  Ready(const Shape& shape, double noise);

  [[nodiscard]] double at(double y) const;
  [[nodiscard]] double mean() const { return mean_; }
  // Beyond it the density is 0.
  [[nodiscard]] double reach() const { return reach_; }

 private:
  double mean_ = 0;
  double reach_ = -1;
  double per_ = 0;                  // one over the normal part's deviation
  double scale_ = 0;                // of the sum over corners
  int order_ = 0;                   // boxes kept
  std::array<double, 8> corner_{};  // in deviations; signs alternate as the bits of the index do
};

// Normal density and distribution at z for standard deviation 1.
[[nodiscard]] double normal_density(double z);
[[nodiscard]] double normal_below(double z);

// Log-uniform x in [lo, hi] added to a base that is nearly uniform of full width `width` about
// `base`: density at y. A width below 1e-6 counts as 1e-6. `ln_range` is ln(hi / lo).
[[nodiscard]] double added_density(double y, double base, double width, double lo, double hi,
                                   double ln_range);

// A base in parallel with a log-uniform x in [lo, hi].
[[nodiscard]] double shunted_density(double y, double base, double width, double lo, double hi,
                                     double ln_range);

}  // namespace walkdown::match
