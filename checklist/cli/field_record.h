// SPDX-License-Identifier: Apache-2.0
// The record that a tester is read into: the desk of the day (checklist/desk), opened with the
// files that reading needs.
#pragma once

#include <optional>
#include <string>

#include "checklist/cli/inputs.h"
#include "checklist/desk/desk.h"

namespace walkdown::cli {

class FieldRecord {
 public:
  // A new record where there is no file, else the same one continued. Errors as Writer's; refused
  // where the record is of another plan, igniters, tester or module sizes.
  static Result<FieldRecord> open(const std::string& path, const Inputs& inputs,
                                  const std::string& key_path, const record::Clock& clock);
  // The same with a whole show: site, checklist and distances too.
  static Result<FieldRecord> open(const std::string& path, const show::Show& show,
                                  const std::string& key_path, const record::Clock& clock);

  [[nodiscard]] desk::Desk& desk() { return desk_; }
  [[nodiscard]] record::Writer& writer() { return desk_.writer(); }

  using Counts = desk::Counts;
  [[nodiscard]] Counts counts() const { return desk_.counts(); }
  [[nodiscard]] match::Outcome diagnose() const { return *desk_.outcome(); }
  [[nodiscard]] tester::LineParser parser() const { return desk_.parser(); }

  // Diagnoses what is on disk and appends that as a claim. No line may be fed meanwhile.
  Result<match::Outcome> claim();

 private:
  explicit FieldRecord(desk::Desk desk) : desk_(std::move(desk)) {}

  desk::Desk desk_;
};

}  // namespace walkdown::cli
