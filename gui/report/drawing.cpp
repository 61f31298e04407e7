// SPDX-License-Identifier: Apache-2.0
#include "gui/report/drawing.h"

#include <QPainter>
#include <QSvgRenderer>
#include <algorithm>
#include <array>
#include <cmath>

namespace walkdown::gui {
namespace {

constexpr int kStep_px = 5 * kSharp;
constexpr double kCode_px = 121;  // of a QR code, 32 mm as in the page

// The page itself is black, grey and white: red, green and blue of one pixel differ only where a
// pattern is, and by how much it covers that pixel.
struct Pattern {
  const char* name;
  const char* colour;
  bool (*line)(int x, int y);  // whether this pixel is of the pattern's lines
};

bool slant(int at) { return ((at % kStep_px) + kStep_px) % kStep_px < 2 * kSharp; }

constexpr std::array<Pattern, 3> kPatterns{{
    {"url(#hatch)", "#ff00ff", [](int x, int y) { return slant(x + y); }},
    {"url(#cross)", "#00ffff", [](int x, int y) { return slant(x + y) || slant(x - y); }},
    {"url(#dots)", "#ffff00",
     [](int x, int y) { return x % (2 * kSharp) < kSharp && y % (2 * kSharp) < kSharp; }},
}};

// Which pattern covers the pixel; the number of patterns: none.
std::size_t pattern_of(QRgb pixel) {
  const int red = qRed(pixel), green = qGreen(pixel), blue = qBlue(pixel);
  if (green < red && green < blue) return 0;
  if (red < green && red < blue) return 1;
  if (blue < red && blue < green) return 2;
  return kPatterns.size();
}

QRgb hatched(QRgb pixel, int x, int y) {
  const std::size_t found = pattern_of(pixel);
  if (found == kPatterns.size()) return pixel;
  const auto [least, most] = std::minmax({qRed(pixel), qGreen(pixel), qBlue(pixel)});
  const int grey = kPatterns.at(found).line(x, y) ? least : most;
  return qRgb(grey, grey, grey);
}

void hatch(QImage& image) {
  for (int y = 0; y < image.height(); ++y) {
    auto* line = reinterpret_cast<QRgb*>(image.scanLine(y));
    for (int x = 0; x < image.width(); ++x) line[x] = hatched(line[x], x, y);
  }
}

}  // namespace

bool is_code(const QByteArray& svg) { return !svg.contains("class=\"chart\""); }

QImage drawing(QByteArray svg, int width_px) {
  if (!svg.contains("xmlns=")) svg.replace("<svg", "<svg xmlns=\"http://www.w3.org/2000/svg\"");
  for (const Pattern& pattern : kPatterns) svg.replace(pattern.name, pattern.colour);
  QSvgRenderer renderer(svg);
  if (!renderer.isValid()) return {};
  const QSizeF natural = renderer.defaultSize();
  const double width = std::max(1.0, natural.width());
  // A code has one unit a module: as small as that, nothing reads it.
  const double times =
      is_code(svg) ? std::max(1.0, std::floor(kCode_px / width)) : std::min(1.0, width_px / width);
  QImage image((natural * times * kSharp).toSize(), QImage::Format_RGB32);
  if (image.isNull()) return {};
  image.fill(Qt::white);
  QPainter painter(&image);
  renderer.render(&painter);
  painter.end();
  hatch(image);
  return image;
}

}  // namespace walkdown::gui
