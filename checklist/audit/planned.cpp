// SPDX-License-Identifier: Apache-2.0
#include "checklist/audit/planned.h"

#include <string_view>
#include <utility>

#include "reader/plan/columns.h"
#include "reader/plan/igniter_file.h"
#include "reader/plan/import.h"
#include "reader/plan/modules_file.h"
#include "templates/embedded.h"

namespace walkdown::audit {
namespace {

using show::Role;

constexpr std::string_view kIgniters = "igniters/generic.toml";
constexpr std::string_view kDistances = "distances/radius-70ft-per-inch.toml";
constexpr std::string_view kTester = "testers/addressed-lines.toml";

void put_default(show::Show& show, Role role, std::string_view name) {
  const auto text = templates::text(name);
  if (show.find(role) != nullptr || !text) return;
  show.put({role, std::string(name.substr(name.find('/') + 1)), std::string(*text)});
}

// Reads the file of a role; a role without a file gives `none`.
template <typename T, typename Read>
std::optional<T> part(const show::Show& show, Role role, Read read,
                      std::vector<std::string>& errors) {
  const show::File* file = show.find(role);
  if (file == nullptr) return std::nullopt;
  Result<T> result = read(file->text, file->name);
  if (!result) {
    errors.push_back(result.error().sentence());
    return std::nullopt;
  }
  return std::move(result).value();
}

template <typename T>
const T* pointer(const std::optional<T>& value) {
  return value ? &*value : nullptr;
}

void import_plan(const show::Show& show, const plan::Catalogue& catalogue,
                 const std::optional<plan::ModuleSizes>& sizes,
                 const std::optional<plan::ColumnMap>& columns, tester::Profile profile,
                 PlannedOutcome& outcome) {
  const show::File* file = show.find(Role::plan);
  if (file == nullptr) {
    outcome.errors.emplace_back("The show has no plan; add the wiring table as CSV.");
    return;
  }
  auto imported =
      plan::import_plan(file->text, file->name, catalogue, pointer(sizes), pointer(columns));
  for (const auto& problem : imported.errors) {
    outcome.errors.push_back(file->name + ", " + problem.sentence());
  }
  for (const auto& problem : imported.warnings) {
    outcome.warnings.push_back(file->name + ", " + problem.sentence());
  }
  if (imported.plan && outcome.errors.empty()) {
    outcome.planned = Planned{std::move(*imported.plan), std::move(profile)};
  }
}

}  // namespace

show::Show complete(show::Show show) {
  put_default(show, Role::igniters, kIgniters);
  put_default(show, Role::tester, kTester);
  if (show.find(Role::site) != nullptr) put_default(show, Role::distances, kDistances);
  return show;
}

PlannedOutcome import(const show::Show& given) {
  const show::Show show = complete(given);
  PlannedOutcome outcome;
  auto& errors = outcome.errors;
  auto catalogue = part<plan::Catalogue>(show, Role::igniters, plan::read_igniters, errors);
  auto profile = part<tester::Profile>(show, Role::tester, tester::read_profile, errors);
  const auto sizes = part<plan::ModuleSizes>(show, Role::modules, plan::read_modules, errors);
  const auto columns = part<plan::ColumnMap>(show, Role::columns, plan::read_columns, errors);
  if (!catalogue || !profile || !errors.empty()) return outcome;
  if (show.temp_milli_degc) catalogue->wiring.temp_c = *show.temp_milli_degc / 1000.0;
  import_plan(show, *catalogue, sizes, columns, std::move(*profile), outcome);
  return outcome;
}

}  // namespace walkdown::audit
