// SPDX-License-Identifier: Apache-2.0
#include "reader/match/alike.h"

#include <algorithm>

#include "reader/match/spec.h"

namespace walkdown::match {

std::vector<std::vector<plan::PinId>> alike(const plan::Plan& plan) {
  const SpecTable table = make_specs(plan);
  std::vector<std::vector<plan::PinId>> groups(table.specs.size());
  for (std::size_t i = 0; i < plan.pins.size(); ++i) {
    if (table.of_pin[i] != kNothing) groups[table.of_pin[i]].push_back(plan.pins[i].id);
  }
  groups.erase(std::remove_if(groups.begin(), groups.end(),
                              [](const auto& group) { return group.size() < 2; }),
               groups.end());
  for (auto& group : groups) std::sort(group.begin(), group.end());
  std::sort(groups.begin(), groups.end());
  return groups;
}

}  // namespace walkdown::match
