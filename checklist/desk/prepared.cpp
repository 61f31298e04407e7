// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/prepared.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "checklist/day/read_checklist.h"
#include "reader/plan/pin.h"

namespace walkdown::desk {
namespace {

using show::Role;

void add(const std::vector<Error>& mistakes, std::vector<std::string>& errors) {
  for (const Error& mistake : mistakes) errors.push_back(mistake.sentence());
}

void read_list(const show::Show& show, Prepared& made, std::vector<std::string>& errors) {
  const show::File* file = show.find(Role::checklist);
  made.has_checklist = file != nullptr;
  if (file == nullptr) {
    made.checklist = no_checklist();
    return;
  }
  auto read = day::read_checklist(file->text, file->name);
  add(read.mistakes, errors);
  made.checklist = std::move(read.checklist);
}

void read_ground(const show::Show& show, Prepared& made, std::vector<std::string>& errors) {
  const show::File* site_file = show.find(Role::site);
  const show::File* table_file = show.find(Role::distances);
  if (site_file == nullptr || table_file == nullptr) return;
  auto site = zone::read_site(site_file->text, site_file->name);
  auto table = zone::read_table(table_file->text, table_file->name);
  add(site.mistakes, errors);
  add(table.mistakes, errors);
  if (!site.mistakes.empty() || !table.mistakes.empty()) return;
  made.zone = zone::judge(site.site, table.table, zone::charges(made.planned.plan));
  made.site = std::move(site.site);
}

void warn(const Prepared& made, std::vector<std::string>& warnings) {
  const auto& items = made.checklist.items;
  const bool measures = std::any_of(items.begin(), items.end(), [](const day::Item& item) {
    return item.kind == day::Kind::zone;
  });
  if (measures && !made.zone) {
    warnings.emplace_back(
        "The checklist asks for the distances, and the show has no site to measure on; that item "
        "can then only be waived.");
  }
  if (!made.zone) return;
  for (const std::string& fault : made.zone->faults) warnings.push_back("The site: " + fault + ".");
}

}  // namespace

day::Checklist no_checklist() {
  day::Checklist none;
  none.name = "no checklist";
  none.source = "the show has none";
  none.lead = {"lead"};
  none.release_by = {"lead"};
  none.release_second = {"safety"};
  return none;
}

day::ZoneFacts zone_facts(const zone::Zone& zone) {
  if (zone.holds()) {
    return {true, fmt::format("{}: all {} distances are kept", zone.rules, zone.clearances.size())};
  }
  const std::size_t more = zone.faults.size() - 1;
  return {false, fmt::format("{}: {}{}", zone.rules, zone.faults.front(),
                             more == 0 ? "" : fmt::format(", and {} more", more))};
}

day::Outside Prepared::outside() const {
  day::Outside outside;
  for (const plan::PlannedPin& pin : planned.plan.pins) {
    outside.pins.push_back({plan::text(pin.id), pin.position});
  }
  if (zone) outside.zone = zone_facts(*zone);
  return outside;
}

PreparedOutcome prepare(const show::Show& given) {
  PreparedOutcome outcome;
  Prepared made;
  made.show = audit::complete(given);
  auto imported = audit::import(made.show);
  outcome.errors = std::move(imported.errors);
  outcome.warnings = std::move(imported.warnings);
  made.layout_known = made.show.find(Role::modules) != nullptr;
  if (imported.planned) made.planned = std::move(*imported.planned);
  read_list(made.show, made, outcome.errors);
  read_ground(made.show, made, outcome.errors);
  if (!outcome.errors.empty()) return outcome;
  warn(made, outcome.warnings);
  outcome.prepared = std::move(made);
  return outcome;
}

}  // namespace walkdown::desk
