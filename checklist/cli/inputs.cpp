// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/inputs.h"

#include <cmath>
#include <utility>

#include "checklist/cli/files.h"
#include "checklist/cli/status.h"

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

}  // namespace

void add_inputs(CLI::App& command, InputPaths& paths, PlanAs plan_as) {
  const char* plan_help = "The wiring table (CSV)";
  if (plan_as == PlanAs::positional) {
    command.add_option("PLAN", paths.plan, plan_help)->required();
  } else {
    command.add_option("--plan", paths.plan, plan_help)->required();
  }
  command.add_option("--columns", paths.columns, "Maps other headers onto the plan's (TOML)");
  command.add_option("--igniters", paths.igniters, "Igniters and wire (TOML); default: generic");
  command.add_option("--tester", paths.tester, "Tester profile (TOML); default: addressed lines");
  command.add_option("--modules", paths.modules, "Pins on each rail (TOML); default: as planned");
}

void add_temperature(CLI::App& command, InputPaths& paths) {
  command.add_option("--temp", paths.temp_degc, "Temperature of the wire, degrees Celsius");
}

Done put_temperature(const InputPaths& paths, show::Show& show) {
  if (!paths.temp_degc) return done();
  if (!(*paths.temp_degc >= -60 && *paths.temp_degc <= 80)) {
    return Error{Code::usage, "--temp is no temperature of wire in a field", "",
                 "give degrees Celsius from -60 to 80"};
  }
  show.temp_milli_degc = static_cast<std::int32_t>(std::lround(*paths.temp_degc * 1000));
  return done();
}

Result<show::Show> gather(const InputPaths& paths) {
  show::Show show;
  const std::pair<Role, const std::string*> parts[] = {{Role::plan, &paths.plan},
                                                       {Role::columns, &paths.columns},
                                                       {Role::igniters, &paths.igniters},
                                                       {Role::tester, &paths.tester},
                                                       {Role::modules, &paths.modules}};
  for (const auto& [role, path] : parts) {
    if (const auto put_in = put(show, role, *path); !put_in) return put_in.error();
  }
  if (const auto put_in = put_temperature(paths, show); !put_in) return put_in.error();
  return audit::complete(std::move(show));
}

std::optional<Inputs> load_inputs(const InputPaths& paths) {
  auto show = gather(paths);
  if (!show) {
    complain(show.error().sentence());
    return std::nullopt;
  }
  auto outcome = audit::import(*show);
  for (const auto& sentence : outcome.errors) complain(sentence);
  for (const auto& sentence : outcome.warnings) complain("note: " + sentence);
  if (!outcome.planned) return std::nullopt;
  return Inputs{std::move(show).value(), std::move(*outcome.planned)};
}

}  // namespace walkdown::cli
