// SPDX-License-Identifier: Apache-2.0
#include "gui/field/scene.h"

#include <gtest/gtest.h>

#include "tests/gui/wide_field.h"

namespace walkdown::gui {
namespace {

TEST(Scene, HasOneCellForEachPinOfTheLayout) {
  const WideField field = wide_field(5, 4);
  const Scene scene = make_scene(field.plan, &field.site);
  EXPECT_EQ(scene.cells.size(), field.plan.pins.size());
  for (const auto& pin : field.plan.pins) {
    const std::size_t cell = scene.find(pin.id);
    ASSERT_NE(cell, Scene::npos);
    EXPECT_EQ(scene.at(scene.box(cell).center()), cell);
  }
}

TEST(Scene, NoPositionLiesOnAnother) {
  for (const bool with_site : {true, false}) {
    const WideField field = wide_field(30, 7);
    const Scene scene = make_scene(field.plan, with_site ? &field.site : nullptr);
    for (std::size_t a = 0; a < scene.positions.size(); ++a) {
      for (std::size_t b = a + 1; b < scene.positions.size(); ++b) {
        EXPECT_FALSE(scene.positions[a].box.intersects(scene.positions[b].box)) << a << ' ' << b;
      }
    }
  }
}

TEST(Scene, KeepsEastEastAndNorthUp) {
  WideField field = wide_field(2, 1);
  field.site.positions[0].at = {10.0, 50.0};
  field.site.positions[1].at = {10.01, 50.01};
  const Scene scene = make_scene(field.plan, &field.site);
  EXPECT_LT(scene.positions[0].box.center().x(), scene.positions[1].box.center().x());
  EXPECT_GT(scene.positions[0].box.center().y(), scene.positions[1].box.center().y());
}

TEST(Scene, PositionsOnOneSpotStillPart) {
  WideField field = wide_field(6, 2);
  for (auto& position : field.site.positions) position.at = {10, 50};
  const Scene scene = make_scene(field.plan, &field.site);
  for (std::size_t a = 0; a < scene.positions.size(); ++a) {
    for (std::size_t b = a + 1; b < scene.positions.size(); ++b) {
      EXPECT_FALSE(scene.positions[a].box.intersects(scene.positions[b].box));
    }
  }
}

TEST(Scene, AnEmptyPlanIsAnEmptyScene) {
  const Scene scene = make_scene({}, nullptr);
  EXPECT_TRUE(scene.cells.empty());
  EXPECT_EQ(scene.at({0, 0}), Scene::npos);
}

}  // namespace
}  // namespace walkdown::gui
