// SPDX-License-Identifier: Apache-2.0
#include "checklist/report/build.h"

#include <algorithm>
#include <filesystem>
#include <set>
#include <utility>

#include "checklist/report/collect.h"
#include "checklist/report/faults.h"
#include "reader/match/alike.h"
#include "reader/match/coverage_text.h"

namespace walkdown::report {
namespace {

void count_plan(const Collector& collected, Model& model) {
  std::map<std::string, Position> by_name;
  std::map<std::string, std::set<std::string>> cues;
  std::map<std::string, std::set<int>> modules;
  std::set<std::string> all_cues;
  std::set<int> all_modules;
  std::map<plan::PinId, match::Verdict> verdicts;
  for (const auto& pin : model.outcome.pins) verdicts[pin.pin] = pin.verdict;
  for (const plan::PlannedPin& pin : model.prepared.planned.plan.pins) {
    Position& position = by_name[pin.position];
    ++position.pins;
    const auto found = verdicts.find(pin.id);
    if (found != verdicts.end() && found->second == match::Verdict::fits) ++position.fit;
    cues[pin.position].insert(pin.cue);
    modules[pin.position].insert(pin.id.module);
    all_cues.insert(pin.cue);
    all_modules.insert(pin.id.module);
  }
  for (auto& [name, position] : by_name) {
    position.name = name;
    position.cues = static_cast<std::int64_t>(cues[name].size());
    for (const int module : modules[name]) {
      position.modules += (position.modules.empty() ? "" : ", ") + std::to_string(module);
    }
    model.positions.push_back(position);
  }
  model.pins = static_cast<std::int64_t>(model.prepared.planned.plan.pins.size());
  model.cues = static_cast<std::int64_t>(all_cues.size());
  model.modules = static_cast<std::int64_t>(all_modules.size());
  model.after_readings = collected.after().size();
}

void say_coverage(Model& model) {
  const auto& planned = model.prepared.planned;
  model.alike = match::alike(planned.plan);
  const auto coverage = match::coverage(planned.plan, planned.tester.model);
  model.coverage = match::coverage_lines(coverage, model.alike);
  const auto loads = match::load_lines(coverage, 3);
  model.coverage.insert(model.coverage.end(), loads.begin(), loads.end());
  model.coverage.push_back(match::fits_only(coverage));
}

void remark_ignored(const check::Deriver& deriver, record::Report& report) {
  auto& remarks = report.remarks;
  remarks.insert(remarks.end(), deriver.remarks().begin(), deriver.remarks().end());
}

}  // namespace

Result<Model> build(const std::string& path, record::VerifyOptions options) {
  Collector collected;
  options.visitor = [&](const record::EntryView& entry) { return collected.take(entry); };
  auto report = record::verify_file(path, options);
  if (!report) return report.error();
  if (!collected.folded().opened()) {
    return Error{Code::bad_input, "this is no record that a report can be made of: " + report->why,
                 path, ""};
  }
  Model model = collected.finish();
  remark_ignored(collected.deriver(), *report);
  model.check = std::move(report).value();
  model.file = std::filesystem::path(path).filename().string();
  if (!model.outcome_at_release) model.outcome = *collected.folded().outcome();
  const auto& planned = model.prepared.planned;
  model.test_current = match::judge_test_current(planned.plan, planned.tester.model);
  count_plan(collected, model);
  say_coverage(model);
  tell_faults(collected, model);
  if (!collected.after().empty()) {
    model.after = match::after_show(planned.plan, planned.tester.model, collected.before(),
                                    collected.after());
  }
  return model;
}

}  // namespace walkdown::report
