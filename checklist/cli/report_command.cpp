// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <memory>

#include "checklist/cli/commands.h"
#include "checklist/cli/files.h"
#include "checklist/cli/progress.h"
#include "checklist/cli/verify_record.h"
#include "checklist/report/build.h"
#include "checklist/report/html.h"

namespace walkdown::cli {
namespace {

struct ReportArguments {
  std::string record;
  std::string out;
  std::string keys;
};

Status run(const ReportArguments& arguments) {
  record::VerifyOptions options;
  if (!arguments.keys.empty()) {
    auto keys = known_keys(arguments.keys);
    if (!keys) return not_done(keys.error());
    options.known = std::move(keys).value();
  }
  const auto progress = std::make_shared<Progress>("read", arguments.record);
  options.progress = [progress](std::uint64_t bytes) { progress->at(bytes); };
  const auto model = report::build(arguments.record, std::move(options));
  if (!model) return not_done(model.error());
  if (const Done kept = write_file(arguments.out, report::html(*model)); !kept) {
    return not_done(kept.error());
  }
  fmt::print("{}: the report of {}, mark {}\n", arguments.out, arguments.record, model->check.mark);
  if (!model->check.holds) fmt::print("The record does not hold; the report says so first.\n");
  return model->check.holds ? Status::nothing_to_act_on : Status::act;
}

}  // namespace

void add_report(CLI::App& app, Run& chosen) {
  auto* command = app.add_subcommand("report", "Make the report of a record, as one HTML file");
  auto arguments = std::make_shared<ReportArguments>();
  command->add_option("RECORD", arguments->record, "The record")->required();
  command->add_option("-o,--output", arguments->out, "The HTML file to write")->required();
  command->add_option("--keys", arguments->keys, "Public keys that you trust, one vkey a line");
  command->footer("Example: walkdown report today.record -o today.html");
  command->callback([arguments, &chosen] { chosen = [arguments] { return run(*arguments); }; });
}

}  // namespace walkdown::cli
