// SPDX-License-Identifier: Apache-2.0
// Paints a scene. Cells of one verdict are drawn together: that is what keeps 24,000 of them
// smooth. What is drawn depends on how large a cell is: a bar, a shape, a shape with its letter,
// and at last the pin's number and value.
#pragma once

#include <QPainter>
#include <QPixmap>
#include <array>
#include <map>
#include <optional>
#include <vector>

#include "gui/field/scene.h"
#include "gui/look/look.h"
#include "reader/match/outcome.h"

namespace walkdown::gui {

// Scene to screen: screen = (scene - at) * px.
struct Lens {
  QPointF at;      // the scene's point in the upper left corner
  double px = 10;  // pixels of one cell

  [[nodiscard]] QPointF to_screen(QPointF scene) const { return (scene - at) * px; }
  [[nodiscard]] QPointF to_scene(QPointF screen) const { return screen / px + at; }
  [[nodiscard]] QRectF to_screen(const QRectF& box) const {
    return {to_screen(box.topLeft()), box.size() * px};
  }
};

// What is known of each cell; as long as Scene::cells.
struct CellFacts {
  std::vector<match::Verdict> verdicts;
  std::vector<float> ohm;  // NaN where there is none
};
// Cells that nothing was planned for and nothing read on show as free: an empty outline.
[[nodiscard]] CellFacts facts_of(const Scene& scene, const match::Outcome& outcome);

struct Marked {
  std::optional<std::size_t> picked;  // the cell that has the cursor
  std::vector<std::size_t> group;     // drawn round: an alike group, or a finding's pins
};

class FieldPainter {
 public:
  explicit FieldPainter(const Scene& scene) : scene_(&scene) {}

  void set_look(const Look& look);
  void paint(QPainter& painter, const QRectF& area, const Lens& lens, const CellFacts& facts,
             const Marked& marked);

 private:
  void ground(QPainter& painter, const Lens& lens) const;
  void outline_names(QPainter& painter, const Lens& lens) const;
  void sort_cells(const QRectF& seen, const CellFacts& facts);
  void bars(QPainter& painter, const Lens& lens);
  void free_cells(QPainter& painter, const Lens& lens);
  void shapes(QPainter& painter, const Lens& lens);
  void values(QPainter& painter, const Lens& lens, const CellFacts& facts) const;
  void names(QPainter& painter, const QRectF& seen, const Lens& lens) const;
  void modules(QPainter& painter, const QRectF& seen, const Lens& lens) const;
  void marks(QPainter& painter, const Lens& lens, const Marked& marked) const;
  const QPixmap& pixmap(match::Verdict verdict, int size_px, qreal ratio);

  const Scene* scene_;
  Look look_;
  // Cells in sight, by verdict; the last are those that are free.
  std::array<std::vector<std::uint32_t>, match::kVerdicts + 1> seen_;
  std::vector<QRectF> rects_;
  std::vector<QPainter::PixmapFragment> fragments_;
  std::map<std::pair<int, int>, QPixmap> pixmaps_;  // verdict, size
};

}  // namespace walkdown::gui
