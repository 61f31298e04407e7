// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "checklist/day/duration.h"
#include "checklist/report/html.h"
#include "checklist/report/page.h"

namespace walkdown::report {
namespace {

std::string names_of(const Model& model, const day::Roles& roles) {
  std::string names;
  for (const Person& person : model.people) {
    const bool has =
        std::any_of(person.roles.begin(), person.roles.end(),
                    [&](const std::string& role) { return day::contains(roles, role); });
    if (has) names += (names.empty() ? "" : ", ") + person.name;
  }
  return names.empty() ? "nobody was enrolled" : names;
}

// The middle of the positions, to about ten metres.
std::string place(const Model& model) {
  if (!model.prepared.site || model.prepared.site->positions.empty()) {
    return "the record has no site plan";
  }
  double lat = 0, lon = 0;
  for (const auto& position : model.prepared.site->positions) {
    lat += position.at.lat_deg;
    lon += position.at.lon_deg;
  }
  const auto count = static_cast<double>(model.prepared.site->positions.size());
  return fmt::format(
      "{:.4f}, {:.4f} (latitude and longitude of the middle of the positions, WGS 84)", lat / count,
      lon / count);
}

void says(Page& page) {
  const record::Report& check = page.model.check;
  if (check.holds) {
    page.add(
        "<div class=\"says\"><b>&#10003; This record holds.</b> All {} entries, every signature, "
        "verdict and release were checked and derived again when this report was made{}.</div>\n",
        check.entries, check.closed ? "; it was closed" : "; it was not closed");
    return;
  }
  page.add(
      "<div class=\"says bad\"><b>&#10007; This record does not hold.</b> The first line that does "
      "not: line {} of the file; {}. What follows is what the {} entries before it say.</div>\n",
      check.first_bad.value_or(0), esc(check.why), check.entries);
}

void grounds(Page& page, const Release& release) {
  std::vector<std::vector<std::string>> rows;
  for (const ItemAt& item : release.grounds) {
    rows.push_back({esc(item.question), standing_word(item.state.standing), seen(item.state),
                    signed_by(item.state)});
  }
  page.table({"question", "stood", "what was seen", "signed by"}, rows, "tight");
}

void release(Page& page, const Release& each) {
  const Times& times = page.times;
  if (!each.second_n) {
    page.add(
        "<p>{} signed a release at {} {}; it was never countersigned, so nothing was "
        "released.</p>\n",
        esc(each.by), times.full(each.at_ms), Page::entry(each.n));
    return;
  }
  page.add("<p><span class=\"strong\">Released at {} by {} {} and {} {}.</span> ",
           times.full(each.at_ms), esc(each.by), Page::entry(each.n), esc(each.second),
           Page::entry(*each.second_n));
  if (each.until_at_ms) page.add("It could stand until {}. ", times.full(*each.until_at_ms));
  if (each.fell_at_ms) {
    page.add("It fell at {} {}: {}.", times.full(*each.fell_at_ms), Page::entry(each.fell_n),
             esc(each.fell_why));
  } else {
    page.out += "It stood to the end of the record.";
  }
  page.out += "</p>\n";
}

void waived(Page& page) {
  std::vector<std::vector<std::string>> rows;
  for (const auto* list : {&page.model.waived_items, &page.model.waived_pins}) {
    for (const Waived& each : *list) {
      rows.push_back(
          {Page::entry(each.n), page.times.full(each.at_ms),
           esc(each.what + (each.verdict.empty() ? "" : " (" + each.verdict + ")")), esc(each.by),
           each.second.empty() ? "nobody: without effect" : esc(each.second), esc(each.reason)});
    }
  }
  if (rows.empty()) return page.text("Nothing was waived and nobody overrode anything.");
  page.out += "<h3>Waived or overridden</h3>\n";
  page.table({"entry", "time", "what", "by", "countersigned by", "reason"}, rows);
}

void facts(Page& page) {
  const Model& model = page.model;
  const Times& times = page.times;
  const auto* plan = model.prepared.show.find(show::Role::plan);
  std::vector<std::pair<const char*, std::string>> rows = {
      {"Show", fmt::format("plan {}, checklist &ldquo;{}&rdquo;",
                           esc(plan == nullptr ? "(none)" : plan->name),
                           esc(model.prepared.checklist.name))},
      {"Place", esc(place(model))},
      {"Day",
       fmt::format("{}, {} to {}, times in {}", times.date(model.opened_at_ms),
                   times.full(model.opened_at_ms), times.full(model.last_at_ms), times.zone())},
      {"Show time", model.show_at_ms ? times.full(*model.show_at_ms) : "was not set"},
      {"Lead shooter", esc(names_of(model, model.prepared.checklist.lead))},
      {"Field",
       fmt::format("{} pins, {} cues, {} modules, {} positions; {} readings were taken", model.pins,
                   model.cues, model.modules, model.positions.size(), model.readings)},
      {"Record", fmt::format("<code>{}</code>, {} entries, origin <code>{}</code>", esc(model.file),
                             model.check.entries, esc(model.origin))}};
  page.out += "<table class=\"facts\">\n";
  for (const auto& [name, said] : rows) page.add("<tr><td>{}</td><td>{}</td></tr>\n", name, said);
  page.out += "</table>\n";
}

}  // namespace

void first_page(Page& page) {
  const Model& model = page.model;
  page.out += "<header class=\"head\"><div><h1>Report of the day</h1>\n";
  page.add(
      "<p>{}</p><div class=\"mark\">{}</div><p>The mark of the whole record, to be compared with "
      "the one on paper. One that was written down earlier in the day is that of an earlier "
      "moment: the last section tells how it is checked.</p></div>\n",
      esc(model.file), esc(model.check.mark));
  page.add("<div class=\"qr\">{}<div>the mark</div></div></header>\n", qr_svg(model.check.mark));
  says(page);
  facts(page);
  page.section("Release");
  if (model.releases.empty()) page.text("Nobody signed a release in this record.");
  for (const Release& each : model.releases) release(page, each);
  waived(page);
  for (const Release& each : model.releases) {
    if (!each.second_n) continue;
    page.add("<h3>Grounds of the release at {}, all at that moment</h3>\n",
             page.times.full(each.at_ms));
    grounds(page, each);
  }
  page.end_section();
}

}  // namespace walkdown::report
