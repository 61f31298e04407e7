// SPDX-License-Identifier: Apache-2.0
// Writer::resume: goes on with a record that another run, perhaps a crashed one, has left.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <set>
#include <utility>

#include "checklist/record/checker.h"
#include "checklist/record/json_text.h"
#include "checklist/record/line_source.h"
#include "checklist/record/writer_core.h"

namespace walkdown::record {

namespace {

using nlohmann::json;

// What verifying a record for a writer leaves behind.
struct Found {
  Report report;
  Rules rules;
  bool unsealed_end = false;
  std::set<std::string> told;  // torn files that the record tells of
};

Result<Found> examine(const std::string& path, const VerifyOptions& given) {
  Found found;
  VerifyOptions options = given;
  options.hash_only = false;
  options.visitor = [&](const EntryView& entry) -> std::optional<std::string> {
    if (entry.kind == "torn") {
      const json body = parse_canonical(entry.body);
      if (const auto file = body.find("file"); file != body.end() && file->is_string()) {
        found.told.insert(file->get<std::string>());
      }
    }
    return given.visitor ? given.visitor(entry) : std::nullopt;
  };
  Checker checker(options);
  const auto rest =
      read_lines(path, {[&](std::string_view line) { return checker.line(line); },
                        [&] { return checker.longest_line(); }, [&] { checker.too_long(); }});
  if (!rest) return rest.error();
  found.report = checker.finish(*rest);
  found.rules = checker.rules();
  found.unsealed_end = checker.unsealed_end();
  return found;
}

// Repairs only an unexpected end: an unfinished commit, or (after a power failure, which may leave
// the new length and zeros for what was not yet written) at most one checkpoint behind the last
// good one. Anything else was changed, and cutting it off would hide that.
bool is_torn(const std::string& path, std::uint64_t offset) {
  constexpr std::string_view kCheckpoint = "\n{\"checkpoint\":";
  std::ifstream file(path, std::ios::binary);
  file.seekg(static_cast<std::streamoff>(offset));
  const std::string tail{std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
  const std::size_t first = tail.find(kCheckpoint);
  return first == std::string::npos || tail.find(kCheckpoint, first + 1) == std::string::npos;
}

Error nothing_sealed(const std::string& path) {
  return {Code::bad_input, "this file holds no sealed entry, so nothing was acknowledged in it",
          path, "begin a new record under another name"};
}

Done may_go_on(const Found& found, const std::string& path, const SigningKey& station) {
  const Sealed& sealed = found.report.sealed;
  if (sealed.lines == 0) return nothing_sealed(path);
  if (sealed.closed) {
    return Error{Code::refused, "the record was closed", path, "begin a new record"};
  }
  const auto& stations = sealed.stations;
  if (std::find(stations.begin(), stations.end(), station.verify_key()) == stations.end()) {
    return Error{Code::refused, "the record belongs to another station: " + stations.front().name,
                 path, "go on at that station, or begin a new record"};
  }
  return done();
}

Result<Found> examine_for_writing(const std::string& path, const VerifyOptions& options) {
  auto found = examine(path, options);
  if (!found || found->report.holds || found->report.sealed.lines == 0) return found;
  if (found->unsealed_end && is_torn(path, found->report.sealed.bytes)) return found;
  return Error{Code::forged, "the record does not verify: " + found->report.why,
               path + ", line " + std::to_string(found->report.first_bad.value_or(0)),
               "keep this file as it is, and begin a new record"};
}

json torn_body(const std::string& path, const std::string& name) {
  const auto file = std::filesystem::path(path).parent_path() / name;
  std::ifstream in(file, std::ios::binary);
  const std::string bytes{std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
  return {{"bytes", bytes.size()}, {"file", name}, {"sha256", hex(sha256(bytes))}};
}

}  // namespace

Result<Writer> Writer::resume(const std::string& path, const SigningKey& station,
                              const Clock& clock, WriterOptions options) {
  auto device = open_locked(path);
  if (!device) return device.error();
  auto found = examine_for_writing(path, options.verify);
  if (!found) return found.error();
  if (Done may = may_go_on(*found, path, station); !may) return may.error();
  if (!found->report.holds) {
    if (auto cut = cut_tail(path, found->report.sealed.bytes); !cut) return cut.error();
  }
  std::vector<Draft> drafts{{"resumed"}};
  for (const std::string& name : torn_files(path)) {
    if (!found->told.contains(name)) drafts.push_back({"torn", torn_body(path, name)});
  }
  const Sealed& sealed = found->report.sealed;
  const Head head{sealed.origin, sealed.tree.size(), sealed.tree.root(), sealed.times.at_ms(),
                  sealed.times.up_ms()};
  if (options.wrap) *device = options.wrap(std::move(*device));
  auto core = std::make_unique<Core>(std::move(*device), station, clock, std::move(options),
                                     found->rules, sealed.tree, head);
  const auto ticket = core->append(drafts, true);
  if (!ticket) return ticket.error();
  if (Done kept = core->wait(ticket->end, true); !kept) return kept.error();
  return Writer(std::move(core));
}

}  // namespace walkdown::record
