// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/verify_extract.h"

#include <fmt/format.h>

#include "checklist/cli/match_json.h"
#include "checklist/record/extract_check.h"

namespace walkdown::cli {
namespace {

using record::ExtractReport;

// The members that a record's check has come first, and mean the same.
void print_json(const ExtractReport& report) {
  fmt::print(R"({{"holds":{},"entries":{},"mark":{},"first_bad":{},"why":{},"extract":true,)"
             R"("withheld":{},"record_entries":{},"unchecked_sign_offs":{},"unknown_keys":{},)"
             R"("remarks":{}}})"
             "\n",
             report.holds, report.entries, report.mark.empty() ? "null" : json_string(report.mark),
             report.first_bad ? std::to_string(*report.first_bad) : "null",
             report.holds ? "null" : json_string(report.why), report.withheld,
             report.record_entries, report.unchecked_sign_offs, json_list(report.unknown_keys),
             json_list(report.remarks));
}

void print_text(const std::string& path, const ExtractReport& report) {
  if (report.holds) {
    fmt::print("{} holds: {} entries and {} withheld ones, out of {} of the record {}, mark {}\n",
               path, report.entries, report.withheld, report.record_entries, report.origin,
               report.mark);
  } else {
    fmt::print("{} does not hold, first at line {}: {}\n", path, report.first_bad.value_or(0),
               report.why);
  }
  for (const auto& remark : report.remarks) fmt::print("note: {}\n", remark);
  for (const auto& key : report.unknown_keys) fmt::print("unknown key: {}\n", key);
}

}  // namespace

Status verify_extract(const std::string& path, const record::VerifyOptions& options, bool json) {
  const auto report = record::verify_extract_file(path, options);
  if (!report) return not_done(report.error());
  if (json) {
    print_json(*report);
  } else {
    print_text(path, *report);
  }
  return report->holds ? Status::nothing_to_act_on : Status::act;
}

}  // namespace walkdown::cli
