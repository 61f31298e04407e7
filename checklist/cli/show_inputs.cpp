// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/show_inputs.h"

#include <filesystem>
#include <utility>

#include "checklist/cli/files.h"
#include "checklist/cli/status.h"
#include "checklist/show/archive.h"
#include "templates/embedded.h"

namespace walkdown::cli {
namespace {

using show::Role;

Done put(show::Show& show, Role role, const std::string& path) {
  if (path.empty()) return done();
  auto text = read_file(path);
  if (!text) return text.error();
  show.put({role, base_name(path), std::move(text).value()});
  return done();
}

Done put_checklist(show::Show& show, const std::string& path) {
  std::error_code ignored;
  const auto text = templates::text("checklists/" + path + ".toml");
  const bool there = std::filesystem::exists(path, ignored);
  if (!path.empty() && !text && !there) {
    return Error{Code::usage, "there is no such checklist", path,
                 "name a file, or one of these: evening-show, club-show, thunder-reopening"};
  }
  if (path.empty() || there) return put(show, Role::checklist, path);
  show.put({Role::checklist, path + ".toml", std::string(*text)});
  return done();
}

Result<show::Show> begin(const std::string& path) {
  if (path.empty()) return show::Show{};
  const auto bytes = read_file(path);
  if (!bytes) return bytes.error();
  return show::unpack(*bytes, base_name(path));
}

}  // namespace

void add_show_inputs(CLI::App& command, ShowPaths& paths) {
  command.add_option("--show", paths.show, "A show file; the options below replace parts of it");
  command.add_option("--plan", paths.inputs.plan, "The wiring table (CSV)");
  command.add_option("--columns", paths.inputs.columns, "Maps other headers (TOML)");
  command.add_option("--igniters", paths.inputs.igniters, "Igniters and wire (TOML)");
  command.add_option("--tester", paths.inputs.tester, "Tester profile (TOML)");
  command.add_option("--modules", paths.inputs.modules, "Pins on each rail (TOML)");
  command.add_option("--site", paths.site, "Positions and boundaries (GeoJSON)");
  command.add_option("--checklist", paths.checklist,
                     "A file (TOML), or evening-show, club-show, thunder-reopening");
  command.add_option("--distances", paths.distances,
                     "Least distances by calibre (TOML); default: 70 ft per inch");
  add_temperature(command, paths.inputs);
}

Result<show::Show> gather_show(const ShowPaths& paths) {
  auto begun = begin(paths.show);
  if (!begun) return begun;
  show::Show show = std::move(begun).value();
  const InputPaths& inputs = paths.inputs;
  const std::pair<Role, const std::string*> parts[] = {
      {Role::plan, &inputs.plan},         {Role::columns, &inputs.columns},
      {Role::igniters, &inputs.igniters}, {Role::tester, &inputs.tester},
      {Role::modules, &inputs.modules},   {Role::site, &paths.site},
      {Role::distances, &paths.distances}};
  for (const auto& [role, path] : parts) {
    if (const Done put_in = put(show, role, *path); !put_in) return put_in.error();
  }
  if (const Done put_in = put_checklist(show, paths.checklist); !put_in) return put_in.error();
  if (const Done put_in = put_temperature(inputs, show); !put_in) return put_in.error();
  return show;
}

std::optional<desk::Prepared> prepare_aloud(const show::Show& show) {
  auto outcome = desk::prepare(show);
  for (const auto& sentence : outcome.errors) complain(sentence);
  for (const auto& sentence : outcome.warnings) complain("note: " + sentence);
  return std::move(outcome.prepared);
}

}  // namespace walkdown::cli
