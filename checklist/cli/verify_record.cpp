// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/verify_record.h"

#include <fmt/format.h>

#include <optional>
#include <utility>

#include "checklist/audit/field.h"

namespace walkdown::cli {
namespace {

record::Visitor deriving(std::optional<audit::Field>& field) {
  return [&field](const record::EntryView& entry) -> std::optional<std::string> {
    if (entry.n != 0) return field->take(entry);
    auto opened = audit::Field::open(record::entry_of(entry).body);
    if (!opened) return opened.error().sentence();
    field.emplace(std::move(opened).value());
    return std::nullopt;
  };
}

}  // namespace

Result<record::Report> verify_record(const std::string& path, record::VerifyOptions options) {
  std::optional<audit::Field> field;
  options.visitor = deriving(field);
  return record::verify_file(path, options);
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
