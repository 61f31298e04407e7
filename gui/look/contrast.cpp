// SPDX-License-Identifier: Apache-2.0
#include "gui/look/contrast.h"

#include <algorithm>
#include <cmath>

namespace walkdown::gui {
namespace {

double linear(int channel) {
  const double share = channel / 255.0;
  return share <= 0.04045 ? share / 12.92 : std::pow((share + 0.055) / 1.055, 2.4);
}

}  // namespace

double luminance(const QColor& colour) {
  return 0.2126 * linear(colour.red()) + 0.7152 * linear(colour.green()) +
         0.0722 * linear(colour.blue());
}

double contrast(const QColor& a, const QColor& b) {
  const auto [low, high] = std::minmax({luminance(a), luminance(b)});
  return (high + 0.05) / (low + 0.05);
}

}  // namespace walkdown::gui
