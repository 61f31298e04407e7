// SPDX-License-Identifier: Apache-2.0
#include "gui/field/blocks.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

using Homes = std::map<std::uint16_t, std::string>;  // module -> position

// Where most of a module's pins are planned; the first one in the plan where there is a tie.
Homes homes(const plan::Plan& plan) {
  std::map<std::uint16_t, std::map<std::string, std::size_t>> votes;
  for (const auto& pin : plan.pins) ++votes[pin.id.module][pin.position];
  Homes out;
  for (const auto& [module, of] : votes) {
    const auto most = std::max_element(
        of.begin(), of.end(), [](const auto& a, const auto& b) { return a.second < b.second; });
    out[module] = most->first;
  }
  for (const auto& [module, rails] : plan.layout.rails) out.try_emplace(module, "");
  return out;
}

std::vector<std::string> names_in_order(const plan::Plan& plan, const Homes& homes) {
  std::vector<std::string> names;
  const auto add = [&](const std::string& name) {
    if (std::find(names.begin(), names.end(), name) == names.end()) names.push_back(name);
  };
  for (const auto& pin : plan.pins) {
    if (homes.at(pin.id.module) == pin.position) add(pin.position);
  }
  for (const auto& [module, name] : homes) add(name);
  return names;
}

QSizeF size_of(const std::vector<std::uint16_t>& rails) {
  const auto widest = rails.empty() ? 1 : *std::max_element(rails.begin(), rails.end());
  return {std::max(4.0, static_cast<double>(widest)),
          kModuleHead + kRailStep * static_cast<double>(rails.size())};
}

void add_cells(Scene& scene, const plan::Plan& plan, ModuleBlock& block,
               const std::vector<std::uint16_t>& rails) {
  block.first = scene.cells.size();
  for (std::size_t r = 0; r < rails.size(); ++r) {
    for (std::uint16_t p = 0; p < rails[r]; ++p) {
      const plan::PinId pin{block.module, static_cast<std::uint16_t>(r + 1),
                            static_cast<std::uint16_t>(p + 1)};
      scene.cells.push_back(
          {pin, static_cast<float>(block.box.x()) + static_cast<float>(p),
           static_cast<float>(block.box.y()) + kModuleHead + kRailStep * static_cast<float>(r),
           plan.find(pin) != nullptr});
    }
  }
  block.count = scene.cells.size() - block.first;
}

// Rows of modules, about as wide as high.
void add_position(Scene& scene, const plan::Plan& plan, const std::string& name,
                  const std::vector<std::uint16_t>& modules) {
  double area = 0;
  double widest = 0;
  for (const auto module : modules) {
    const QSizeF size = size_of(plan.layout.rails.at(module));
    area += (size.width() + 2) * (size.height() + 1);
    widest = std::max(widest, size.width());
  }
  const double width = std::max(widest, std::sqrt(area) * 1.25);
  PositionBlock block{
      q(name),       QRectF(0, 0, widest, kPositionHead), {}, false, scene.modules.size(),
      modules.size()};
  double x = 0, y = kPositionHead, row = 0;
  for (const auto module : modules) {
    const auto& rails = plan.layout.rails.at(module);
    const QSizeF size = size_of(rails);
    if (x > 0 && x + size.width() > width) {
      x = 0;
      y += row + 1;
      row = 0;
    }
    ModuleBlock made{module, QRectF(QPointF(x, y), size), 0, 0};
    add_cells(scene, plan, made, rails);
    scene.modules.push_back(made);
    block.box |= made.box;
    x += size.width() + 2;
    row = std::max(row, size.height());
  }
  scene.positions.push_back(block);
}

}  // namespace

Scene make_blocks(const plan::Plan& plan) {
  Scene scene;
  const Homes home = homes(plan);
  for (const std::string& name : names_in_order(plan, home)) {
    std::vector<std::uint16_t> modules;
    for (const auto& [module, at] : home) {
      if (at == name && plan.layout.rails.contains(module)) modules.push_back(module);
    }
    if (!modules.empty()) add_position(scene, plan, name, modules);
  }
  return scene;
}

}  // namespace walkdown::gui
