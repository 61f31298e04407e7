// SPDX-License-Identifier: Apache-2.0
// Plan and coverage, faults, pins waived, tester.
#include <algorithm>
#include <array>

#include "checklist/report/page.h"
#include "reader/tester/instrument.h"

namespace walkdown::report {
namespace {

std::string counts(const std::vector<std::pair<std::string, std::int64_t>>& verdicts) {
  std::string out;
  for (const auto& [word, count] : verdicts) {
    out += fmt::format("{}{} {}", out.empty() ? "" : ", ", count, word);
  }
  return out;
}

std::string now_counts(const match::Outcome& outcome) {
  std::array<std::int64_t, match::kVerdicts> by_word{};
  for (const auto& pin : outcome.pins) ++by_word.at(static_cast<std::size_t>(pin.verdict));
  std::vector<std::pair<std::string, std::int64_t>> all;
  for (std::size_t i = 0; i < by_word.size(); ++i) {
    if (by_word.at(i) > 0) {
      all.emplace_back(match::text(static_cast<match::Verdict>(i)), by_word.at(i));
    }
  }
  return counts(all);
}

void positions(Page& page) {
  std::vector<std::vector<std::string>> rows;
  for (const Position& each : page.model.positions) {
    rows.push_back({esc(each.name.empty() ? "(no position)" : each.name), std::to_string(each.cues),
                    std::to_string(each.pins), std::to_string(each.fit), esc(each.modules)});
  }
  page.table({"position", "cues", "pins", "fit", "modules"}, rows, "num");
}

// Answers to the items that ask for the pins no test can tell apart.
void seen_by_eye(Page& page) {
  const auto& items = page.model.prepared.checklist.items;
  bool asked = false;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (!items[i].alike) continue;
    asked = true;
    const day::ItemState& state = page.model.items[i].last.state;
    page.add("<p>By eye: {} &mdash; {}{}{} ({}{}).</p>\n", esc(items[i].question),
             esc(state.answer.empty() ? "not answered" : state.answer),
             state.by.empty() ? "" : fmt::format(", {}", esc(state.by)),
             state.second.empty() ? "" : fmt::format(" and {}", esc(state.second)),
             standing_word(state.standing),
             state.answered_n ? fmt::format(", {}", Page::entry(*state.answered_n)) : "");
  }
  if (!asked) page.text("The checklist asked nobody to look at these pins by eye.");
}

void alike(Page& page) {
  const auto& groups = page.model.alike;
  page.out += "<h3>What continuity could not show</h3>\n";
  if (groups.empty()) return page.text("Every planned load is electrically its own.");
  std::size_t pins = 0;
  for (const auto& group : groups) pins += group.size();
  page.add(
      "<p>{} pins stand in {} groups whose loads are electrically the same: a swap inside a group "
      "is invisible to any meter.</p>\n",
      pins, groups.size());
  seen_by_eye(page);
  constexpr std::size_t kMostGroups = 12;
  std::vector<std::vector<std::string>> rows;
  for (std::size_t i = 0; i < std::min(groups.size(), kMostGroups); ++i) {
    rows.push_back({std::to_string(groups[i].size()), esc(pin_list(groups[i], 6))});
  }
  page.table({"pins", "read alike"}, rows);
  if (groups.size() > kMostGroups) {
    std::size_t rest = 0;
    for (std::size_t i = kMostGroups; i < groups.size(); ++i) rest += groups[i].size();
    page.add(
        "<p>and {} more groups with {} pins, which this page leaves out: <code>walkdown plan "
        "PLAN.csv --json</code> lists every group and every pin.</p>\n",
        groups.size() - kMostGroups, rest);
  }
}

std::string band(const PinStory& pin) {
  if (!pin.low_ohm || !pin.high_ohm) return "";
  return fmt::format("{:.2f} to {:.2f}", *pin.low_ohm, *pin.high_ohm);
}

void fault_readings(Page& page, const Fault& fault) {
  std::vector<std::vector<std::string>> rows;
  for (const PinStory& pin : fault.readings) {
    rows.push_back(
        {esc(plan::text(pin.pin)), band(pin),
         esc(pin.before) + (pin.before_n == 0 ? "" : fmt::format(" {}", Page::entry(pin.before_n))),
         pin.after.empty() ? "not read again"
                           : esc(pin.after) + fmt::format(" {}", Page::entry(pin.after_n)),
         esc(pin.verdict)});
  }
  page.table({"pin", "planned, ohm", "before", "after",
              page.model.outcome_at_release ? "when released" : "at the end"},
             rows);
  if (fault.pins.size() > fault.readings.size()) {
    const std::size_t more = fault.pins.size() - fault.readings.size();
    page.add("<p>and {} more {}.</p>\n", more, more == 1 ? "pin" : "pins");
  }
}

void fault(Page& page, const Fault& each) {
  const Times& times = page.times;
  page.add("<div class=\"fault\"><span class=\"strong\">{}</span>: {}<br>\n", esc(each.kind),
           esc(pin_list(each.pins, 4)));
  page.add("Found {} {} with {} % confidence. {}<br>\n", times.full(each.found_at_ms),
           Page::entry(each.found_n), each.confidence_pct, esc(each.say));
  for (const Rehooked& hook : each.rehooked) {
    page.add("Hooked up anew {} {} by {}{}.<br>\n", times.full(hook.at_ms), Page::entry(hook.n),
             esc(hook.by.empty() ? "somebody not named" : hook.by),
             hook.why.empty() ? "" : fmt::format(" ({})", esc(hook.why)));
  }
  if (each.mended_n) {
    page.add("No longer found {} {}.", times.full(*each.mended_at_ms), Page::entry(*each.mended_n));
  } else {
    page.out += "<span class=\"strong\">&#10007; Still there at the end of the record.</span>";
  }
  fault_readings(page, each);
  page.out += "</div>\n";
}

std::string range(const plan::Interval& each) {
  return fmt::format("{:g} to {:g}", each.lo, each.hi);
}
std::string ampere(const std::optional<double>& value) {
  return value ? fmt::format("{:g} A", *value) : std::string("not given");
}

void instrument(Page& page) {
  const auto* const profile = page.model.prepared.show.find(show::Role::tester);
  const auto is = tester::instrument_of(profile == nullptr ? "" : profile->text);
  if (!is.told()) {
    return page.text(
        "The profile does not say which instrument it was: no type, serial number or calibration "
        "stands in this record, unless a note tells them.");
  }
  const auto told = [](const std::string& text) { return esc(text.empty() ? "not given" : text); };
  page.add(
      "<p>Instrument, as its profile says: {}, serial number {}; calibrated {}, due {}, "
      "certificate "
      "{}.</p>\n",
      told(is.type), told(is.serial), told(is.calibrated_on), told(is.calibration_due),
      told(is.certificate));
  if (!is.calibration_due.empty() &&
      is.calibration_due < page.times.date(page.model.opened_at_ms)) {
    page.text("\u2717 Its calibration had run out on the day.");
  }
}

// Answers that only a meter can give: numbers with an electrical unit.
void checked_on_the_day(Page& page) {
  const auto& items = page.model.prepared.checklist.items;
  bool any = false;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const std::string& unit = items[i].unit;
    const bool electrical = unit == "mA" || unit == "A" || unit == "ohm" || unit == "V";
    if (items[i].kind != day::Kind::number || !electrical) continue;
    any = true;
    const day::ItemState& state = page.model.items[i].last.state;
    page.add("<p>Checked on the day: {} {} ({}).</p>\n", esc(items[i].question), seen(state),
             state.by.empty() ? standing_word(state.standing) : signed_by(state));
  }
  if (!any) page.text("The checklist asked for no check of the tester on the day.");
}

}  // namespace

void plan_part(Page& page) {
  const Model& model = page.model;
  page.section("Plan, and what the test can show");
  page.add("<p>{} pins are planned. {} they read: {}.</p>\n", model.pins,
           model.outcome_at_release ? "When it was released" : "At the end of the record",
           now_counts(model.outcome));
  positions(page);
  page.out += "<h3>Coverage of the test on this plan</h3>\n<ul>\n";
  for (const std::string& line : model.coverage) page.add("<li>{}</li>\n", esc(line));
  page.out += "</ul>\n";
  alike(page);
  page.end_section();
}

void faults_part(Page& page) {
  const Model& model = page.model;
  page.section("Faults, from found to mended");
  if (model.sweeps.empty()) {
    page.text("No claim about the field stands in this record; the readings alone do.");
  } else {
    std::vector<std::vector<std::string>> rows;
    for (const Sweep& each : model.sweeps) {
      rows.push_back({Page::entry(each.n), page.times.full(each.at_ms), esc(counts(each.verdicts)),
                      std::to_string(each.findings)});
    }
    page.table({"entry", "time", "the field read", "findings"}, rows, "log");
  }
  for (const Fault& each : model.faults) fault(page, each);
  if (!model.sweeps.empty() && model.faults.empty()) page.text("No fault was found.");
  if (model.rejected > 0) {
    page.add(
        "<p>{} lines of the tester were not taken; each stands in the record with its reason."
        "</p>\n",
        model.rejected);
  }
  page.end_section();
}

void tester_part(Page& page) {
  const Model& model = page.model;
  const tester::Model& tester = model.prepared.planned.tester.model;
  const auto* file = model.prepared.show.find(show::Role::tester);
  page.section("Tester and igniters");
  page.add(
      "<p>Profile <code>{}</code>: accuracy {:g} % and {:g} ohm, resolution {:g} ohm, range {:g} "
      "ohm, zero {:g} ohm, current into a short {}.</p>\n",
      esc(file == nullptr ? "(default)" : file->name), tester.accuracy_pct, tester.accuracy_ohm,
      tester.resolution_ohm, tester.range_ohm, tester.zero_ohm, ampere(tester.test_current_a));
  page.add("<p>{}</p>\n", esc(model.test_current.say));
  instrument(page);
  checked_on_the_day(page);
  std::vector<std::vector<std::string>> rows;
  for (const plan::Igniter& each : model.prepared.planned.plan.catalogue.igniters) {
    rows.push_back({esc(each.name), range(each.bridge_ohm), ampere(each.all_fire_a),
                    ampere(each.no_fire_a), ampere(each.test_max_a), esc(each.source)});
  }
  page.table({"igniter", "bridge, ohm", "all-fire", "no-fire", "test, at most", "source"}, rows);
  page.end_section();
}

}  // namespace walkdown::report
