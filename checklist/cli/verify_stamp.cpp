// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/verify_stamp.h"

#include <fmt/format.h>

#include "checklist/check/stamp_beside.h"
#include "checklist/cli/files.h"
#include "checklist/cli/match_json.h"
#include "checklist/record/timestamp.h"

namespace walkdown::cli {

Result<std::optional<StampBeside>> stamp_beside(const std::string& record, const std::string& file,
                                                const std::string& authorities) {
  if (file.empty()) return std::optional<StampBeside>();
  const auto answer = read_file(file);
  if (!answer) return answer.error();
  auto found = check::stamp_beside(record, {answer->begin(), answer->end()}, authorities);
  if (found) return std::optional(StampBeside{std::move(*found), ""});
  Error error = found.error();
  if (error.code == Code::forged) return std::optional(StampBeside{std::nullopt, error.what});
  if (error.where.empty()) error.where = file;
  return error;
}

std::string stamp_text(const std::string& file, const StampBeside& beside) {
  if (!beside.found) return fmt::format("{} does not hold: {}\n", file, beside.why);
  const auto& found = *beside.found;
  return fmt::format("{} holds: {} signed that the first {} entries stood at {}{}\n", file,
                     found.authority, found.entries, record::stamp_time(found.at_ms),
                     found.vouched ? ""
                                   : "; its certificate leads to no authority that you gave "
                                     "(--authorities), so it shows nothing yet");
}

std::string stamps_json(const std::vector<record::StampFound>& stamps) {
  std::string list;
  for (const auto& each : stamps) {
    list += fmt::format(R"({}{{"entry":{},"entries":{},"at":"{}","authority":{},"vouched":{}}})",
                        list.empty() ? "" : ",", each.n == 0 ? "null" : std::to_string(each.n),
                        each.entries, record::stamp_time(each.at_ms), json_string(each.authority),
                        each.vouched);
  }
  return "[" + list + "]";
}

}  // namespace walkdown::cli
