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

// The order-fold integral of the normal density of deviation s, from minus infinity to z * s.
double repeated_integral(int order, double z, double s) {
  if (z < -kFar) return 0;
  const double below = z > kFar ? 1.0 : normal_below(z);
  const double at = z > kFar ? 0.0 : normal_density(z);
  switch (order) {
    case 0:
      return at / s;
    case 1:
      return below;
    case 2:
      return s * (z * below + at);
    default:
      return s * s / 2 * ((z * z + 1) * below + z * at);
  }
}

}  // namespace

double normal_density(double z) {
  constexpr double scale = std::numbers::inv_sqrtpi / std::numbers::sqrt2;
  return scale * std::exp(-z * z / 2);
}

double normal_below(double z) { return std::erfc(-z / std::numbers::sqrt2) / 2; }

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

double density(const Shape& shape, double y, double noise) {
  double rest = shape.rest + noise;
  std::array<double, 3> box = shape.box;
  int order = 3;
  // A box narrower than the noise is noise: keeping it would only cancel digits.
  while (order > 0 && box[static_cast<std::size_t>(order - 1)] < 1.5 * std::sqrt(rest) + 1e-9) {
    double& narrow = box[static_cast<std::size_t>(order - 1)];
    rest += narrow * narrow / 12;
    narrow = 0;
    --order;
  }
  const double s = std::sqrt(std::max(rest, 1e-12));
  const double x = -std::abs(y - shape.mean);
  if (x < -(box[0] + box[1] + box[2]) / 2 - kFar * s) return 0;
  double sum = 0;
  double scale = 1;
  for (int i = 0; i < order; ++i) scale /= box[static_cast<std::size_t>(i)];
  for (unsigned corner = 0; corner < (1U << static_cast<unsigned>(order)); ++corner) {
    double at = x;
    double sign = 1;
    for (unsigned i = 0; i < static_cast<unsigned>(order); ++i) {
      const bool low = ((corner >> i) & 1U) != 0;
      at += (low ? -0.5 : 0.5) * box[i];
      if (low) sign = -sign;
    }
    sum += sign * repeated_integral(order, at / s, s);
  }
  return std::max(0.0, sum * scale);
}

double added_density(double y, double base, double width, double lo, double hi) {
  const double w = std::max(width, kLeastWidth);
  const double nearest = std::max(lo, y - base - w / 2);
  const double farthest = std::min(hi, y - base + w / 2);
  if (nearest >= farthest) return 0;
  return std::log(farthest / nearest) / (w * std::log(hi / lo));
}

double shunted_density(double y, double base, double width, double lo, double hi) {
  if (y <= 0) return 0;
  const double w = std::max(width, kLeastWidth);
  double least = std::max(base - w / 2, y);
  if (y < hi) least = std::max(least, hi * y / (hi - y));
  double most = base + w / 2;
  if (y < lo) most = std::min(most, lo * y / (lo - y));
  if (y >= hi || least >= most || least <= y) return 0;
  // Over the base r: dx/dy / (x ln(hi/lo)) = r / (y (r - y)) / ln(hi/lo).
  const double integral = (most - least) / y + std::log((most - y) / (least - y));
  return integral / (w * std::log(hi / lo));
}

}  // namespace walkdown::match
