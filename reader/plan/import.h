// SPDX-License-Identifier: Apache-2.0
// Reads a plan from CSV. FORMAT.md beside this file says what is taken; in short: RFC 4180 with
// the habits of spreadsheets (semicolon or tab, decimal comma with these, BOM, CRLF, line breaks in
// quotes), columns in any order, names of columns in any case.
//
//   auto imported = import_plan(bytes, "show.csv", *catalogue);
//   for (const auto& problem : imported.errors) fmt::print("{}\n", problem.sentence());
//   if (imported.plan) ...
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "reader/plan/columns.h"
#include "reader/plan/modules_file.h"
#include "reader/plan/plan.h"
#include "reader/plan/problem.h"

namespace walkdown::plan {

// Either `plan` is there and `errors` is empty, or the other way round. Every error of the file is
// listed, in the order of rows, not the first alone. Warnings never stand in the way.
struct Imported {
  std::optional<Plan> plan;
  std::vector<Problem> errors;
  std::vector<Problem> warnings;  // of lint.h; empty where there are errors
};

// `file_name` is only for sentences. `sizes` may be null: a rail is then as long as its highest
// planned pin, and a module has as many rails as its highest planned rail. `columns` may be null.
// The plan's catalogue is `catalogue` and each standard wire size that the plan uses. Time and
// memory are linear in the size of `bytes`. Never throws on content.
[[nodiscard]] Imported import_plan(std::string_view bytes, std::string_view file_name,
                                   const Catalogue& catalogue, const ModuleSizes* sizes = nullptr,
                                   const ColumnMap* columns = nullptr);

// Bounds on a layout, so that a few bytes of nonsense cannot ask for gigabytes further on.
inline constexpr std::size_t kMaxRails = 1'000'000;       // of all modules together
inline constexpr std::size_t kMaxLayoutPins = 4'000'000;  // of all rails together

}  // namespace walkdown::plan
