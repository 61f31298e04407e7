// SPDX-License-Identifier: Apache-2.0
// verify(), line by line: what the file loop, the writer's resume and the tests feed.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "checklist/record/checkpoint.h"
#include "checklist/record/commit.h"
#include "checklist/record/rules.h"
#include "checklist/record/verify.h"

namespace walkdown::record {

class Checker {
 public:
  explicit Checker(const VerifyOptions& options) : options_(options), rules_(!options.hash_only) {}

  // One line without its LF, which was there. False once something does not hold.
  bool line(std::string_view line) { return this->line(line, parse_line(line)); }
  // The same with what parse_line() said of it.
  bool line(std::string_view line, const Result<LineView>& parsed);
  // An entry, and its leaf where that is known: of all entries, or of none.
  bool line(std::string_view line, const EntryView& view, const Hash* leaf);
  // A line that is still going on after so many bytes cannot hold.
  [[nodiscard]] std::size_t longest_line() const {
    return lines_ == 0 ? kLongestOpen : kLongestLine;
  }
  void too_long();
  // What came behind the last LF. Ends the check.
  Report finish(std::string_view rest);

  // Whether what fails is no more than an end that was never sealed, or a line with zero bytes as a
  // power failure leaves them.
  [[nodiscard]] bool unsealed_end() const { return unsealed_end_; }
  [[nodiscard]] const Rules& rules() const { return rules_; }
  [[nodiscard]] const Heads& heads() const { return heads_; }

 private:
  bool entry(std::string_view line, const EntryView& view, const Hash* leaf);
  void hold(std::string_view line, const EntryView& view, const Hash* leaf);
  bool count(std::string_view line);
  bool checkpoint(const std::string& note_text);
  bool signature(const Note& note);
  bool root(const Checkpoint& checkpoint, const Tree& grown);
  bool seal(const Checkpoint& checkpoint, Tree grown);
  bool entries_hold();
  bool fail(std::uint64_t number, std::string why);
  void check_end(std::string_view rest);
  void check_last_signature();
  void check_mark();
  void name_unknown_keys();
  void tell_stamps();

  const VerifyOptions& options_;
  Rules rules_;
  Heads heads_;
  Commit commit_;
  Report report_;
  std::vector<VerifyKey> stations_;  // also before the first checkpoint
  std::optional<Note> unchecked_;    // hash_only: the last checkpoint
  std::uint64_t unchecked_line_ = 0;
  // The state whose mark was written down: of the whole, or, on a permit that was signed before the
  // show, of an earlier moment.
  std::optional<Head> marked_;
  std::uint64_t lines_ = 0;
  std::uint64_t bytes_ = 0;
  bool unsealed_end_ = false;
};

}  // namespace walkdown::record
