// SPDX-License-Identifier: Apache-2.0
// What a record claims, derived again from the readings and sign-offs in it:
// - a reading: its value from its own raw line;
// - a claim: every verdict count and finding from the readings before it;
// - an entry of the day: whether the rules took it where it stands. What somebody signed must be
//   this entry and no other; what has to be signed must be; a release, or a second signature under
//   one, must have found the gate open.
// An entry that broke another rule changes nothing, and is remarked: two people may well have acted
// in the same moment.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "checklist/desk/folded.h"
#include "checklist/record/verify.h"
#include "reader/result.h"

namespace walkdown::check {

class Deriver {
 public:
  // The next entry, in order. A sentence where it does not hold.
  std::optional<std::string> take(const record::EntryView& entry);

  // Entries that broke a rule and changed nothing: how many, and the first kMostRemarks in words.
  static constexpr std::size_t kMostRemarks = 20;
  [[nodiscard]] std::uint64_t ignored() const { return ignored_; }
  [[nodiscard]] const std::vector<std::string>& remarks() const { return remarks_; }
  [[nodiscard]] const desk::Folded& folded() const { return folded_; }

 private:
  std::optional<std::string> judge_ignored(const record::EntryView& view);

  desk::Folded folded_;
  std::set<std::uint64_t> releases_;  // numbers of `release` entries
  std::uint64_t ignored_ = 0;
  std::vector<std::string> remarks_;
};

// verify_file() with all of the above; `options.visitor` is set here. Remarks of the deriver stand
// in the report. Errors: io.
[[nodiscard]] Result<record::Report> check_file(const std::string& path,
                                                record::VerifyOptions options);

}  // namespace walkdown::check
