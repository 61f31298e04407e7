// SPDX-License-Identifier: Apache-2.0
#include "gui/field/ground.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace walkdown::gui {
namespace {

constexpr double kMetresPerDegree = 111'320;  // of latitude, near enough for a drawing
constexpr double kFilled = 0.40;              // share of the ground under blocks

}  // namespace

Ground::Ground(const zone::Site* site, const Scene& scene) : site_(site) {
  if (site_ == nullptr || site_->positions.empty()) return;
  for (const auto& position : site_->positions) {
    middle_.lon_deg += position.at.lon_deg / static_cast<double>(site_->positions.size());
    middle_.lat_deg += position.at.lat_deg / static_cast<double>(site_->positions.size());
  }
  QRectF ground;
  for (const auto& position : site_->positions) {
    ground |= QRectF(metres(position.at), QSizeF(1, 1));
  }
  double area = 0;
  for (const PositionBlock& block : scene.positions) area += block.box.width() * block.box.height();
  // A row of positions has no area of its own: at least a third as deep as it is long.
  const double longest = std::max({ground.width(), ground.height(), 1.0});
  const double metres2 =
      std::max(ground.width(), longest / 3) * std::max(ground.height(), longest / 3);
  cells_per_m_ = std::sqrt(std::max(area, 1.0) / kFilled / metres2);
}

QPointF Ground::metres(zone::Point point) const {
  const double shrink = std::cos(middle_.lat_deg * std::numbers::pi / 180);
  double lon = point.lon_deg - middle_.lon_deg;
  if (lon > 180) lon -= 360;
  if (lon < -180) lon += 360;
  return {lon * shrink * kMetresPerDegree, (middle_.lat_deg - point.lat_deg) * kMetresPerDegree};
}

std::optional<QPointF> Ground::of(const QString& position) const {
  if (site_ == nullptr) return std::nullopt;
  const auto* found = site_->find(position.toStdString());
  if (found == nullptr) return std::nullopt;
  return map(found->at);
}

void Ground::draw_outlines(Scene& scene) const {
  if (site_ == nullptr || cells_per_m_ <= 0) return;
  for (const zone::Shape& shape : site_->shapes) {
    for (const auto& ring : shape.rings) {
      Outline outline{shape.role, QString::fromStdString(shape.name), {}, shape.polygon};
      for (const auto& point : ring) outline.line.append(map(point));
      scene.site |= outline.line.boundingRect();
      scene.outlines.push_back(std::move(outline));
    }
  }
}

}  // namespace walkdown::gui
