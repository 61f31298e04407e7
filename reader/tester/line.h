// SPDX-License-Identifier: Apache-2.0
// One line of a tester -> a reading, a bare value, or the reason why not. Pure: the same line gives
// the same answer for ever, so a record's raw lines can be judged again years later.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "reader/tester/framer.h"
#include "reader/tester/profile.h"
#include "reader/tester/reading.h"

namespace re2 {
class RE2;
}

namespace walkdown::tester {

// A value without an address; the walk (walk_mode.h) knows which pin it belongs to.
struct BareValue {
  bool over = false;
  std::int64_t micro_ohm = 0;  // exact, as in Reading
  std::optional<std::uint64_t> seq;
};

// `why` is one sentence for the person, without the line itself.
struct Rejected {
  std::string why;
};

using Parsed = std::variant<Reading, BareValue, Rejected>;

// Immutable once made: one may be shared by any number of threads. Cheap to copy.
//
// In order: blanks, CR, NUL and a byte order mark are taken off the ends; the checksum is verified
// and removed; the pattern must match all of what is left; module, rail and pin must be 1..9999;
// the value is an over token, or a decimal number (one decimal point or comma, no thousands
// separator), where |x| >= 9.8E37 is over and 9.91E37 is "not a number" (SCPI-99), scaled by its
// unit (mOhm, kohm, MOhm, ohm, either code point of the ohm sign; no unit is ohm) to micro-ohm.
// Digits below one micro-ohm are rounded, half away from zero.
class LineParser {
 public:
  // Error (bad_input): the pattern does not compile or has no group `value`.
  [[nodiscard]] static Result<LineParser> make(const Profile& profile);

  // `raw` is a line without its LF. Any bytes at all are fine.
  [[nodiscard]] Parsed parse(std::string_view raw) const;

  // The same, and rejects a line that the framer says is not whole.
  [[nodiscard]] Parsed parse(const Line& line) const;

  // False where the pattern has none of module, rail and pin: the program then walks the plan.
  // A part that the pattern leaves out, while another is there, is 1.
  [[nodiscard]] bool addressed() const;

  // Does the line end as one with a checksum does, right or wrong? For ChecksumHabit.
  [[nodiscard]] static bool carries_check(std::string_view raw);

 private:
  struct Groups {
    int module = 0, rail = 0, pin = 0, value = 0, unit = 0, seq = 0;
  };
  LineParser() = default;

  std::shared_ptr<const re2::RE2> pattern_;
  Groups groups_;
  int captures_ = 0;
  Check check_ = Check::none;
  bool check_optional_ = false;
  std::vector<std::string> over_;
};

// A stateful rule for profiles whose checksum is optional: where most lines of a stream carry one,
// a line that lacks it was damaged, or is not from this tester. Feed it every line of the stream
// (a file: all lines first, so that the order does not matter), then ask.
class ChecksumHabit {
 public:
  void see(std::string_view raw) {
    ++lines_;
    carrying_ += LineParser::carries_check(raw) ? 1 : 0;
  }
  // True from 8 lines on, when more than half of them carried a checksum.
  [[nodiscard]] bool expects_check() const { return lines_ >= 8 && 2 * carrying_ > lines_; }
  // The rejection, where the habit says so.
  [[nodiscard]] std::optional<Rejected> judge(std::string_view raw) const;

 private:
  std::uint64_t lines_ = 0;
  std::uint64_t carrying_ = 0;
};

}  // namespace walkdown::tester
