// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/build_layout.h"

#include <algorithm>
#include <string>

#include "reader/plan/import.h"

namespace walkdown::plan {
namespace {

using Rails = std::vector<std::uint16_t>;

const Rails* stated(const ModuleSizes* sizes, std::uint16_t module) {
  return sizes == nullptr ? nullptr : sizes->rails(module);
}

void check(const PlannedPin& pin, const Rails& rails, const ModuleSizes& sizes,
           std::vector<Problem>& errors) {
  if (pin.id.rail > rails.size()) {
    errors.push_back({pin.row, "rail", std::to_string(pin.id.rail),
                      "module " + std::to_string(pin.id.module) + " has " +
                          std::to_string(rails.size()) + " rails by " + shown(sizes.file_name)});
  } else if (pin.id.pin > rails[pin.id.rail - 1U]) {
    errors.push_back({pin.row, "pin", std::to_string(pin.id.pin),
                      "this rail has " + std::to_string(rails[pin.id.rail - 1U]) + " pins by " +
                          shown(sizes.file_name)});
  }
}

void grow(Rails& rails, PinId id) {
  if (rails.size() < id.rail) rails.resize(id.rail, 0);
  std::uint16_t& pins = rails[id.rail - 1U];
  pins = std::max(pins, id.pin);
}

bool within_bounds(const Layout& layout) {
  std::size_t rails = 0;
  std::size_t pins = 0;
  for (const auto& [module, sizes] : layout.rails) {
    rails += sizes.size();
    for (const std::uint16_t size : sizes) pins += size;
  }
  return rails <= kMaxRails && pins <= kMaxLayoutPins;
}

}  // namespace

Layout build_layout(const std::vector<PlannedPin>& pins, const ModuleSizes* sizes,
                    std::vector<Problem>& errors) {
  Layout layout;
  if (sizes != nullptr) {
    for (const auto& [module, rails] : sizes->modules) layout.rails[module] = rails;
  }
  for (const PlannedPin& pin : pins) {
    if (const Rails* rails = stated(sizes, pin.id.module)) {
      layout.rails[pin.id.module] = *rails;
      check(pin, *rails, *sizes, errors);
    } else {
      grow(layout.rails[pin.id.module], pin.id);
    }
  }
  if (!within_bounds(layout)) {
    errors.push_back({0, "", "",
                      "the modules have more rails or pins than a field can; state their sizes "
                      "with a module file, or correct the numbers"});
  }
  return layout;
}

}  // namespace walkdown::plan
