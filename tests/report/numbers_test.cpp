// SPDX-License-Identifier: Apache-2.0
// Every number on the page is found again: in the bytes of the record, as one of its times, as one
// of its values in other units, or as a count that is counted here once more from the lines alone.
#include <fmt/format.h>
#include <gmock/gmock.h>

#include <cmath>
#include <fstream>
#include <map>
#include <regex>
#include <set>

#include "checklist/record/base64.h"
#include "checklist/record/clock.h"
#include "checklist/record/line.h"
#include "checklist/report/build.h"
#include "checklist/report/html.h"
#include "reader/match/alike.h"
#include "reader/match/coverage_text.h"
#include "tests/check/whole_day.h"
#include "tests/record/readable.h"
#include "tests/record/sample.h"

namespace walkdown::report {
namespace {

using nlohmann::json;

std::vector<std::string> numbers(const std::string& text) {
  static const std::regex kNumber(R"(\d\d:\d\d:\d\d|\d\d:\d\d|\d{4}-\d\d-\d\d|\d+(\.\d+)?)");
  return {std::sregex_token_iterator(text.begin(), text.end(), kNumber),
          std::sregex_token_iterator()};
}

// What a reader sees: no style, no drawing, no tags.
std::string visible(std::string page) {
  for (const char* const pattern :
       {R"(<style>[\s\S]*?</style>)", R"(<svg[\s\S]*?</svg>)", R"(<[^>]*>)"}) {
    page = std::regex_replace(page, std::regex(pattern), " ");
  }
  return std::regex_replace(page, std::regex("&#?[a-z0-9]+;"), " ");
}

class Found {
 public:
  explicit Found(const std::string& record) {
    for (const std::string& line : record::test::lines_of(record)) take(line);
    for (const auto& [word, count] : counts_) add(std::to_string(count));
    add(std::to_string(n_));
  }
  [[nodiscard]] bool has(const std::string& number) const { return known_.contains(number); }
  void add(const std::string& number) { known_.insert(number); }

 private:
  void take(const std::string& line) {
    for (const std::string& each : numbers(record::test::readable(line))) add(each);
    const auto parsed = record::parse_line(line);
    if (!std::holds_alternative<record::EntryView>(*parsed)) return;
    const record::Entry entry = record::entry_of(std::get<record::EntryView>(*parsed));
    ++n_;
    add_time(entry.at_ms);
    ++counts_[entry.kind];
    if (entry.kind == "reading" && entry.body.contains("uohm")) {
      add(fmt::format("{:.2f}", entry.body["uohm"].get<double>() / 1e6));
    }
    if (entry.body.contains("show_at_ms")) add_time(entry.body["show_at_ms"]);
    if (entry.kind == "timestamp") add_stamp(entry);
  }
  // The authority's time stands in its answer as GeneralizedTime, "20260704190211Z"; how far the
  // station's clock is from it is worked out here once more.
  void add_stamp(const record::Entry& entry) {
    const auto der = record::from_base64(entry.body["response"].get<std::string>());
    const std::string text(der->begin(), der->end());
    static const std::regex kTime("(\\d{4})(\\d\\d)(\\d\\d)(\\d\\d)(\\d\\d)(\\d\\d)Z");
    std::smatch at;
    ASSERT_TRUE(std::regex_search(text, at, kTime));
    const std::string when = fmt::format("{}-{}-{}T{}:{}:{}.000Z", at[1].str(), at[2].str(),
                                         at[3].str(), at[4].str(), at[5].str(), at[6].str());
    const std::int64_t at_ms = *record::parse_rfc3339(when);
    add_time(at_ms);
    add(std::to_string((at_ms - entry.at_ms) / 1000));
    add("3161");  // the RFC's own
  }
  void add_time(std::int64_t at_ms) {
    const std::string text = record::rfc3339(at_ms);
    add(text.substr(11, 8));
    add(text.substr(11, 5));
    add(text.substr(0, 10));
  }

  std::set<std::string> known_;
  std::map<std::string, std::int64_t> counts_;
  std::int64_t n_ = 0;
};

std::vector<std::string> not_found(const std::string& text, const Found& found) {
  std::vector<std::string> missing;
  for (const std::string& each : numbers(record::test::readable(text))) {
    if (!found.has(each)) missing.push_back(each);
  }
  return missing;
}

// Cut into sections by their headings.
std::map<std::string, std::string> sections(const std::string& page) {
  std::map<std::string, std::string> parts;
  static const std::regex kHead(
      R"(<section id="s\d+"><h2><span class="no">\d+</span>([^<]*)</h2>)");
  std::string name = "first page";
  std::size_t begin = page.find("<body>");
  for (auto each = std::sregex_iterator(page.begin(), page.end(), kHead);
       each != std::sregex_iterator(); ++each) {
    const auto at = static_cast<std::size_t>(each->position());
    parts[name] = visible(page.substr(begin, at - begin));
    name = (*each)[1];
    begin = at + static_cast<std::size_t>(each->length());
  }
  parts[name] = visible(page.substr(begin));
  return parts;
}

TEST(Numbers, AreFoundAgainInTheRecord) {
  const record::test::Scratch scratch;
  const std::string path = scratch.path("day.record");
  record::test::write_file(path, check::test::the_day());
  const auto model = build(path);
  ASSERT_TRUE(model.ok());
  Found found(check::test::the_day());
  // The release could stand until the answer at the edge, valid for 20 minutes, ran out.
  for (const Release& each : model->releases) {
    found.add(record::rfc3339(*each.until_at_ms).substr(11, 8));
  }
  // The middle of the two positions of tests/desk/evening.cpp, and the ellipsoid's name.
  for (const char* place : {"44.6005", "35.2000", "84"}) found.add(place);
  // The mark's digits are no numbers.
  for (const std::string& each : numbers(model->check.mark)) found.add(each);
  auto parts = sections(html(*model));
  ASSERT_EQ(parts.size(), 12U);
  // Those of what is worked out from the plan are looked for below.
  for (const char* derived :
       {"Plan, and what the test can show", "Tester and igniters", "Distances",
        "How to check this record", "Faults, from found to mended"}) {
    ASSERT_EQ(parts.erase(derived), 1U) << derived;
  }
  for (const auto& [name, text] : parts) {
    EXPECT_THAT(not_found(text, found), testing::IsEmpty()) << name << ": " << text;
  }
}

// The sections above, by value.
TEST(Numbers, OfPlanFaultsAndDistancesAreThoseOfTheirParts) {
  const record::test::Scratch scratch;
  const std::string path = scratch.path("day.record");
  record::test::write_file(path, check::test::the_day());
  const auto model = build(path);
  ASSERT_TRUE(model.ok());
  EXPECT_EQ(model->pins, 6);
  EXPECT_EQ(model->cues, 6);
  EXPECT_EQ(model->modules, 2);
  ASSERT_EQ(model->positions.size(), 2U);
  EXPECT_EQ(model->positions[0].pins + model->positions[1].pins, 6);
  EXPECT_EQ(model->readings, 14);
  ASSERT_EQ(model->sweeps.size(), 2U);
  for (const Sweep& sweep : model->sweeps) {
    std::int64_t sum = 0;
    for (const auto& [word, count] : sweep.verdicts) sum += count;
    EXPECT_EQ(sum, 6);
  }
  auto parts = sections(html(*model));
  Found found(check::test::the_day());
  for (const auto& clearance : model->prepared.zone->clearances) {
    found.add(
        fmt::format("{:.1f}", std::floor(static_cast<double>(clearance.distance_mm) / 100) / 10));
    found.add(
        fmt::format("{:.1f}", std::floor(static_cast<double>(*clearance.least_mm) / 100) / 10));
    found.add(
        fmt::format("{:.1f}", std::floor(static_cast<double>(*clearance.margin_mm()) / 100) / 10));
    if (!clearance.largest_um) continue;
    found.add(fmt::format("{:g}", static_cast<double>(*clearance.largest_um) / 1000));
  }
  for (const std::string& each :
       numbers(model->prepared.zone->rules + model->prepared.zone->source +
               model->prepared.zone->edition + "WGS 84")) {
    found.add(each);
  }
  EXPECT_THAT(not_found(parts["Distances"], found), testing::IsEmpty()) << parts["Distances"];
  for (const auto& fault : model->faults) {
    for (const auto& pin : fault.readings) {
      found.add(fmt::format("{:.2f}", *pin.low_ohm));
      found.add(fmt::format("{:.2f}", *pin.high_ohm));
    }
  }
  EXPECT_THAT(not_found(parts["Faults, from found to mended"], found), testing::IsEmpty());
}

// What is worked out from the plan and the tester is worked out here again, from the opening alone;
// and the steps of the last section name no number but the record's own.
TEST(Numbers, OfPlanTesterAndStepsAreWorkedOutAgain) {
  const record::test::Scratch scratch;
  const std::string path = scratch.path("day.record");
  record::test::write_file(path, check::test::the_day());
  const auto model = build(path);
  ASSERT_TRUE(model.ok());
  const std::string opened = record::test::lines_of(check::test::the_day()).front();
  const auto first = record::parse_line(opened);  // a view of it
  const auto opening = record::entry_of(std::get<record::EntryView>(*first));
  const auto show = show::from_json(opening.body["show"]);
  ASSERT_TRUE(show.ok());
  const auto outcome = desk::prepare(*show);
  ASSERT_TRUE(outcome.prepared.has_value());
  const plan::Plan& plan = outcome.prepared->planned.plan;
  const tester::Model& tester = outcome.prepared->planned.tester.model;

  Found found(check::test::the_day());
  std::map<std::string, std::pair<int, std::set<std::string>>> at;  // pins and cues of a position
  for (const plan::PlannedPin& pin : plan.pins) {
    ++at[pin.position].first;
    at[pin.position].second.insert(pin.cue);
  }
  for (const auto& [name, counts] : at) {
    found.add(std::to_string(counts.first));
    found.add(std::to_string(counts.second.size()));
  }
  found.add(std::to_string(plan.pins.size()));
  const auto alike = match::alike(plan);
  const auto coverage = match::coverage(plan, tester);
  std::string said = match::fits_only(coverage);
  for (const std::string& line : match::coverage_lines(coverage, alike)) said += line + '\n';
  for (const std::string& line : match::load_lines(coverage, 3)) said += line + '\n';
  for (const std::string& each : numbers(said)) found.add(each);
  auto parts = sections(html(*model));
  const std::string plan_part = parts["Plan, and what the test can show"];
  EXPECT_FALSE(plan_part.empty());
  EXPECT_THAT(not_found(plan_part, found), testing::IsEmpty()) << plan_part;

  Found meter(check::test::the_day());
  for (const double each : {tester.accuracy_pct, tester.accuracy_ohm, tester.resolution_ohm,
                            tester.range_ohm, tester.zero_ohm}) {
    meter.add(fmt::format("{:g}", each));
  }
  for (const plan::Igniter& each : plan.catalogue.igniters) {
    meter.add(fmt::format("{:g}", each.bridge_ohm.lo));
    meter.add(fmt::format("{:g}", each.bridge_ohm.hi));
  }
  EXPECT_FALSE(parts["Tester and igniters"].empty());
  EXPECT_THAT(not_found(parts["Tester and igniters"], meter), testing::IsEmpty())
      << parts["Tester and igniters"];

  Found steps(check::test::the_day());
  for (const std::string& each : numbers(model->check.mark + " 16")) steps.add(each);  // of digits
  steps.add("64");  // the base of an encoding that a step undoes, by its name
  steps.add("43");  // 32 bytes in it, without the sign at the end
  EXPECT_FALSE(parts["How to check this record"].empty());
  EXPECT_THAT(not_found(parts["How to check this record"], steps), testing::IsEmpty())
      << parts["How to check this record"];
}

}  // namespace
}  // namespace walkdown::report
