// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <memory>
#include <utility>
#include <vector>

#include "checklist/cli/commands.h"
#include "checklist/cli/files.h"
#include "checklist/cli/progress.h"
#include "checklist/record/verify.h"
#include "checklist/report/csv.h"

namespace walkdown::cli {
namespace {

struct ExportArguments {
  std::string record;
  std::string readings, findings, sign_offs;
};

Status run(const ExportArguments& arguments) {
  std::vector<std::pair<std::string, report::CsvTable>> tables;
  const auto wanted = [&](const std::string& path, report::Table table) {
    if (!path.empty()) tables.emplace_back(path, report::CsvTable(table));
  };
  wanted(arguments.readings, report::Table::readings);
  wanted(arguments.findings, report::Table::findings);
  wanted(arguments.sign_offs, report::Table::sign_offs);
  if (tables.empty()) {
    return not_done({Code::usage, "nothing to export was named", "",
                     "give --readings, --findings or --sign-offs with a file"});
  }
  Progress progress("read", arguments.record);
  record::VerifyOptions options;
  options.progress = [&](std::uint64_t bytes) { progress.at(bytes); };
  options.visitor = [&](const record::EntryView& entry) -> std::optional<std::string> {
    for (auto& [path, table] : tables) table.take(entry);
    return std::nullopt;
  };
  const auto report = record::verify_file(arguments.record, options);
  if (!report) return not_done(report.error());
  if (!report->holds && report->entries == 0) {
    return not_done({Code::bad_input, "this is no record that can be exported: " + report->why,
                     arguments.record, "see: walkdown verify"});
  }
  for (const auto& [path, table] : tables) {
    if (const Done kept = write_file(path, table.text()); !kept) return not_done(kept.error());
    fmt::print("{}\n", path);
  }
  if (report->holds) return Status::nothing_to_act_on;
  complain(fmt::format("The record does not hold from line {} on: {}. The tables end before it.",
                       report->first_bad.value_or(0), report->why));
  return Status::act;
}

}  // namespace

void add_export(CLI::App& app, Run& chosen) {
  auto* command = app.add_subcommand("export", "Write tables of a record for a spreadsheet (CSV)");
  auto arguments = std::make_shared<ExportArguments>();
  command->add_option("RECORD", arguments->record, "The record")->required();
  command->add_option("--readings", arguments->readings, "Every reading, to this file");
  command->add_option("--findings", arguments->findings, "Every finding that was claimed");
  command->add_option("--sign-offs", arguments->sign_offs, "Every sign-off");
  command->footer("Example: walkdown export today.record --readings readings.csv");
  command->callback([arguments, &chosen] { chosen = [arguments] { return run(*arguments); }; });
}

}  // namespace walkdown::cli
