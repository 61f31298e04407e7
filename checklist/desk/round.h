// SPDX-License-Identifier: Apache-2.0
// The order in which positions are walked, from where the crew stands. Pure. A walking order is no
// permission to approach.
#pragma once

#include <string>
#include <vector>

#include "checklist/zone/site.h"

namespace walkdown::desk {

struct Round {
  std::vector<std::string> order;  // of the names given, each once
  std::string from;                // a position or the site's control; empty: not known
  double length_m = 0;             // in straight lines, of what the site knows
};

// From the position `from`; where the site has none of that name, from its control; without one,
// from the first of the names. Names that the site does not know come last, in the order given, and
// without a site (null) all of them do.
[[nodiscard]] Round round_of(const zone::Site* site, const std::string& from,
                             const std::vector<std::string>& names);

}  // namespace walkdown::desk
