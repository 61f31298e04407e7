// SPDX-License-Identifier: Apache-2.0
#include "gui/field/spread.h"

#include <algorithm>
#include <cmath>

namespace walkdown::gui {
namespace {

constexpr double kGap = 2;  // cells between two boxes
constexpr int kRounds = 400;

// Along the shorter way out, half of it each.
bool part(QRectF& a, QRectF& b) {
  const double dx = (a.width() + b.width()) / 2 + kGap - std::abs(a.center().x() - b.center().x());
  const double dy =
      (a.height() + b.height()) / 2 + kGap - std::abs(a.center().y() - b.center().y());
  if (dx <= 1e-6 || dy <= 1e-6) return false;
  if (dx < dy) {
    const double half = (a.center().x() <= b.center().x() ? dx : -dx) / 2;
    a.translate(-half, 0);
    b.translate(half, 0);
  } else {
    const double half = (a.center().y() <= b.center().y() ? dy : -dy) / 2;
    a.translate(0, -half);
    b.translate(0, half);
  }
  return true;
}

bool part_all(std::vector<QRectF>& boxes) {
  bool moved = false;
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    for (std::size_t k = i + 1; k < boxes.size(); ++k) moved = part(boxes[i], boxes[k]) || moved;
  }
  return moved;
}

// What still lies on another after all rounds goes below everything, one beside the other.
void set_aside(std::vector<QRectF>& boxes) {
  for (std::size_t i = 1; i < boxes.size(); ++i) {
    const bool hit = std::any_of(boxes.begin(), boxes.begin() + static_cast<std::ptrdiff_t>(i),
                                 [&](const QRectF& other) { return other.intersects(boxes[i]); });
    if (!hit) continue;
    double below = 0;
    for (const QRectF& box : boxes) below = std::max(below, box.bottom());
    boxes[i].moveTop(below + kGap);
  }
}

}  // namespace

void spread(std::vector<QRectF>& boxes) {
  for (int round = 0; round < kRounds; ++round) {
    if (!part_all(boxes)) return;
  }
  set_aside(boxes);
}

void set_out_rest(const Scene& scene, std::vector<QRectF>& boxes) {
  QRectF known;
  double area = 0;
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    if (scene.positions[i].on_site) known |= boxes[i];
    area += (boxes[i].width() + kGap) * (boxes[i].height() + kGap);
  }
  const double width = std::max(known.width(), std::sqrt(area) * 1.4);
  double x = 0, y = known.isNull() ? 0 : known.bottom() + kGap, row = 0;
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    if (scene.positions[i].on_site) continue;
    if (x > 0 && x + boxes[i].width() > width) {
      x = 0;
      y += row + kGap;
      row = 0;
    }
    boxes[i].moveTopLeft({known.left() + x, y});
    x += boxes[i].width() + kGap;
    row = std::max(row, boxes[i].height());
  }
}

}  // namespace walkdown::gui
