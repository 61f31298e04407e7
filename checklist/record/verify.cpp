// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/verify.h"

#include "checklist/record/checker.h"
#include "checklist/record/parsed_lines.h"

namespace walkdown::record {

namespace {

// `closer`: the checker keeps all text, so that it can name a line, and not only where one is.
Result<Report> verify_with(const std::string& path, const VerifyOptions& options, bool closer) {
  Checker checker(options);
  const Bodies bodies = options.hash_only && !closer ? Bodies::unread : Bodies::checked;
  const auto rest = read_parsed_lines(
      path, bodies,
      {[&](std::string_view line, const EntryView& entry, const Hash& leaf) {
         return checker.line(line, entry, closer ? nullptr : &leaf);
       },
       [&](std::string_view line, const auto& parsed) { return checker.line(line, parsed); },
       [&] { checker.too_long(); }});
  if (!rest) return rest.error();
  return checker.finish(*rest);
}

}  // namespace

// What is wrong is named by looking closer, once it is known that something is.
Result<Report> verify_file(const std::string& path, const VerifyOptions& options) {
  auto first = verify_with(path, options, false);
  if (!options.hash_only || !first || first->holds) return first;
  VerifyOptions again = options;
  again.progress = nullptr;
  auto named = verify_with(path, again, true);
  return named && !named->holds ? named : first;
}

Report verify_bytes(std::string_view bytes, const VerifyOptions& options) {
  Checker checker(options);
  while (true) {
    const std::size_t end = bytes.find('\n');
    if (end == std::string_view::npos) return checker.finish(bytes);
    if (!checker.line(bytes.substr(0, end))) return checker.finish({});
    bytes.remove_prefix(end + 1);
  }
}

Result<std::vector<VerifyKey>> parse_known_keys(std::string_view text) {
  std::vector<VerifyKey> keys;
  for (std::size_t row = 1; !text.empty(); ++row) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    std::string_view line = text.substr(0, end);
    text.remove_prefix(std::min(end + 1, text.size()));
    while (!line.empty() && (line.back() == '\r' || line.back() == ' ')) line.remove_suffix(1);
    if (line.empty() || line.front() == '#') continue;
    auto key = parse_vkey(line);
    if (!key) {
      Error error = key.error();
      error.where = "row " + std::to_string(row) + ": " + error.where;
      return error;
    }
    keys.push_back(std::move(*key));
  }
  return keys;
}

}  // namespace walkdown::record
