// SPDX-License-Identifier: Apache-2.0
// Checks an extract from its bytes alone: that its checkpoint is signed by the station it names,
// that each entry, or the hash of a withheld one, stands in that record where it says, and that
// each sign-off in it is signed, where the key is in the extract (an `enrol` entry) or among the
// known ones. Whether what the entries claim follows from the rest of the record, only the record
// can show.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/record/extract.h"
#include "checklist/record/signoff.h"
#include "checklist/record/verify.h"
#include "reader/result.h"

namespace walkdown::record {

struct ExtractReport {
  bool holds = false;
  std::uint64_t entries = 0;   // given in full, and holding
  std::uint64_t withheld = 0;  // given as hashes, and holding
  std::uint64_t record_entries = 0;
  std::string origin, mark;                // of the record, at the extract's checkpoint
  std::optional<std::uint64_t> first_bad;  // 1-based line of the file
  std::string why;
  std::uint64_t unchecked_sign_offs = 0;  // whose key is neither in the extract nor known
  std::vector<std::string> unknown_keys;  // as in Report
  std::vector<std::string> remarks;
};

class ExtractChecker {
 public:
  // Of the options `known` and `expected_mark` are used.
  explicit ExtractChecker(const VerifyOptions& options) : options_(options) {}

  // One line without its LF. False once something does not hold.
  bool line(std::string_view line);
  void too_long();
  [[nodiscard]] static std::size_t longest_line() { return kLongestOpen; }
  // What came behind the last LF. Ends the check.
  ExtractReport finish(std::string_view rest);

 private:
  using Why = std::optional<std::string>;
  Why head(std::string_view line);
  Why proof(std::string_view line);
  Why withheld(std::string_view line);
  Why entry(std::string_view line);
  [[nodiscard]] Why opening(const EntryView& view) const;
  Why place(std::uint64_t n, const Hash& leaf);
  Why body(const EntryView& view);
  Why sign_off(const EntryView& view, const std::string& note);
  Why signed_by_known(const Note& note);
  void check_mark();
  void name_keys();

  const VerifyOptions& options_;
  ExtractReport report_;
  Checkpoint checkpoint_;
  VerifyKey station_;
  std::vector<Person> people_;     // of the enrolments in the extract
  std::optional<ProofLine> path_;  // of the entry to come
  std::optional<std::uint64_t> last_n_;
  std::uint64_t lines_ = 0;
};

// io where the file cannot be read. An extract that does not hold is a report, not an error.
[[nodiscard]] Result<ExtractReport> verify_extract_file(const std::string& path,
                                                        const VerifyOptions& options = {});
[[nodiscard]] ExtractReport verify_extract_bytes(std::string_view bytes,
                                                 const VerifyOptions& options = {});

// Whether the file begins as an extract does. io where it cannot be read.
[[nodiscard]] Result<bool> is_extract(const std::string& path);

}  // namespace walkdown::record
