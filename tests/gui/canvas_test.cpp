// SPDX-License-Identifier: Apache-2.0
#include "gui/field/canvas.h"

#include <gtest/gtest.h>

#include <QSignalSpy>
#include <QTest>

#include "tests/gui/wide_field.h"

namespace walkdown::gui {
namespace {

class Canvas : public ::testing::Test {
 protected:
  Canvas() {
    const WideField field = wide_field(4, 3);
    scene_ = std::make_shared<Scene>(make_scene(field.plan, &field.site));
    canvas_.resize(900, 600);
    canvas_.set_scene(scene_);
    canvas_.set_facts(std::make_shared<CellFacts>(mixed_facts(*scene_)));
    canvas_.show();
  }

  std::shared_ptr<Scene> scene_;
  FieldCanvas canvas_;
};

TEST_F(Canvas, ShowsTheWholeFieldAtFirst) {
  const QRectF all = canvas_.lens().to_screen(scene_->bounds);
  EXPECT_TRUE(QRectF(-1, -1, 902, 602).contains(all));
}

TEST_F(Canvas, AClickPicksThePinUnderIt) {
  const QPoint at = canvas_.lens().to_screen(scene_->box(17).center()).toPoint();
  QTest::mouseClick(&canvas_, Qt::LeftButton, {}, at);
  EXPECT_EQ(canvas_.picked(), scene_->cells[17].pin);
  EXPECT_FALSE(canvas_.accessibleDescription().isEmpty());
}

TEST_F(Canvas, ArrowsGoFromPinToPin) {
  canvas_.pick(scene_->cells[0].pin);
  QTest::keyClick(&canvas_, Qt::Key_Right);
  EXPECT_EQ(canvas_.picked(), scene_->cells[1].pin);
  QTest::keyClick(&canvas_, Qt::Key_Down);
  EXPECT_EQ(canvas_.picked()->rail, 2);
}

TEST_F(Canvas, NGoesToWhatDoesNotFit) {
  QTest::keyClick(&canvas_, Qt::Key_N);
  ASSERT_TRUE(canvas_.picked());
  const CellFacts facts = mixed_facts(*scene_);
  const auto verdict = facts.verdicts[scene_->find(*canvas_.picked())];
  EXPECT_NE(verdict, match::Verdict::fits);
  EXPECT_NE(verdict, match::Verdict::unread);
}

TEST_F(Canvas, EnterOpensThePin) {
  QSignalSpy opened(&canvas_, &FieldCanvas::pin_opened);
  canvas_.pick(scene_->cells[5].pin);
  QTest::keyClick(&canvas_, Qt::Key_Return);
  EXPECT_EQ(opened.count(), 1);
}

TEST_F(Canvas, ZoomKeepsWhatIsUnderThePointer) {
  const QPointF around(300, 200);
  const QPointF before = canvas_.lens().to_scene(around);
  canvas_.zoom(3, around);
  const QPointF after = canvas_.lens().to_scene(around);
  EXPECT_NEAR(before.x(), after.x(), 1e-6);
  EXPECT_NEAR(before.y(), after.y(), 1e-6);
  QTest::keyClick(&canvas_, Qt::Key_Home);
  EXPECT_TRUE(QRectF(-1, -1, 902, 602).contains(canvas_.lens().to_screen(scene_->bounds)));
}

}  // namespace
}  // namespace walkdown::gui
