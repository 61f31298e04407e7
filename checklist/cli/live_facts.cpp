// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/live_facts.h"

#include <vector>

#include "checklist/cli/pin_runs.h"

namespace walkdown::cli {

LiveFacts live_facts(const FieldRecord& record, const std::string& link) {
  const auto counts = record.counts();
  const match::Outcome outcome = record.diagnose();
  LiveFacts facts;
  facts.link = link;
  facts.last = counts.last_reading;
  facts.entries = counts.entries;
  facts.rejected = counts.rejected;
  std::vector<plan::PinId> wrong;
  for (const auto& pin : outcome.pins) {
    if (pin.verdict != match::Verdict::stray) ++facts.planned;
    if (pin.readings > 0 && pin.verdict != match::Verdict::stray) ++facts.read;
    if (pin.verdict == match::Verdict::fits) ++facts.fit;
    if (pin.verdict != match::Verdict::fits && pin.readings > 0) wrong.push_back(pin.pin);
  }
  facts.wrong = pin_runs(wrong, 4);
  return facts;
}

}  // namespace walkdown::cli
