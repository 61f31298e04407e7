// SPDX-License-Identifier: Apache-2.0
// A show's files, imported: the one way from files to a plan and a tester, for the program that
// writes a record and for the one that checks it.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "checklist/show/show.h"
#include "reader/plan/plan.h"
#include "reader/tester/profile.h"

namespace walkdown::audit {

struct Planned {
  plan::Plan plan;
  tester::Profile tester;
};

struct PlannedOutcome {
  std::optional<Planned> planned;     // empty exactly when there are errors
  std::vector<std::string> errors;    // sentences, all of them
  std::vector<std::string> warnings;  // of the plan
};

// Igniters and tester that the show does not have, and the table of distances where it has a site,
// are taken from the templates the program was built with; complete() puts those into the show
// first, so that a record holds them.
[[nodiscard]] PlannedOutcome import(const show::Show& given);
[[nodiscard]] show::Show complete(show::Show show);

}  // namespace walkdown::audit
