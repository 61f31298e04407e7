// SPDX-License-Identifier: Apache-2.0
// Every position against every audience and structure of the site, under one table of distances.
//
// What counts is the largest calibre that the plan puts at a position, not the largest loaded. The
// accuracy of both places is taken off the distance before it is compared. What cannot be judged
// (a position that is not on the site, a calibre the table does not reach, a device without a
// calibre where the table says nothing of those) does not hold.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "checklist/zone/site.h"
#include "checklist/zone/table.h"
#include "reader/plan/plan.h"

namespace walkdown::zone {

// What the plan puts at one position.
struct Charge {
  std::optional<double> calibre_mm;  // the largest
  bool without_calibre = false;      // also devices that have none
};

// Position name -> charge. Pins without a position are left out: the plan's lint names them.
[[nodiscard]] std::map<std::string, Charge> charges(const plan::Plan& plan);

struct Clearance {
  std::string position;
  std::string target;
  Role role = Role::audience;
  std::int64_t distance_mm = 0;            // least, accuracies taken off, rounded down
  std::optional<std::int64_t> least_mm;    // asked for; empty: the table does not say
  std::optional<std::int64_t> largest_um;  // largest calibre allowed here; empty: none

  [[nodiscard]] std::optional<std::int64_t> margin_mm() const {
    if (!least_mm) return std::nullopt;
    return distance_mm - *least_mm;
  }
  [[nodiscard]] bool holds() const {
    return distance_mm > 0 && least_mm && distance_mm >= *least_mm;
  }
};

struct Zone {
  std::string rules;  // name of the table, its edition and source: for every report
  std::string edition;
  std::string source;
  std::vector<Clearance> clearances;               // by position, then target, as in the site
  std::map<std::string, std::int64_t> largest_um;  // per position, over all targets; 0: none
  std::vector<std::string> faults;  // sentences: why the zone does not hold, all of them

  [[nodiscard]] bool holds() const { return faults.empty(); }
};

// Precondition: site and table were read without a mistake.
[[nodiscard]] Zone judge(const Site& site, const Table& table,
                         const std::map<std::string, Charge>& charges);

}  // namespace walkdown::zone
