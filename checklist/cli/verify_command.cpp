// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <memory>
#include <optional>

#include "checklist/audit/field.h"
#include "checklist/cli/commands.h"
#include "checklist/cli/files.h"
#include "checklist/cli/match_json.h"
#include "checklist/record/verify.h"

namespace walkdown::cli {
namespace {

struct VerifyArguments {
  std::string record;
  std::string keys;
  std::string mark;
  bool json = false;
  bool hash_only = false;
};

std::string or_null(bool there, const std::string& json) { return there ? json : "null"; }

std::string list(const std::vector<std::string>& texts) {
  std::string out;
  for (const auto& text : texts) out += (out.empty() ? "" : ",") + json_string(text);
  return "[" + out + "]";
}

void print_json(const record::Report& report) {
  fmt::print(R"({{"holds":{},"entries":{},"mark":{},"first_bad":{},"why":{},"closed":{},)"
             R"("unknown_keys":{},"remarks":{}}})"
             "\n",
             report.holds, report.entries, or_null(!report.mark.empty(), json_string(report.mark)),
             or_null(report.first_bad.has_value(), std::to_string(report.first_bad.value_or(0))),
             or_null(!report.holds, json_string(report.why)), report.closed,
             list(report.unknown_keys), list(report.remarks));
}

void print_text(const std::string& path, const record::Report& report) {
  if (report.holds) {
    fmt::print("{} holds: {} entries, mark {}{}\n", path, report.entries, report.mark,
               report.closed ? ", closed" : ", not closed");
  } else {
    fmt::print("{} does not hold{}: {}\n", path,
               report.first_bad ? fmt::format(", first at line {}", *report.first_bad) : "",
               report.why);
    if (report.entries > 0) {
      fmt::print("{} entries before that hold, mark {}\n", report.entries, report.mark);
    }
  }
  for (const auto& remark : report.remarks) fmt::print("note: {}\n", remark);
  for (const auto& key : report.unknown_keys) fmt::print("unknown key: {}\n", key);
}

// Derives the field again along the way.
record::Visitor deriving(std::optional<audit::Field>& field) {
  return [&field](const record::EntryView& entry) -> std::optional<std::string> {
    if (entry.n != 0) return field->take(entry);
    auto opened = audit::Field::open(record::entry_of(entry).body);
    if (!opened) return opened.error().sentence();
    field.emplace(std::move(opened).value());
    return std::nullopt;
  };
}

Status run(const VerifyArguments& arguments) {
  record::VerifyOptions options;
  options.hash_only = arguments.hash_only;
  options.expected_mark = arguments.mark;
  if (!arguments.keys.empty()) {
    const auto text = read_file(arguments.keys);
    if (!text) return not_done(text.error());
    auto keys = record::parse_known_keys(*text);
    if (!keys) return not_done(keys.error());
    options.known = std::move(keys).value();
  }
  std::optional<audit::Field> field;
  options.visitor = deriving(field);
  const auto report = record::verify_file(arguments.record, options);
  if (!report) return not_done(report.error());
  if (arguments.json) {
    print_json(*report);
  } else {
    print_text(arguments.record, *report);
  }
  return report->holds ? Status::nothing_to_act_on : Status::act;
}

}  // namespace

void add_verify(CLI::App& app, Run& chosen) {
  auto* command = app.add_subcommand("verify", "Check a record, and derive again what it claims");
  auto arguments = std::make_shared<VerifyArguments>();
  command->add_option("RECORD", arguments->record, "The record")->required();
  command->add_option("--keys", arguments->keys, "Public keys that you trust, one vkey a line");
  command->add_option("--mark", arguments->mark, "The mark that was written on paper");
  command->add_flag("--hash-only", arguments->hash_only, "Hashes and the last signature only");
  command->add_flag("--json", arguments->json, "One JSON object instead of text");
  command->footer("Example: walkdown verify today.record --keys known-keys.txt");
  command->callback([arguments, &chosen] { chosen = [arguments] { return run(*arguments); }; });
}

}  // namespace walkdown::cli
