// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/visits.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <utility>

#include "checklist/cli/files.h"
#include "checklist/cli/match_json.h"
#include "checklist/cli/status.h"
#include "checklist/desk/round.h"

namespace walkdown::cli {
namespace {

constexpr std::size_t kMostModules = 2;  // of one finding that is mended in the field

std::string place_of(const plan::Plan& plan, plan::PinId pin) {
  const plan::PlannedPin* planned = plan.find(pin);
  if (planned != nullptr && !planned->position.empty()) return planned->position;
  return fmt::format("module {}", pin.module);
}

// Module by module, the place that most pins of the finding have.
std::vector<std::string> places_of(const plan::Plan& plan, const match::Finding& finding) {
  std::map<std::uint16_t, std::map<std::string, std::size_t>> counts;
  for (const plan::PinId pin : finding.pins) ++counts[pin.module][place_of(plan, pin)];
  if (counts.size() > kMostModules) return {};
  std::vector<std::string> out;
  for (const auto& [module, places] : counts) {
    const auto most =
        std::max_element(places.begin(), places.end(),
                         [](const auto& a, const auto& b) { return a.second < b.second; });
    if (std::find(out.begin(), out.end(), most->first) == out.end()) out.push_back(most->first);
  }
  return out;
}

bool of_the_field(const match::Finding& finding) {
  return finding.kind == match::Kind::tester_offset || finding.kind == match::Kind::wire_differs;
}

std::string findings_of(const Visit& visit) {
  std::string out;
  for (const std::size_t i : visit.findings)
    out += fmt::format("{}{}", out.empty() ? "" : ", ", i + 1);
  return out;
}

}  // namespace

Visits visits_of(const plan::Plan& plan, const match::Outcome& outcome, const zone::Site* site,
                 const std::string& from) {
  std::vector<std::string> names;  // in the order of the findings
  std::map<std::string, std::vector<std::size_t>> asked;
  for (std::size_t i = 0; i < outcome.findings.size(); ++i) {
    if (of_the_field(outcome.findings[i])) continue;
    for (std::string& place : places_of(plan, outcome.findings[i])) {
      auto& findings = asked[place];
      if (findings.empty()) names.push_back(place);
      findings.push_back(i);
    }
  }
  desk::Round round = desk::round_of(site, from, names);
  Visits out{{}, std::move(round.from), round.length_m, site != nullptr};
  for (std::string& name : round.order) {
    auto& findings = asked[name];
    out.order.push_back({std::move(name), std::move(findings)});
  }
  return out;
}

std::string visits_text(const Visits& visits) {
  if (visits.order.empty()) return "";
  std::string out = visits.by_site
                        ? fmt::format(
                              "Walk, {:.0f} m in straight lines{}; it is no permission to "
                              "approach\n",
                              visits.length_m, visits.from.empty() ? "" : " from " + visits.from)
                        : "Places to visit, as the findings name them; --site puts them in walking "
                          "order. It is no permission to approach\n";
  std::size_t number = 0;
  for (const Visit& visit : visits.order) {
    out += fmt::format("  {:>2}  {}: finding{} {}\n", ++number, visit.place,
                       visit.findings.size() == 1 ? "" : "s", findings_of(visit));
  }
  return out;
}

std::string visits_json(const Visits& visits) {
  std::string order;
  for (const Visit& visit : visits.order) {
    std::string findings;
    for (const std::size_t i : visit.findings) {
      findings += fmt::format("{}{}", findings.empty() ? "" : ",", i);
    }
    order += fmt::format(R"({}{{"place":{},"findings":[{}]}})", order.empty() ? "" : ",",
                         json_string(visit.place), findings);
  }
  return fmt::format(R"({{"from":{},"metres":{},"order":[{}]}})", json_string(visits.from),
                     visits.by_site ? fmt::format("{:.1f}", visits.length_m) : "null", order);
}

std::optional<zone::Site> site_aloud(const std::string& path) {
  const auto text = read_file(path);
  if (!text) {
    complain(text.error().sentence());
    return std::nullopt;
  }
  zone::SiteRead read = zone::read_site(*text, base_name(path));
  for (const Error& mistake : read.mistakes) complain(mistake.sentence());
  if (!read.mistakes.empty()) return std::nullopt;
  return std::move(read.site);
}

}  // namespace walkdown::cli
