// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include <memory>
#include <optional>
#include <utility>

#include "checklist/check/fork.h"
#include "checklist/cli/commands.h"
#include "checklist/cli/files.h"
#include "checklist/cli/match_json.h"
#include "checklist/cli/verify_extract.h"
#include "checklist/cli/verify_record.h"
#include "checklist/cli/verify_stamp.h"
#include "checklist/record/extract_check.h"
#include "checklist/record/timestamp.h"

namespace walkdown::cli {
namespace {

struct VerifyArguments {
  std::string record;
  std::string keys;
  std::string mark;
  std::string against;
  std::string authorities;
  std::string time_stamp;
  bool json = false;
  bool hash_only = false;
};

std::string or_null(bool there, const std::string& json) { return there ? json : "null"; }

// Members beyond the first five are walkdown's own; readers must pass over those they do not know.
void print_json(const record::Report& report, const std::optional<StampBeside>& beside,
                const std::optional<check::Fork>& fork, bool other_holds) {
  const std::string stamp = beside && !beside->found
                                ? fmt::format(R"(,"time_stamp_why":{})", json_string(beside->why))
                                : "";
  const std::string against =
      fork ? fmt::format(R"(,"against":{{"holds":{},"differ":{},"entries":{},"line":{},"say":{}}})",
                         other_holds, fork->differ(), fork->entries, fork->line,
                         json_string(fork->sentence()))
           : "";
  fmt::print(R"({{"holds":{},"entries":{},"mark":{},"first_bad":{},"why":{},"closed":{},)"
             R"("unknown_keys":{},"remarks":{},"time_stamps":{}{}{}}})"
             "\n",
             report.holds, report.entries, or_null(!report.mark.empty(), json_string(report.mark)),
             or_null(report.first_bad.has_value(), std::to_string(report.first_bad.value_or(0))),
             or_null(!report.holds, json_string(report.why)), report.closed,
             json_list(report.unknown_keys), json_list(report.remarks), stamps_json(report.stamps),
             stamp, against);
}

Status run(const VerifyArguments& arguments) {
  record::VerifyOptions options;
  options.hash_only = arguments.hash_only;
  options.expected_mark = arguments.mark;
  if (!arguments.keys.empty()) {
    auto keys = known_keys(arguments.keys);
    if (!keys) return not_done(keys.error());
    options.known = std::move(keys).value();
  }
  if (!arguments.authorities.empty()) {
    const auto pem = read_file(arguments.authorities);
    if (!pem) return not_done(pem.error());
    if (const auto count = record::count_certificates(*pem); !count) {
      Error error = count.error();
      error.where = arguments.authorities;
      return not_done(error);
    }
    options.authorities = *pem;
  }
  const auto extract = record::is_extract(arguments.record);
  if (!extract) return not_done(extract.error());
  if (*extract && (arguments.hash_only || !arguments.against.empty() ||
                   !arguments.time_stamp.empty() || !arguments.authorities.empty())) {
    return not_done({Code::usage, "this is an extract, and no whole record", arguments.record,
                     "leave out --hash-only, --against, --time-stamp and --authorities"});
  }
  if (*extract) return verify_extract(arguments.record, options, arguments.json);
  record::VerifyOptions for_other;
  for_other.hash_only = options.hash_only;
  for_other.known = options.known;
  for_other.authorities = options.authorities;
  const auto beside = stamp_beside(arguments.record, arguments.time_stamp, options.authorities);
  if (!beside) return not_done(beside.error());
  auto report = verify_record(arguments.record, std::move(options));
  if (!report) return not_done(report.error());
  if (*beside && (*beside)->found) report->stamps.push_back(*(*beside)->found);
  std::optional<check::Fork> fork;
  std::optional<Result<record::Report>> other;
  if (!arguments.against.empty()) {
    const auto compared = check::compare(arguments.record, arguments.against);
    if (!compared) return not_done(compared.error());
    fork = *compared;
    // Two files can agree, or part, and one of them be a forgery: both are checked.
    other = verify_record(arguments.against, std::move(for_other));
    if (!*other) return not_done(other->error());
  }
  if (arguments.json) {
    print_json(*report, *beside, fork, !other || (*other)->holds);
  } else {
    fmt::print("{}", verify_text(arguments.record, *report));
    if (*beside) fmt::print("{}", stamp_text(arguments.time_stamp, **beside));
    if (fork) fmt::print("{}{}\n", verify_text(arguments.against, **other), fork->sentence());
  }
  const bool other_holds = !other || (*other)->holds;
  const bool stamp_holds = !*beside || (*beside)->found;
  return report->holds && other_holds && stamp_holds && !(fork && fork->differ())
             ? Status::nothing_to_act_on
             : Status::act;
}

}  // namespace

void add_verify(CLI::App& app, Run& chosen) {
  auto* command = app.add_subcommand(
      "verify", "Check a record, and derive again what it claims; or check an extract");
  auto arguments = std::make_shared<VerifyArguments>();
  command->add_option("RECORD", arguments->record, "The record, or an extract of one")->required();
  command->add_option("--keys", arguments->keys, "Public keys that you trust, one vkey a line");
  command->add_option(
      "--mark", arguments->mark,
      "The mark that was written on paper: of the whole record, or of an earlier moment");
  command->add_option("--against", arguments->against,
                      "Another file of the same record: where do the two part?");
  command->add_option("--authorities", arguments->authorities,
                      "Certificates (PEM) of time-stamp authorities that you trust");
  command->add_option("--time-stamp", arguments->time_stamp,
                      "An authority's answer (.tsr) that is kept beside the record");
  command->add_flag("--hash-only", arguments->hash_only, "Hashes and the last signature only");
  command->add_flag("--json", arguments->json, "One JSON object instead of text");
  command->footer(
      "Examples:\n"
      "  walkdown verify today.record --keys known-keys.txt\n"
      "  walkdown verify today.record --mark \"1a2b 3c4d 5e6f 7081\"");
  command->callback([arguments, &chosen] { chosen = [arguments] { return run(*arguments); }; });
}

}  // namespace walkdown::cli
