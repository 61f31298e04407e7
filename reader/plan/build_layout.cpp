// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/build_layout.h"

#include <numeric>
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

// Counts while the layout grows, so that what is too large is never built.
class Bounds {
 public:
  void add(const Rails& rails) {
    rails_ += rails.size();
    pins_ += std::accumulate(rails.begin(), rails.end(), std::size_t{0});
  }
  void grow(Rails& rails, PinId id) {
    if (rails.size() < id.rail) {
      rails_ += id.rail - rails.size();
      rails.resize(id.rail, 0);
    }
    std::uint16_t& pins = rails[id.rail - 1U];
    if (pins >= id.pin) return;
    pins_ += id.pin - pins;
    pins = id.pin;
  }
  [[nodiscard]] bool kept() const { return rails_ <= kMaxRails && pins_ <= kMaxLayoutPins; }

 private:
  std::size_t rails_ = 0;
  std::size_t pins_ = 0;
};

}  // namespace

Layout build_layout(const std::vector<PlannedPin>& pins, const ModuleSizes* sizes,
                    std::vector<Problem>& errors) {
  Layout layout;
  Bounds bounds;
  if (sizes != nullptr) layout.rails = sizes->modules;
  for (const auto& [module, rails] : layout.rails) bounds.add(rails);
  for (const PlannedPin& pin : pins) {
    if (!bounds.kept()) break;
    if (const Rails* rails = stated(sizes, pin.id.module)) {
      if (layout.rails.emplace(pin.id.module, *rails).second) bounds.add(*rails);
      check(pin, *rails, *sizes, errors);
    } else {
      bounds.grow(layout.rails[pin.id.module], pin.id);
    }
  }
  if (!bounds.kept()) {
    errors.push_back({0, "", "",
                      "the modules have more rails or pins than a field can; state their sizes "
                      "with a module file, or correct the numbers"});
  }
  return layout;
}

}  // namespace walkdown::plan
