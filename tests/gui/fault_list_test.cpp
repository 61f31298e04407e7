// SPDX-License-Identifier: Apache-2.0
#include "gui/faults/fault_list.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>

#include "gui/faults/fault_model.h"
#include "gui/faults/walk_sheet.h"
#include "tests/gui/wide_field.h"

namespace walkdown::gui {
namespace {

match::Finding finding(match::Kind kind, std::vector<plan::PinId> pins) {
  match::Finding out;
  out.kind = kind;
  out.pins = std::move(pins);
  out.confidence = 0.9;
  out.say = "Look at it.";
  return out;
}

match::Outcome outcome_of(const plan::Plan& plan, match::Verdict verdict) {
  match::Outcome out;
  for (const auto& pin : plan.pins) {
    match::PinVerdict each;
    each.pin = pin.id;
    each.verdict = verdict;
    out.pins.push_back(each);
  }
  return out;
}

RehookRow rehook(std::vector<plan::PinId> pins) {
  RehookRow row;
  row.rehook.pins = std::move(pins);
  row.rehook.why = "The joint was loose.";
  return row;
}

TEST(FaultList, GoesInTheOrderOfThePositions) {
  const plan::Plan plan = wide_field(3, 1).plan;
  match::Outcome outcome = outcome_of(plan, match::Verdict::fits);
  outcome.findings = {finding(match::Kind::open, {{3, 1, 1}}),
                      finding(match::Kind::shorted, {{1, 2, 4}}),
                      finding(match::Kind::open, {{1, 1, 2}})};
  const auto faults = faults_of(plan, outcome, {});
  ASSERT_EQ(faults.size(), 3U);
  EXPECT_EQ(faults[0].where, "M01/R1/P02");
  EXPECT_EQ(faults[1].where, "M01/R2/P04");
  EXPECT_EQ(faults[2].position, "Place 3");
  EXPECT_EQ(faults[1].finding, 1U);
}

TEST(FaultList, ARehookWaitsForItsReadingAndIsDoneWhenItFits) {
  const plan::Plan plan = wide_field(1, 1).plan;
  const std::vector<plan::PinId> pins{{1, 1, 3}};
  const auto stale = faults_of(plan, outcome_of(plan, match::Verdict::stale), {rehook(pins)});
  ASSERT_EQ(stale.size(), 1U);
  EXPECT_EQ(stale[0].step, Fault::Step::to_read);
  const auto fits = faults_of(plan, outcome_of(plan, match::Verdict::fits), {rehook(pins)});
  ASSERT_EQ(fits.size(), 1U);
  EXPECT_EQ(fits[0].step, Fault::Step::done);
  // Read again and wrong again is neither: it stands among the findings.
  EXPECT_TRUE(faults_of(plan, outcome_of(plan, match::Verdict::open), {rehook(pins)}).empty());
}

TEST(FaultList, NamesRunsOfPinsShort) {
  EXPECT_EQ(pins_words({{8, 3, 1}, {8, 3, 2}, {8, 3, 3}}), "M08/R3/P01 to P03");
  EXPECT_EQ(pins_words({{8, 3, 1}, {8, 3, 5}}), "M08/R3/P01 and M08/R3/P05");
  EXPECT_EQ(pins_words({}), "the whole field");
}

TEST(FaultModel, IsAModel) {
  FaultModel model;
  const QAbstractItemModelTester tester(&model,
                                        QAbstractItemModelTester::FailureReportingMode::Fatal);
  const plan::Plan plan = wide_field(1, 1).plan;
  match::Outcome outcome = outcome_of(plan, match::Verdict::open);
  outcome.findings = {finding(match::Kind::open, {{1, 1, 2}})};
  model.set(faults_of(plan, outcome, {}));
  EXPECT_EQ(model.rowCount({}), 1);
  model.set({});
  EXPECT_EQ(model.rowCount({}), 0);
}

TEST(WalkSheet, HoldsWhatIsToDoAndNotWhatIsDone) {
  const plan::Plan plan = wide_field(1, 1).plan;
  match::Outcome outcome = outcome_of(plan, match::Verdict::fits);
  outcome.findings = {finding(match::Kind::open, {{1, 1, 2}})};
  QTextDocument sheet;
  fill_walk_sheet(sheet, faults_of(plan, outcome, {rehook({{1, 1, 9}})}), "ABCD 0123");
  const QString text = sheet.toPlainText();
  EXPECT_TRUE(text.contains("M01/R1/P02"));
  EXPECT_TRUE(text.contains("Look at it."));
  EXPECT_TRUE(text.contains("ABCD 0123"));
  EXPECT_FALSE(text.contains("M01/R1/P09"));
}

}  // namespace
}  // namespace walkdown::gui
