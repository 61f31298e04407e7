// SPDX-License-Identifier: Apache-2.0
// A crew hand in the simulated field, who does at the module what a finding says, and nothing that
// it does not say: so a wrong finding mends nothing.
#pragma once

#include <string>
#include <vector>

#include "checklist/audit/drafts.h"
#include "reader/match/outcome.h"
#include "reader/result.h"
#include "reader/trainer/field.h"

namespace walkdown::cli {

struct HandsOn {
  std::vector<audit::Rehook> rehooks;  // what was touched: its readings no longer count
  std::vector<plan::PinId> read_again;
  std::string did;  // one sentence
};

// Error (refused): a finding about the whole field, which no hand at one module can mend.
[[nodiscard]] Result<HandsOn> act_on(const match::Finding& finding, trainer::Field& field,
                                     const std::string& by);

}  // namespace walkdown::cli
