// SPDX-License-Identifier: Apache-2.0
// From degrees to the plane of the scene. For drawing only: distances that matter are geodesic and
// are judged in checklist/zone. Internal to this folder.
#pragma once

#include <optional>

#include "gui/field/scene.h"

namespace walkdown::gui {

class Ground {
 public:
  // `site` may be null. The scale is chosen so that the blocks of `scene` fill two fifths of
  // the ground they stand on.
  Ground(const zone::Site* site, const Scene& scene);

  [[nodiscard]] std::optional<QPointF> of(const QString& position) const;
  [[nodiscard]] double cells_per_m() const { return cells_per_m_; }
  void draw_outlines(Scene& scene) const;

 private:
  [[nodiscard]] QPointF metres(zone::Point point) const;
  [[nodiscard]] QPointF map(zone::Point point) const { return metres(point) * cells_per_m_; }

  const zone::Site* site_;
  zone::Point middle_;
  double cells_per_m_ = 0;
};

}  // namespace walkdown::gui
