// SPDX-License-Identifier: Apache-2.0
#include "checklist/zone/site.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>
#include <utility>

#include "checklist/zone/distance.h"

namespace walkdown::zone {
namespace {

using nlohmann::json;

constexpr std::array<std::string_view, 4> kRoles = {"audience", "structure", "control",
                                                    "exclusion"};
constexpr std::size_t kLargestFile = 16U << 20U;
constexpr double kWidest_m = 100'000;

// One feature at a time; `say` files a mistake with its place.
class Import {
 public:
  explicit Import(std::string_view file_name) : file_name_(file_name) {}

  SiteRead run(std::string_view text);

 private:
  void say(std::string what, std::string remedy);
  void feature(const json& feature);
  void position(const json& geometry, std::string name, double accuracy_m);
  void shape(const json& geometry, Role role, std::string name, double accuracy_m);
  std::optional<Point> point(const json& coordinates);
  std::vector<Point> line(const json& coordinates, std::size_t least);
  std::vector<Point> ring(const json& coordinates);
  std::optional<double> accuracy(const json& properties);
  void extent();

  std::string file_name_;
  std::string place_;
  SiteRead read_;
};

void Import::say(std::string what, std::string remedy) {
  const std::string where = place_.empty() ? file_name_ : file_name_ + ", " + place_;
  read_.mistakes.push_back({Code::bad_input, std::move(what), where, std::move(remedy)});
}

const json& member(const json& object, const char* name) {
  static const json none;
  if (!object.is_object()) return none;
  const auto found = object.find(name);
  return found == object.end() ? none : *found;
}

std::string string_of(const json& value) {
  return value.is_string() ? value.get<std::string>() : std::string();
}

std::optional<Point> Import::point(const json& coordinates) {
  if (!coordinates.is_array() || coordinates.size() < 2 || !coordinates[0].is_number() ||
      !coordinates[1].is_number()) {
    say("a place is not [longitude, latitude]", "write two numbers in degrees");
    return std::nullopt;
  }
  const Point at{coordinates[0].get<double>(), coordinates[1].get<double>()};
  if (!(std::abs(at.lon_deg) <= 180) || !(std::abs(at.lat_deg) <= 90)) {
    say(fmt::format("[{}, {}] is not on the earth", at.lon_deg, at.lat_deg),
        "write the longitude first, -180 to 180, then the latitude, -90 to 90");
    return std::nullopt;
  }
  return at;
}

std::vector<Point> Import::line(const json& coordinates, std::size_t least) {
  std::vector<Point> points;
  if (coordinates.is_array()) {
    for (const json& each : coordinates) {
      if (const auto at = point(each)) points.push_back(*at);
    }
  }
  if (!coordinates.is_array() || coordinates.size() < least) {
    say(fmt::format("a line of fewer than {} places", least), "draw it again");
  }
  return points;
}

std::vector<Point> Import::ring(const json& coordinates) {
  auto points = line(coordinates, 4);
  if (points.size() < 2) return points;
  const Point& first = points.front();
  const Point& last = points.back();
  if (first.lon_deg != last.lon_deg || first.lat_deg != last.lat_deg) {
    say("a ring is not closed", "end it with the place it began with");
  }
  return points;
}

bool closed(const std::vector<Point>& ring) {
  return ring.size() >= 4 && ring.front().lon_deg == ring.back().lon_deg &&
         ring.front().lat_deg == ring.back().lat_deg;
}

std::optional<double> Import::accuracy(const json& properties) {
  const json& value = member(properties, "accuracy_m");
  if (value.is_null()) return 0;
  if (!value.is_number() || !(value.get<double>() >= 0) || !(value.get<double>() <= 100)) {
    say("accuracy_m is not a number from 0 to 100",
        "write how far off the place may be, in metres");
    return std::nullopt;
  }
  return value.get<double>();
}

void Import::position(const json& geometry, std::string name, double accuracy_m) {
  if (name.empty()) say("a position has no name", "name it as the plan does");
  if (!name.empty() && read_.site.find(name) != nullptr) {
    say("two positions have the name " + name, "give each its own, as the plan does");
  }
  if (member(geometry, "type") != "Point") {
    say("a position is not a Point", "mark one place for it");
    return;
  }
  if (const auto at = point(member(geometry, "coordinates"))) {
    read_.site.positions.push_back({std::move(name), *at, accuracy_m});
  }
}

void Import::shape(const json& geometry, Role role, std::string name, double accuracy_m) {
  Shape shape{role, std::move(name), false, {}, accuracy_m};
  const json& coordinates = member(geometry, "coordinates");
  const std::string type = string_of(member(geometry, "type"));
  if (type == "Polygon") {
    shape.polygon = true;
    if (!coordinates.is_array() || coordinates.empty())
      say("a polygon has no ring", "draw it again");
    for (const json& each : coordinates) shape.rings.push_back(ring(each));
  } else if (type == "LineString") {
    shape.rings.push_back(line(coordinates, 2));
    // A fence drawn all the way round encloses ground; any other line of it is only shown.
    shape.polygon = role == Role::exclusion && closed(shape.rings.front());
  } else if (type == "Point" && role == Role::control) {
    if (const auto at = point(coordinates)) shape.rings.push_back({*at});
  } else {
    say(fmt::format("a feature of role {} cannot be a {}", word(role),
                    type.empty() ? "geometry without a type" : type),
        "draw it as a Polygon");
  }
  if (shape.name.empty()) {
    const auto same = std::count_if(read_.site.shapes.begin(), read_.site.shapes.end(),
                                    [&](const Shape& other) { return other.role == role; });
    shape.name = fmt::format("{} {}", word(role), same + 1);
  }
  read_.site.shapes.push_back(std::move(shape));
}

void Import::feature(const json& feature) {
  const json& properties = member(feature, "properties");
  const json& geometry = member(feature, "geometry");
  const std::string role = string_of(member(properties, "role"));
  std::string name = string_of(member(properties, "name"));
  const double accuracy_m = accuracy(properties).value_or(0);
  if (role == "position") {
    position(geometry, std::move(name), accuracy_m);
    return;
  }
  const auto* const found = std::find(kRoles.begin(), kRoles.end(), role);
  if (found == kRoles.end()) {
    say(role.empty() ? "a feature has no role" : "a feature has the unknown role " + role,
        "write position, audience, structure, control or exclusion");
    return;
  }
  shape(geometry, static_cast<Role>(found - kRoles.begin()), std::move(name), accuracy_m);
}

// Least distances are searched for on the assumption that a site is small against the earth.
void Import::extent() {
  if (!read_.mistakes.empty()) return;
  std::optional<Point> first;
  const auto far = [&](const Point& at) {
    if (!first) first = at;
    return distance_m(*first, at) > kWidest_m / 2;
  };
  bool wide = false;
  for (const Position& position : read_.site.positions) wide = far(position.at) || wide;
  for (const Shape& shape : read_.site.shapes) {
    for (const auto& ring : shape.rings) {
      wide = std::any_of(ring.begin(), ring.end(), far) || wide;
    }
  }
  if (wide) say("the site is over 100 km across", "check longitude and latitude of each place");
}

SiteRead Import::run(std::string_view text) {
  if (text.size() > kLargestFile) {
    say("the site file is over 16 MiB", "leave out what is not part of the site");
    return std::move(read_);
  }
  // Depth is bounded: GeoJSON of these roles nests no deeper than eight.
  const auto shallow = [](int depth, json::parse_event_t, json&) { return depth <= 32; };
  const json collection = json::parse(text, shallow, false);
  const json& features = member(collection, "features");
  if (member(collection, "type") != "FeatureCollection" || !features.is_array()) {
    say("not a GeoJSON FeatureCollection", "export the site as GeoJSON (RFC 7946)");
    return std::move(read_);
  }
  for (std::size_t i = 0; i < features.size(); ++i) {
    place_ = fmt::format("feature {}", i + 1);
    feature(features[i]);
  }
  place_.clear();
  extent();
  return std::move(read_);
}

}  // namespace

std::string_view word(Role role) { return kRoles.at(static_cast<std::size_t>(role)); }

const Position* Site::find(std::string_view name) const {
  const auto found = std::find_if(positions.begin(), positions.end(),
                                  [&](const Position& each) { return each.name == name; });
  return found == positions.end() ? nullptr : &*found;
}

std::string say_place(const Site& site) {
  if (site.positions.empty()) return {};
  const Point& at = site.positions.front().at;
  return fmt::format("{:.4f} {}, {:.4f} {}", std::abs(at.lat_deg), at.lat_deg < 0 ? 'S' : 'N',
                     std::abs(at.lon_deg), at.lon_deg < 0 ? 'W' : 'E');
}

SiteRead read_site(std::string_view text, std::string_view file_name) {
  return Import(file_name).run(text);
}

}  // namespace walkdown::zone
