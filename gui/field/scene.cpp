// SPDX-License-Identifier: Apache-2.0
#include "gui/field/scene.h"

#include "gui/field/blocks.h"
#include "gui/field/ground.h"
#include "gui/field/spread.h"

namespace walkdown::gui {
namespace {

void place(Scene& scene, const PositionBlock& block, QPointF by) {
  for (std::size_t m = block.first; m < block.first + block.count; ++m) {
    ModuleBlock& module = scene.modules[m];
    module.box.translate(by);
    for (std::size_t c = module.first; c < module.first + module.count; ++c) {
      scene.cells[c].x += static_cast<float>(by.x());
      scene.cells[c].y += static_cast<float>(by.y());
    }
  }
}

void put_at(Scene& scene, const std::vector<QRectF>& boxes) {
  for (std::size_t i = 0; i < boxes.size(); ++i) {
    PositionBlock& block = scene.positions[i];
    const QPointF by = boxes[i].topLeft() - block.box.topLeft();
    block.box.translate(by);
    place(scene, block, by);
    scene.bounds |= block.box;
  }
}

}  // namespace

std::size_t Scene::find(plan::PinId pin) const {
  const auto found = index.find(pin);
  return found == index.end() ? npos : found->second;
}

QRectF Scene::box(std::size_t cell) const {
  const Cell& it = cells[cell];
  return {it.x, it.y, kCellW, 1.0};
}

std::size_t Scene::at(QPointF point) const {
  for (const ModuleBlock& module : modules) {
    if (!module.box.contains(point)) continue;
    for (std::size_t c = module.first; c < module.first + module.count; ++c) {
      if (box(c).adjusted(-0.07, -0.15, 0.07, 0.15).contains(point)) return c;
    }
  }
  return npos;
}

Scene make_scene(const plan::Plan& plan, const zone::Site* site) {
  Scene scene = make_blocks(plan);
  const Ground ground(site, scene);
  std::vector<QRectF> boxes;
  for (PositionBlock& block : scene.positions) {
    const auto at = ground.of(block.name);
    block.on_site = at.has_value();
    block.ground = at.value_or(QPointF());
    QRectF box = block.box;
    box.moveCenter(block.ground);
    boxes.push_back(box);
  }
  set_out_rest(scene, boxes);
  spread(boxes);
  put_at(scene, boxes);
  scene.site = scene.bounds;
  ground.draw_outlines(scene);
  scene.cells_per_m = ground.cells_per_m();
  scene.bounds.adjust(-2, -2, 2, 2);
  scene.site.adjust(-4, -4, 4, 4);
  for (std::size_t i = 0; i < scene.cells.size(); ++i) scene.index.emplace(scene.cells[i].pin, i);
  return scene;
}

}  // namespace walkdown::gui
