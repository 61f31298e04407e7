// SPDX-License-Identifier: Apache-2.0
// A show with every file in it read: what a day needs before its first entry. The same for a new
// record, for one that goes on and for one that is only looked at, since entry 0 holds the files.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "checklist/audit/planned.h"
#include "checklist/day/checklist.h"
#include "checklist/day/outside.h"
#include "checklist/show/show.h"
#include "checklist/zone/clearance.h"
#include "checklist/zone/site.h"
#include "checklist/zone/table.h"

namespace walkdown::desk {

struct Prepared {
  show::Show show;  // complete: with the templates taken where it had no file of its own
  audit::Planned planned;
  bool layout_known = false;   // the show has a file of module sizes
  day::Checklist checklist;    // no_checklist() where the show has none
  bool has_checklist = false;  // without one nothing can be released
  std::optional<zone::Site> site;
  std::optional<zone::Zone> zone;  // judged; empty without a site

  [[nodiscard]] day::Outside outside() const;  // source and check_note are left empty
};

struct PreparedOutcome {
  std::optional<Prepared> prepared;   // empty exactly when there are errors
  std::vector<std::string> errors;    // sentences, of all files
  std::vector<std::string> warnings;  // of the plan, and of what the checklist asks for in vain
};

[[nodiscard]] PreparedOutcome prepare(const show::Show& show);

// Holds nothing, so nothing can be released; people, custody, hold and headcount still work.
[[nodiscard]] day::Checklist no_checklist();

// How the day sees the distances: whether they hold, and a sentence with the rule set's name.
[[nodiscard]] day::ZoneFacts zone_facts(const zone::Zone& zone);

}  // namespace walkdown::desk
