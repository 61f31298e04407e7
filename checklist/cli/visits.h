// SPDX-License-Identifier: Apache-2.0
// The places that the findings of a sweep ask to visit, in walking order.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "checklist/zone/site.h"
#include "reader/match/outcome.h"
#include "reader/plan/plan.h"

namespace walkdown::cli {

struct Visit {
  std::string place;                  // a position of the plan, or "module 7" where it names none
  std::vector<std::size_t> findings;  // indices into Outcome::findings
};

struct Visits {
  std::vector<Visit> order;
  std::string from;      // a position, or the site's control; empty: not known
  double length_m = 0;   // in straight lines, of what the site knows
  bool by_site = false;  // else in the order of the plan
};

// A finding is visited at the position that most of its pins have, on each module it names. What is
// wrong with the whole field is mended at the tester or in the plan, and asks for no visit.
[[nodiscard]] Visits visits_of(const plan::Plan& plan, const match::Outcome& outcome,
                               const zone::Site* site, const std::string& from);

// Empty where nothing is to be visited.
[[nodiscard]] std::string visits_text(const Visits& visits);
// One JSON object: from, metres (null without a site), order: place and findings, counted from 0.
[[nodiscard]] std::string visits_json(const Visits& visits);

// The site of a GeoJSON file. Writes every mistake to standard error.
[[nodiscard]] std::optional<zone::Site> site_aloud(const std::string& path);

}  // namespace walkdown::cli
