// SPDX-License-Identifier: Apache-2.0
// A record that is being written, and the field as that record tells it: what was acknowledged, and
// nothing else, is in the field.
#pragma once

#include <cstdint>
#include <memory>
#include <mutex>
#include <optional>
#include <string>

#include "checklist/audit/field.h"
#include "checklist/cli/inputs.h"
#include "checklist/record/writer.h"

namespace walkdown::cli {

class FieldRecord {
 public:
  // A new record where there is no file, else the same one continued. Errors as Writer's; refused
  // where the record is of another plan, igniters, tester or module sizes.
  static Result<FieldRecord> open(const std::string& path, const Inputs& inputs,
                                  const std::string& key_path, const record::Clock& clock);

  [[nodiscard]] record::Writer& writer() { return *writer_; }

  struct Counts {
    std::uint64_t entries = 0;
    std::uint64_t readings = 0;
    std::uint64_t rejected = 0;
    std::string last;  // the last reading, for a person
  };
  [[nodiscard]] Counts counts() const;
  [[nodiscard]] match::Outcome diagnose() const;
  [[nodiscard]] tester::LineParser parser() const;

  // Diagnoses what is on disk and appends that as a claim. No line may be fed meanwhile.
  Result<match::Outcome> claim();

 private:
  struct Shared {
    mutable std::mutex mutex;
    std::optional<audit::Field> field;
    Counts counts;
    std::optional<std::string> disagrees;  // an entry that the field could not take

    std::optional<std::string> take(const record::EntryView& entry);
  };
  FieldRecord() = default;
  static Done same_show(const nlohmann::json& opening, const show::Show& show);

  std::shared_ptr<Shared> shared_;
  std::optional<record::Writer> writer_;
};

}  // namespace walkdown::cli
