// SPDX-License-Identifier: Apache-2.0
// The field as it is drawn: positions as on the ground, their modules under them, rails as rows and
// pins as cells. Lengths in cells: one pin is one wide. x to the east, y to the south.
#pragma once

#include <QPointF>
#include <QPolygonF>
#include <QRectF>
#include <QString>
#include <cstdint>
#include <unordered_map>
#include <vector>

#include "checklist/zone/site.h"
#include "reader/plan/plan.h"

namespace walkdown::gui {

inline constexpr float kCellW = 0.86F;  // the rest of a cell's width is the gap to the next
inline constexpr float kRailStep = 1.3F;
inline constexpr float kModuleHead = 1.5F;  // room for its name
inline constexpr float kPositionHead = 2.6F;

struct Cell {
  plan::PinId pin;
  float x = 0;  // left edge
  float y = 0;  // upper edge
  bool planned = false;
};

// cells first .. first + count - 1, rail by rail.
struct ModuleBlock {
  std::uint16_t module = 0;
  QRectF box;
  std::size_t first = 0;
  std::size_t count = 0;
};

struct PositionBlock {
  QString name;
  QRectF box;      // its name and all its modules
  QPointF ground;  // where it stands; the box is near, and never on another box
  bool on_site = false;
  std::size_t first = 0;  // modules first .. first + count - 1
  std::size_t count = 0;
};

struct Outline {
  zone::Role role = zone::Role::audience;
  QString name;
  QPolygonF line;
  bool closed = false;
};

struct Scene {
  std::vector<PositionBlock> positions;
  std::vector<ModuleBlock> modules;
  std::vector<Cell> cells;
  std::vector<Outline> outlines;
  QRectF bounds;           // of the positions
  QRectF site;             // of those and of all that stands around them
  double cells_per_m = 0;  // of the ground; 0 without a site
  std::unordered_map<plan::PinId, std::size_t> index;  // pin -> cell

  static constexpr std::size_t npos = static_cast<std::size_t>(-1);
  [[nodiscard]] std::size_t find(plan::PinId pin) const;  // npos where there is none
  [[nodiscard]] std::size_t at(QPointF point) const;      // the cell under a point
  [[nodiscard]] QRectF box(std::size_t cell) const;
};

// A module stands where most of its pins are planned. `site` may be null: the positions are then
// set out in rows, in the order of the plan.
[[nodiscard]] Scene make_scene(const plan::Plan& plan, const zone::Site* site);

}  // namespace walkdown::gui
