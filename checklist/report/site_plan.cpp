// SPDX-License-Identifier: Apache-2.0
// The site as it lies, north up. A local flat map: good to a metre or two over a field, and for
// looking only; the distances in the table are geodesic.
#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <map>

#include "checklist/report/time_axis.h"

namespace walkdown::report {
namespace {

constexpr double kWidth = 720, kHeight = 380, kMargin = 26;
constexpr double kMetresPerDegree = 111'320;  // of latitude, near enough for a drawing

class Map {
 public:
  explicit Map(const zone::Site& site, double most_radius_m) {
    const auto take = [&](zone::Point at) {
      west_ = std::min(west_, at.lon_deg);
      east_ = std::max(east_, at.lon_deg);
      south_ = std::min(south_, at.lat_deg);
      north_ = std::max(north_, at.lat_deg);
    };
    for (const auto& each : site.positions) take(each.at);
    for (const auto& shape : site.shapes) {
      for (const auto& ring : shape.rings) std::for_each(ring.begin(), ring.end(), take);
    }
    shrink_ = std::cos((south_ + north_) / 2 * 3.14159265358979 / 180);
    const double wide = std::max((east_ - west_) * shrink_ * kMetresPerDegree, most_radius_m);
    const double high = std::max((north_ - south_) * kMetresPerDegree, most_radius_m);
    per_m_ = std::min((kWidth - 2 * kMargin) / wide, (kHeight - 2 * kMargin) / high);
  }
  [[nodiscard]] double x(zone::Point at) const {
    return kWidth / 2 + (at.lon_deg - (west_ + east_) / 2) * shrink_ * kMetresPerDegree * per_m_;
  }
  [[nodiscard]] double y(zone::Point at) const {
    return kHeight / 2 - (at.lat_deg - (south_ + north_) / 2) * kMetresPerDegree * per_m_;
  }
  [[nodiscard]] double px(double metres) const { return metres * per_m_; }

 private:
  double west_ = 180, east_ = -180, south_ = 90, north_ = -90, shrink_ = 1, per_m_ = 1;
};

std::string ring_path(const Map& map, const zone::Shape& shape) {
  std::string path;
  for (const auto& ring : shape.rings) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      path += fmt::format("{}{:.1f} {:.1f}", i == 0 ? "M" : "L", map.x(ring[i]), map.y(ring[i]));
    }
    if (shape.polygon) path += "z";
  }
  return path;
}

std::string shape_svg(const Map& map, const zone::Shape& shape) {
  if (shape.rings.empty() || shape.rings[0].empty()) return {};
  const char* fill = "none";
  const char* dash = "";
  double width = 1;
  if (shape.role == zone::Role::audience) fill = "url(#hatch)";
  if (shape.role == zone::Role::structure) fill = "url(#cross)";
  if (shape.role == zone::Role::exclusion) dash = " stroke-dasharray=\"6 3\"";
  if (!shape.polygon) fill = "none";
  if (!shape.polygon && shape.role == zone::Role::audience) width = 4;
  double x = 0, y = 1e9;
  for (const zone::Point& at : shape.rings[0]) {
    x += map.x(at) / static_cast<double>(shape.rings[0].size());
    y = std::min(y, map.y(at));
  }
  std::string mark;
  if (shape.rings[0].size() == 1) {
    mark = fmt::format("<path d=\"M{:.1f} {:.1f}l-5 9h10z\" fill=\"#111\"/>", x, y - 4);
  }
  return fmt::format(
      "<path d=\"{}\" fill=\"{}\" stroke=\"#111\" stroke-width=\"{}\"{}/>{}<text x=\"{:.1f}\" "
      "y=\"{:.1f}\" text-anchor=\"middle\" paint-order=\"stroke\" stroke=\"#fff\" "
      "stroke-width=\"3\">{} ({})</text>",
      ring_path(map, shape), fill, width, dash, mark, x, std::max(y - 6, 10.0), esc(shape.name),
      zone::word(shape.role));
}

std::string scale_bar(const Map& map) {
  constexpr std::array<double, 9> kLengths = {500, 200, 100, 50, 20, 10, 5, 2, 1};
  double metres = 1000;
  for (const double each : kLengths) {
    if (map.px(metres) <= 160) break;
    metres = each;
  }
  return fmt::format(
      "<path d=\"M20 {0}v4h{1:.1f}v-4\" fill=\"none\" stroke=\"#111\"/><text x=\"20\" "
      "y=\"{2}\">{3:g} "
      "m</text><path d=\"M{4} 26l-5 12 5-3 5 3z\"/><text x=\"{4}\" y=\"20\" "
      "text-anchor=\"middle\">N</text>",
      kHeight - 12, map.px(metres), kHeight - 15, metres, kWidth - 24);
}

}  // namespace

std::string site_plan(const Page& page) {
  const auto& site = page.model.prepared.site;
  const auto& zone = page.model.prepared.zone;
  if (!site || !zone || site->positions.empty()) return {};
  std::map<std::string, double> radius_m;
  for (const zone::Clearance& each : zone->clearances) {
    double& radius = radius_m[each.position];
    radius = std::max(radius, static_cast<double>(each.least_mm.value_or(0)) / 1000);
  }
  double most = 10;
  for (const auto& [name, radius] : radius_m) most = std::max(most, 2 * radius);
  const Map map(*site, most);
  std::string shapes, positions;
  for (const zone::Shape& each : site->shapes) shapes += shape_svg(map, each);
  for (const zone::Position& each : site->positions) {
    const double x = map.x(each.at), y = map.y(each.at);
    positions += fmt::format(
        "<circle cx=\"{0:.1f}\" cy=\"{1:.1f}\" r=\"{2:.1f}\" fill=\"none\" stroke=\"#111\" "
        "stroke-width=\".7\" stroke-dasharray=\"2 2\"/><circle cx=\"{0:.1f}\" cy=\"{1:.1f}\" "
        "r=\"3.6\"/><text x=\"{3:.1f}\" y=\"{4:.1f}\" font-weight=\"700\" "
        "paint-order=\"stroke\" stroke=\"#fff\" stroke-width=\"3\">{5}</text>",
        x, y, map.px(radius_m[each.name]), x + 6, y + 3, esc(each.name));
  }
  return fmt::format(
      "<svg class=\"chart\" viewBox=\"0 0 {} {}\" role=\"img\" aria-label=\"The site, north "
      "up\"><rect x=\".5\" y=\".5\" width=\"{}\" height=\"{}\" fill=\"#fff\" "
      "stroke=\"#999\"/>{}{}{}{}</svg>\n"
      "<p>Dots: positions, each with the largest distance that the table asks of it (dotted "
      "circle). Hatched: audience. Crossed: structures. Dashed: the ground to be kept clear. "
      "Triangle, or outline: control.</p>\n",
      kWidth, kHeight, kWidth - 1, kHeight - 1, kPatterns, shapes, positions, scale_bar(map));
}

}  // namespace walkdown::report
