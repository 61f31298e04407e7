// SPDX-License-Identifier: Apache-2.0
#include "checklist/zone/clearance.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

#include "checklist/zone/distance.h"

namespace walkdown::zone {
namespace {

bool judged(const Shape& shape) {
  return shape.role == Role::audience || shape.role == Role::structure;
}

std::int64_t mm_down(double metres) { return static_cast<std::int64_t>(std::floor(metres * 1000)); }

// Distances of a table are exact decimals: rounding, not flooring, gives them back.
std::int64_t thousandths(double value) { return std::llround(value * 1000); }

std::optional<double> needed_m(const Charge& charge, const Table& table, Role role) {
  std::optional<double> most;
  if (charge.calibre_mm) {
    most = table.least_m(*charge.calibre_mm, role);
    if (!most) return std::nullopt;
  }
  if (!charge.without_calibre) return most;
  if (!table.without_calibre_m) return std::nullopt;
  return std::max(*table.without_calibre_m, most.value_or(0));
}

std::string metres(std::int64_t mm) { return fmt::format("{}.{} m", mm / 1000, mm % 1000 / 100); }

// Which of the two it lacks, so that one knows what to mend.
std::string why_unsaid(const Charge& charge, const Table& table) {
  const double most_mm = table.rows.empty() ? 0 : table.rows.back().up_to_mm;
  if (charge.calibre_mm && *charge.calibre_mm > most_mm) {
    return fmt::format("{:g} mm is above its largest calibre, {:g} mm", *charge.calibre_mm,
                       most_mm);
  }
  return "it has cues without a calibre, and the table no distance for those";
}

void find_fault(const Clearance& each, const Charge& charge, const Table& table, Zone& zone) {
  if (each.holds()) return;
  if (each.distance_mm <= 0) {
    zone.faults.push_back(
        fmt::format("{} lies inside {}, or too near its edge to tell", each.position, each.target));
  } else if (!each.least_mm) {
    zone.faults.push_back(fmt::format("{} does not say how far {} must be from {}: {}", zone.rules,
                                      each.position, each.target, why_unsaid(charge, table)));
  } else {
    zone.faults.push_back(fmt::format("{} is {} from {}; {} asks for {}", each.position,
                                      metres(each.distance_mm), each.target, zone.rules,
                                      metres(*each.least_mm)));
  }
}

Clearance clearance(const Position& position, const Shape& shape, const Table& table,
                    const Charge& charge) {
  Clearance each{position.name, shape.name, shape.role, 0, {}, {}};
  const double clear_m =
      distance_to_shape_m(position.at, shape) - position.accuracy_m - shape.accuracy_m;
  each.distance_mm = mm_down(clear_m);
  if (const auto least = needed_m(charge, table, shape.role)) each.least_mm = thousandths(*least);
  // One millimetre of grace below would be one too many: the floor decides here too.
  const double floor_m = static_cast<double>(each.distance_mm) / 1000;
  if (const auto largest = table.largest_mm(floor_m, shape.role)) {
    each.largest_um = thousandths(*largest);
  }
  return each;
}

// Where the site draws the ground to be kept clear, every position must stand on it.
void find_outsiders(const Site& site, const std::map<std::string, Charge>& charges, Zone& zone) {
  const auto exclusion = [](const Shape& shape) {
    return shape.role == Role::exclusion && shape.polygon;
  };
  if (std::none_of(site.shapes.begin(), site.shapes.end(), exclusion)) return;
  for (const Position& position : site.positions) {
    if (!charges.contains(position.name)) continue;
    const bool within = std::any_of(
        site.shapes.begin(), site.shapes.end(),
        [&](const Shape& shape) { return exclusion(shape) && inside(position.at, shape); });
    if (!within) {
      zone.faults.push_back(position.name + " lies outside the ground that is kept clear");
    }
  }
}

}  // namespace

std::map<std::string, Charge> charges(const plan::Plan& plan) {
  std::map<std::string, Charge> all;
  for (const plan::PlannedPin& pin : plan.pins) {
    if (pin.position.empty() || pin.load.count == 0) continue;
    Charge& charge = all[pin.position];
    if (!pin.calibre_mm) {
      charge.without_calibre = true;
    } else {
      charge.calibre_mm = std::max(*pin.calibre_mm, charge.calibre_mm.value_or(0));
    }
  }
  return all;
}

Zone judge(const Site& site, const Table& table, const std::map<std::string, Charge>& charges) {
  Zone zone{table.name, table.edition, table.source, {}, {}, {}};
  for (const auto& [name, charge] : charges) {
    const Position* const position = site.find(name);
    if (position == nullptr) {
      zone.faults.push_back("the site does not show where " + name + " is");
      continue;
    }
    std::int64_t largest_um = thousandths(table.rows.empty() ? 0 : table.rows.back().up_to_mm);
    for (const Shape& shape : site.shapes) {
      if (!judged(shape)) continue;
      const Clearance each = clearance(*position, shape, table, charge);
      largest_um = std::min(largest_um, each.distance_mm > 0 ? each.largest_um.value_or(0) : 0);
      find_fault(each, charge, table, zone);
      zone.clearances.push_back(each);
    }
    zone.largest_um[name] = largest_um;
  }
  if (std::none_of(site.shapes.begin(), site.shapes.end(),
                   [](const Shape& shape) { return shape.role == Role::audience; })) {
    zone.faults.emplace_back("the site shows no audience to measure to");
  }
  find_outsiders(site, charges, zone);
  return zone;
}

}  // namespace walkdown::zone
