// SPDX-License-Identifier: Apache-2.0
#include "gui/faults/fault_list.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>

#include "gui/faults/fault_model.h"
#include "gui/faults/fault_readings.h"
#include "gui/faults/rounds.h"
#include "gui/faults/walk_sheet.h"
#include "gui/look/words.h"
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

// Three positions at the corners of a triangle, the control point next to the second.
zone::Site corner_site() {
  zone::Site site;
  site.positions = {{"Place 1", {10.000, 50.000}, 0},
                    {"Place 2", {10.010, 50.000}, 0},
                    {"Place 3", {10.012, 50.000}, 0}};
  site.shapes = {{zone::Role::control, "tent", false, {{{10.011, 50.0005}}}, 0}};
  return site;
}

const std::vector<std::string> kPlaces{"Place 1", "Place 2", "Place 3"};

TEST(Rounds, GoFromWhereTheCrewStands) {
  const zone::Site site = corner_site();
  const Round from_one = round_of(&site, "Place 1", kPlaces);
  EXPECT_EQ(from_one.order, kPlaces);
  EXPECT_EQ(from_one.from, "Place 1");
  // 0.012 degrees of longitude at 50 degrees north: 0.012 * 111,195 m * cos 50 = 857.7 m, worked
  // out by hand on the sphere of the IUGG's mean radius.
  EXPECT_NEAR(from_one.length_m, 857.7, 0.5);
  const std::vector<std::string> back{"Place 3", "Place 2", "Place 1"};
  EXPECT_EQ(round_of(&site, "Place 3", kPlaces).order, back);
}

TEST(Rounds, BeginAtTheControlPointWhereNobodyWentYet) {
  const zone::Site site = corner_site();
  const Round round = round_of(&site, "", kPlaces);
  EXPECT_EQ(round.from, "tent");
  EXPECT_EQ(round.order.back(), "Place 1");
}

TEST(Rounds, PutLastWhatTheSiteDoesNotKnow) {
  const zone::Site site = corner_site();
  const Round round = round_of(&site, "Place 3", {"nowhere", "Place 1", "Place 3"});
  EXPECT_EQ(round.order, (std::vector<std::string>{"Place 3", "Place 1", "nowhere"}));
  EXPECT_EQ(round_of(nullptr, "Place 3", kPlaces).order, kPlaces);
}

TEST(Rounds, TakeThePlaceOfTheCrewFromTheRecord) {
  const plan::Plan plan = wide_field(3, 1).plan;
  EXPECT_EQ(last_place(plan, {}), "");
  RehookRow entered;
  entered.entered = true;
  entered.rehook.positions = {"Place 3"};
  EXPECT_EQ(last_place(plan, {rehook({{2, 1, 1}})}), "Place 2");
  EXPECT_EQ(last_place(plan, {rehook({{2, 1, 1}}), entered}), "Place 3");
}

TEST(FaultList, GoesInTheOrderOfTheWalk) {
  const plan::Plan plan = wide_field(3, 1).plan;
  match::Outcome outcome = outcome_of(plan, match::Verdict::fits);
  outcome.findings = {
      finding(match::Kind::open, {{3, 1, 1}}), finding(match::Kind::shorted, {{1, 2, 4}}),
      finding(match::Kind::open, {{1, 1, 2}}), finding(match::Kind::tester_offset, {})};
  auto faults = faults_of(plan, outcome, {});
  EXPECT_EQ(positions_of(faults), (std::vector<std::string>{"Place 1", "Place 3"}));
  put_in_order(faults, {"Place 3", "Place 1"});
  ASSERT_EQ(faults.size(), 4U);
  EXPECT_EQ(faults[0].where, "the whole field");
  EXPECT_EQ(faults[0].stop, 0);
  EXPECT_EQ(faults[1].position, "Place 3");
  EXPECT_EQ(faults[1].stop, 1);
  EXPECT_EQ(faults[1].finding, 0U);
  EXPECT_EQ(faults[2].where, "M01/R1/P02");
  EXPECT_EQ(faults[3].where, "M01/R2/P04");
  EXPECT_EQ(faults[3].stop, 2);
}

TEST(FaultList, ARehookOfAMovedPlugTouchesItsWholeRailOrModule) {
  const plan::Plan plan = wide_field(1, 2).plan;  // 3 rails of 16 pins a module
  const auto shifted = touched_by(plan, finding(match::Kind::shifted, {{1, 2, 3}, {1, 2, 4}}));
  ASSERT_EQ(shifted.size(), 16U);
  EXPECT_EQ(shifted.front(), (plan::PinId{1, 2, 1}));
  EXPECT_EQ(shifted.back(), (plan::PinId{1, 2, 16}));
  const auto modules =
      touched_by(plan, finding(match::Kind::modules_exchanged, {{1, 1, 1}, {2, 1, 1}}));
  EXPECT_EQ(modules.size(), 96U);
  const std::vector<plan::PinId> one{{1, 1, 2}};
  EXPECT_EQ(touched_by(plan, finding(match::Kind::open, one)), one);
}

TEST(FaultList, FindsAgainWhatSomebodyHasBeforeTheirEyes) {
  const plan::Plan plan = wide_field(1, 1).plan;
  match::Outcome outcome = outcome_of(plan, match::Verdict::fits);
  outcome.findings = {finding(match::Kind::open, {{1, 1, 2}}),
                      finding(match::Kind::shifted, {{1, 2, 3}, {1, 2, 4}})};
  const auto faults = faults_of(plan, outcome, {});
  EXPECT_EQ(find_again(faults, {{1, 2, 3}, {1, 2, 4}}), 1);
  EXPECT_EQ(find_again(faults, {{1, 2, 4}, {1, 2, 5}}), 1);
  EXPECT_EQ(find_again(faults, {{1, 3, 1}}), -1);
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

TEST(FaultReadings, TellWhatHangsThereAgainstThePlanAndWhatDoesNotFitFirst) {
  match::Outcome outcome = outcome_of(wide_field(1, 1).plan, match::Verdict::fits);
  match::PinVerdict& low = outcome.pins.at(2);
  low.verdict = match::Verdict::low;
  low.ohm = 4.05;
  low.low = 9.07;
  low.high = 11.79;
  outcome.pins.at(3).verdict = match::Verdict::open;
  std::vector<plan::PinId> pins;
  for (std::size_t i = 0; i < 5; ++i) pins.push_back(outcome.pins.at(i).pin);
  const QStringList lines = readings_words(outcome, pins, 3);
  ASSERT_EQ(lines.size(), 4);
  EXPECT_EQ(lines[0],
            QString("M01/R1/P03: low, %1 ohm (planned %2 to %3 ohm)")
                .arg(number_words(4.05, 2), number_words(9.07, 2), number_words(11.79, 2)));
  EXPECT_TRUE(lines[1].startsWith("M01/R1/P04: open")) << lines[1].toStdString();
  EXPECT_TRUE(lines[2].startsWith("M01/R1/P01: fits")) << lines[2].toStdString();
  EXPECT_TRUE(lines[3].contains("2 more")) << lines[3].toStdString();
  EXPECT_TRUE(readings_words(outcome, {{99, 1, 1}}, 3).isEmpty());
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
  fill_walk_sheet(sheet, faults_of(plan, outcome, {rehook({{1, 1, 9}})}), outcome,
                  {"ABCD 0123", "Place 1", 420.4});
  const QString text = sheet.toPlainText();
  EXPECT_TRUE(text.contains("M01/R1/P02"));
  EXPECT_TRUE(text.contains("Look at it."));
  EXPECT_TRUE(text.contains("ABCD 0123"));
  EXPECT_TRUE(text.contains("Place 1, about 420 m")) << text.toStdString();
  EXPECT_FALSE(text.contains("M01/R1/P09"));
}

}  // namespace
}  // namespace walkdown::gui
