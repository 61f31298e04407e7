// SPDX-License-Identifier: Apache-2.0
// Weather, zone, custody and headcount.
#include <map>

#include "checklist/report/page.h"
#include "checklist/zone/clearance.h"

namespace walkdown::report {
namespace {

std::string metres(std::int64_t mm) {
  return fmt::format("{}.{}", mm / 1000, (mm < 0 ? -mm : mm) % 1000 / 100);
}

// A sentence's end comes from the page.
std::string unstopped(std::string text) {
  while (!text.empty() && text.back() == '.') text.pop_back();
  return text;
}

void wind_limits(Page& page) {
  for (const day::Item& item : page.model.prepared.checklist.items) {
    if (item.kind != day::Kind::wind) continue;
    page.add("<p>Limits of &ldquo;{}&rdquo;: mean {}, gust {} m/s. Source: {}.</p>\n", esc(item.id),
             item.mean_max_mm_per_s ? metres_per_s(*item.mean_max_mm_per_s) : "none",
             item.gust_max_mm_per_s ? metres_per_s(*item.gust_max_mm_per_s) : "none",
             esc(unstopped(item.source)));
  }
}

std::string calibre(std::int64_t um) { return fmt::format("{:g}", static_cast<double>(um) / 1000); }

// The largest that the plan puts at the position, which the distance is asked for.
std::string planned_at(const std::map<std::string, zone::Charge>& charges,
                       const std::string& position) {
  const auto found = charges.find(position);
  if (found == charges.end() || !found->second.calibre_mm) return "none";
  return fmt::format("{:g}", *found->second.calibre_mm);
}

void zone_rows(Page& page, const zone::Zone& zone) {
  const auto charges = zone::charges(page.model.prepared.planned.plan);
  std::vector<std::vector<std::string>> rows;
  for (const zone::Clearance& each : zone.clearances) {
    const auto margin = each.margin_mm();
    rows.push_back({esc(each.position), esc(each.target), std::string(zone::word(each.role)),
                    planned_at(charges, each.position), metres(each.distance_mm),
                    each.least_mm ? metres(*each.least_mm) : "not in the table",
                    margin ? metres(*margin) : "",
                    each.largest_um ? calibre(*each.largest_um) : "none",
                    each.holds() ? "kept" : "<b>&#10007; not kept</b>"});
  }
  page.table({"position", "to", "what", "calibre, mm", "distance, m", "at least, m", "margin, m",
              "room for, mm", ""},
             rows);
  page.text(
      "Calibre: the largest that the plan puts there. Room for: the largest that the table allows "
      "at this distance.");
}

}  // namespace

void weather_part(Page& page) {
  const Model& model = page.model;
  page.section("Weather");
  if (model.winds.empty()) {
    page.text("No wind stands in this record.");
  } else {
    page.out += wind_chart(page);
    std::vector<std::vector<std::string>> rows;
    for (const Wind& each : model.winds) {
      rows.push_back({Page::entry(each.n), page.times.full(each.at_ms),
                      metres_per_s(each.mean_mm_per_s), metres_per_s(each.gust_mm_per_s),
                      std::to_string(each.period_ms / 60'000), esc(each.by)});
    }
    page.table({"entry", "time", "mean, m/s", "gust, m/s", "over, min", "by"}, rows, "log");
  }
  wind_limits(page);
  page.out += "<h3>Thunder</h3>\n";
  page.lines(model.thunder, "No thunder stands in this record.");
  page.end_section();
}

void zone_part(Page& page) {
  page.section("Distances");
  const auto& zone = page.model.prepared.zone;
  if (!zone) {
    page.text("The record has no site plan or no table of distances, so nothing was measured.");
    return page.end_section();
  }
  page.add(
      "<p>{}. Table: {}, {}. Source: {}. Geodesic distances on WGS 84, rounded down, the accuracy "
      "of both places taken off.</p>\n",
      zone->holds() ? "All distances are kept" : "<b>&#10007; Not all distances are kept</b>",
      esc(zone->rules), esc(zone->edition), esc(unstopped(zone->source)));
  for (const std::string& fault : zone->faults) page.add("<p>&#10007; {}.</p>\n", esc(fault));
  page.out += site_plan(page);
  zone_rows(page, *zone);
  page.end_section();
}

void custody_part(Page& page) {
  const Model& model = page.model;
  page.section("Keys, and who was in the field");
  if (model.keys.empty()) page.text("The checklist knows no key.");
  page.out += custody_lines(page);
  for (const KeyStory& key : model.keys) {
    page.add("<h3>{}</h3>\n", esc(key.name));
    page.lines(key.lines, "It stayed where it was when the day began.");
  }
  page.out += "<h3>In the field</h3>\n";
  page.out += headcount_chart(page);
  page.lines(model.in_and_out, "Nobody was signed into the field.");
  page.end_section();
}

}  // namespace walkdown::report
