// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/verify_record.h"

#include <fmt/format.h>

#include <utility>

#include "checklist/check/derive.h"
#include "checklist/cli/files.h"
#include "checklist/cli/progress.h"

namespace walkdown::cli {

Result<std::vector<record::VerifyKey>> known_keys(const std::string& path) {
  const auto text = read_file(path);
  if (!text) return text.error();
  auto keys = record::parse_known_keys(*text);
  if (keys) return keys;
  Error error = keys.error();
  error.where = base_name(path) + ", " + error.where;
  return error;
}

Result<record::Report> verify_record(const std::string& path, record::VerifyOptions options) {
  Progress progress("checked", path);
  options.progress = [&](std::uint64_t bytes) { progress.at(bytes); };
  return check::check_file(path, std::move(options));
}

std::string verify_text(const std::string& path, const record::Report& report) {
  std::string out;
  if (report.holds) {
    out += fmt::format("{} holds: {} entries, mark {}{}\n", path, report.entries, report.mark,
                       report.closed ? ", closed" : ", not closed");
  } else {
    out += fmt::format("{} does not hold{}: {}\n", path,
                       report.first_bad ? fmt::format(", first at line {}", *report.first_bad) : "",
                       report.why);
    if (report.entries > 0) {
      out += fmt::format("{} entries before that hold, mark {}\n", report.entries, report.mark);
    }
  }
  for (const auto& remark : report.remarks) out += fmt::format("note: {}\n", remark);
  for (const auto& key : report.unknown_keys) out += fmt::format("unknown key: {}\n", key);
  return out;
}

}  // namespace walkdown::cli
