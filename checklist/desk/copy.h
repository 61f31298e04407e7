// SPDX-License-Identifier: Apache-2.0
// A record that is only looked at: by the report, by a second reader, by `walkdown day status`.
// Verified while it is folded; nothing is written, and nobody else is kept from writing.
#pragma once

#include <memory>
#include <string>

#include "checklist/desk/folded.h"
#include "checklist/record/verify.h"
#include "reader/result.h"

namespace walkdown::desk {

class Copy {
 public:
  // io where the file cannot be read; bad_input where not even its opening holds, so that there is
  // nothing to show. A record that does not hold further on is a Copy: see report(). The options'
  // visitor, where there is one, sees each entry once it is folded.
  static Result<Copy> open(const std::string& path, record::VerifyOptions options = {});

  // Up to the last good checkpoint; `holds` is also false where an entry is not borne out by those
  // before it.
  [[nodiscard]] const record::Report& report() const { return report_; }
  [[nodiscard]] const Folded& folded() const { return *folded_; }

  // The day as it was at the last entry.
  [[nodiscard]] day::State state() const { return folded_->day().at(folded_->last()); }
  // The day now, where `now` is of the same run of the same machine; else as at the last entry.
  [[nodiscard]] day::State state(day::Now now) const;
  [[nodiscard]] day::Now moment(day::Now now) const;

 private:
  Copy() = default;

  std::unique_ptr<Folded> folded_;
  record::Report report_;
};

}  // namespace walkdown::desk
