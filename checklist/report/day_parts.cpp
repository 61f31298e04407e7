// SPDX-License-Identifier: Apache-2.0
// The checklist as a timeline, holds, and what came after the show.
#include <map>

#include "checklist/report/page.h"

namespace walkdown::report {
namespace {

void item_table(Page& page) {
  const auto& list = page.model.prepared.checklist;
  std::vector<std::vector<std::string>> rows;
  for (const auto& each : page.model.items) {
    const ItemAt& item = each.last;
    std::string who = signed_by(item.state);
    if (item.state.fast) who += " (answered under a second after the question)";
    rows.push_back({esc(list.stages[each.stage].title),
                    fmt::format("<code>{}</code> {}", esc(item.id), esc(item.question)),
                    seen(item.state), who, standing_word(item.state.standing)});
  }
  page.table({"stage", "item", "last seen", "signed by", "at the end"}, rows);
}

void holds(Page& page) {
  page.out += "<h3>Holds</h3>\n";
  std::vector<Line> lines;
  for (const Hold& hold : page.model.holds) {
    lines.push_back(hold.called);
    if (hold.lifted) lines.push_back(*hold.lifted);
  }
  page.lines(lines, "Nobody called a hold.");
}

std::string after_counts(const match::After& after) {
  std::map<std::string_view, std::int64_t> words;
  for (const match::AfterPin& pin : after.pins) ++words[match::text(pin.word)];
  std::string said;
  for (const auto& [word, count] : words) {
    said += fmt::format("{}{} {}", said.empty() ? "" : ", ", count, word);
  }
  return said;
}

void misfires(Page& page, const match::After& after) {
  constexpr std::size_t kMostRows = 200;
  std::vector<std::vector<std::string>> rows;
  std::vector<plan::PinId> in_series, more;
  const auto ohm = [](const std::optional<double>& value) {
    return value ? fmt::format("{:.2f}", *value) : std::string();
  };
  for (const match::AfterPin& pin : after.pins) {
    if (pin.word == match::AfterWord::open) continue;
    if (pin.word == match::AfterWord::open_series) {
      in_series.push_back(pin.pin);
    } else if (rows.size() >= kMostRows) {
      more.push_back(pin.pin);
    } else {
      rows.push_back({esc(plan::text(pin.pin)), std::string(match::text(pin.word)),
                      ohm(pin.before_ohm), ohm(pin.after_ohm), esc(pin.say)});
    }
  }
  page.add("<h3>Possible misfires: {}</h3>\n", after.possible_misfires.size());
  page.text(
      "Pins that are not plainly open: did-not-fire reads its load as before; some-left reads a "
      "part "
      "of it; treat-as-live reads neither; no-statement and unread say nothing.");
  if (!rows.empty()) {
    page.table({"pin", "reads", "before, ohm", "after, ohm", "what to do"}, rows);
  }
  if (!more.empty()) page.add("<p>and {}.</p>\n", esc(pin_list(more, 40)));
  if (in_series.empty()) return;
  page.add(
      "<p>{} pins with igniters in series are open: one at least of each string went, and nothing "
      "is known of the others. {}.</p>\n",
      in_series.size(), esc(pin_list(in_series, 40)));
}

}  // namespace

void checklist_part(Page& page) {
  page.section("The checklist through the day");
  if (page.model.items.empty()) {
    page.text("The record has no checklist.");
  } else {
    page.out += checklist_chart(page);
    item_table(page);
  }
  holds(page);
  page.out += "<h3>Restarts, clock and sleep of the station</h3>\n";
  page.lines(page.model.breaks, "The station ran through, and its clock was not set.");
  page.out += "<h3>Notes and statements</h3>\n";
  page.lines(page.model.notes, "None.");
  page.end_section();
}

void after_part(Page& page) {
  page.section("After the show");
  const auto& after = page.model.after;
  if (!after) {
    page.text(
        "No pin was read after a release: this record cannot say which pins may not have fired.");
    return page.end_section();
  }
  page.add(
      "<p>{} readings were taken after the release. Of the planned pins: {}. An open pin is no "
      "proof that its effect worked; no pin here is called fired.</p>\n",
      page.model.after_readings, esc(after_counts(*after)));
  misfires(page, *after);
  page.end_section();
}

}  // namespace walkdown::report
