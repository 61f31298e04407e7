// SPDX-License-Identifier: Apache-2.0
#include "reader/match/density.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace walkdown::match {
namespace {

constexpr double kFar = 8.5;  // standard deviations; beyond, a normal is 0 in double for our use
constexpr double kLeastWidth = 1e-6;
constexpr double kPerUnit = 64;  // knots per standard deviation

// The normal density and its integrals at one knot, for standard deviation 1.
struct Knot {
  double density = 0;
  double below = 0;   // integral of the density
  double second = 0;  // integral of that
  double third = 0;   // and of that
};

// Each integral is the derivative of the next, so a cubic between knots costs no exponential; it is
// good to 1e-10 of the whole, far below the least density that we tell apart.
constexpr std::size_t kKnots = static_cast<std::size_t>(2 * kFar * kPerUnit) + 2;

std::array<Knot, kKnots> make_knots() {
  std::array<Knot, kKnots> made{};
  for (std::size_t i = 0; i < kKnots; ++i) {
    const double z = -kFar + static_cast<double>(i) / kPerUnit;
    const double at = normal_density(z);
    const double below = std::erfc(-z / std::numbers::sqrt2) / 2;
    made[i] = {at, below, z * below + at, ((z * z + 1) * below + z * at) / 2};
  }
  return made;
}

const std::array<Knot, kKnots> knots = make_knots();

// Cubic through both ends with the given slopes, t in [0, 1] of a step.
double between(double from, double to, double slope_from, double slope_to, double t) {
  constexpr double step = 1 / kPerUnit;
  const double rise = to - from;
  const double a = slope_from * step - rise;
  const double b = rise - slope_to * step;
  return from + t * rise + t * (1 - t) * ((1 - t) * a + t * b);
}

// The order-fold integral of the normal density of deviation 1, from minus infinity to z.
template <int order>
inline double repeated_integral(double z) {
  static_assert(order >= 1 && order <= 3);
  if (z < -kFar) return 0;
  if (z >= kFar) return order == 1 ? 1 : order == 2 ? z : (z * z + 1) / 2;
  const double at = (z + kFar) * kPerUnit;
  const auto i = static_cast<std::size_t>(at);
  const double t = at - static_cast<double>(i);
  const Knot& low = knots[i];
  const Knot& high = knots[i + 1];
  if constexpr (order == 1) return between(low.below, high.below, low.density, high.density, t);
  if constexpr (order == 2) return between(low.second, high.second, low.below, high.below, t);
  return between(low.third, high.third, low.second, high.second, t);
}

}  // namespace

double normal_density(double z) {
  constexpr double scale = std::numbers::inv_sqrtpi / std::numbers::sqrt2;
  return scale * std::exp(-z * z / 2);
}

double normal_below(double z) { return repeated_integral<1>(z); }

double Shape::variance() const {
  return rest + (box[0] * box[0] + box[1] * box[1] + box[2] * box[2]) / 12;
}

double Shape::plateau(double sigma) const { return (box[0] - box[1] - box[2]) / 2 - 5 * sigma; }

void add_box(Shape& shape, double width) {
  for (double& held : shape.box) {
    if (width > held) std::swap(width, held);
  }
  shape.rest += width * width / 12;
}

Ready::Ready(const Shape& shape, double noise) : mean_(shape.mean) {
  double rest = shape.rest + noise;
  std::array<double, 3> box = shape.box;
  order_ = 3;
  // A box narrower than the noise is noise: keeping it would only cancel digits.
  while (order_ > 0 && box[static_cast<std::size_t>(order_ - 1)] < 1.5 * std::sqrt(rest) + 1e-9) {
    double& narrow = box[static_cast<std::size_t>(order_ - 1)];
    rest += narrow * narrow / 12;
    narrow = 0;
    --order_;
  }
  const double s = std::sqrt(std::max(rest, 1e-12));
  reach_ = (box[0] + box[1] + box[2]) / 2 + kFar * s;
  per_ = 1 / s;
  scale_ = per_;
  for (int i = 0; i < order_; ++i) scale_ *= s / box[static_cast<std::size_t>(i)];
  for (unsigned c = 0; c < (1U << static_cast<unsigned>(order_)); ++c) {
    for (unsigned i = 0; i < static_cast<unsigned>(order_); ++i) {
      corner_[c] += ((c >> i) & 1U ? -0.5 : 0.5) * box[i] * per_;
    }
  }
}

double Ready::at(double y) const {
  const double off = std::abs(y - mean_);
  if (off > reach_) return 0;
  const double x = -off * per_;
  double sum = 0;
  switch (order_) {
    case 0:
      sum = normal_density(x);
      break;
    case 1:
      sum = repeated_integral<1>(x + corner_[0]) - repeated_integral<1>(x + corner_[1]);
      break;
    case 2:
      sum = repeated_integral<2>(x + corner_[0]) - repeated_integral<2>(x + corner_[1]) -
            repeated_integral<2>(x + corner_[2]) + repeated_integral<2>(x + corner_[3]);
      break;
    default:
      for (unsigned c = 0; c < 8; ++c) {
        const bool odd = (0x96U >> c) & 1U;  // corners with an odd number of low ends
        sum += (odd ? -1 : 1) * repeated_integral<3>(x + corner_[c]);
      }
  }
  return std::max(0.0, sum * scale_);
}

double density(const Shape& shape, double y, double noise) { return Ready(shape, noise).at(y); }

double added_density(double y, double base, double width, double lo, double hi, double ln_range) {
  const double w = std::max(width, kLeastWidth);
  const double nearest = std::max(lo, y - base - w / 2);
  const double farthest = std::min(hi, y - base + w / 2);
  if (nearest >= farthest) return 0;
  return std::log(farthest / nearest) / (w * ln_range);
}

double shunted_density(double y, double base, double width, double lo, double hi, double ln_range) {
  if (y <= 0) return 0;
  const double w = std::max(width, kLeastWidth);
  double least = std::max(base - w / 2, y);
  if (y < hi) least = std::max(least, hi * y / (hi - y));
  double most = base + w / 2;
  if (y < lo) most = std::min(most, lo * y / (lo - y));
  if (y >= hi || least >= most || least <= y) return 0;
  // Over the base r: dx/dy / (x ln(hi/lo)) = r / (y (r - y)) / ln(hi/lo).
  const double integral = (most - least) / y + std::log((most - y) / (least - y));
  return integral / (w * ln_range);
}

}  // namespace walkdown::match
