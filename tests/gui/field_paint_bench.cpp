// SPDX-License-Identifier: Apache-2.0
// Paint time of the field: 24,000 pins on 1920 x 1080, against a bare drawRects of the same cells,
// one call a colour. Each prints its median; the second and third print their ratio to the first.
#include <fmt/format.h>

#include <QApplication>
#include <QImage>
#include <QPainter>
#include <algorithm>
#include <array>
#include <chrono>
#include <functional>
#include <vector>

#include "tests/gui/wide_field.h"

namespace {

using namespace walkdown::gui;

double median_ms(const std::function<void()>& paint) {
  std::vector<double> times;
  for (int i = 0; i < 60; ++i) {
    const auto begin = std::chrono::steady_clock::now();
    paint();
    times.push_back(
        std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin)
            .count());
  }
  std::sort(times.begin(), times.end());
  return times[times.size() / 2];
}

using Cells = std::array<std::vector<QRectF>, walkdown::match::kVerdicts>;

void bare(QPainter& painter, const Cells& cells, const Palette& palette) {
  painter.fillRect(QRectF(0, 0, 1920, 1080), palette[Tone::ground]);
  painter.setPen(Qt::NoPen);
  for (std::size_t v = 0; v < cells.size(); ++v) {
    painter.setBrush(palette.verdicts.at(v).edge);
    painter.drawRects(cells.at(v).data(), static_cast<int>(cells.at(v).size()));
  }
}

}  // namespace

int main(int argc, char** argv) {
  qputenv("QT_QPA_PLATFORM", "offscreen");
  const QApplication application(argc, argv);
  const WideField field = wide_field(25, 20);
  const Scene scene = make_scene(field.plan, &field.site);
  const CellFacts facts = mixed_facts(scene);
  QImage image(1920, 1080, QImage::Format_ARGB32_Premultiplied);
  Lens lens;
  lens.px = std::min(1920 / scene.bounds.width(), 1080 / scene.bounds.height());
  lens.at = scene.bounds.topLeft();

  Cells cells;
  for (std::size_t i = 0; i < scene.cells.size(); ++i) {
    cells.at(static_cast<std::size_t>(facts.verdicts[i])).push_back(lens.to_screen(scene.box(i)));
  }
  const Look look;
  FieldPainter field_painter(scene);
  field_painter.set_look(look);
  const double reference = median_ms([&] {
    QPainter painter(&image);
    bare(painter, cells, look.palette());
  });
  fmt::print("bare drawRects, {} cells: {:.2f} ms\n", scene.cells.size(), reference);
  for (const double px : {lens.px, 9.0, 16.0, 48.0}) {
    Lens now = lens;
    now.px = px;
    if (px != lens.px) now.at = scene.positions.front().box.center() - QPointF(960, 540) / px;
    const double time = median_ms([&] {
      QPainter painter(&image);
      field_painter.paint(painter, QRectF(0, 0, 1920, 1080), now, facts, {});
    });
    fmt::print("field at {:.1f} px a cell: {:.2f} ms, {:.2f} times the reference\n", px, time,
               time / reference);
  }
  return 0;
}
