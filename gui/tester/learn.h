// SPDX-License-Identifier: Apache-2.0
// A tester's line format, learned from a sample line in which somebody marked the parts. Pure.
//
// What is marked becomes a named group of the pattern; what stands between is taken as it is, with
// blanks of any number where there is one, and digits of any number where there are some outside
// the marks. The pattern is tried on every sample before it may be used.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "reader/result.h"
#include "reader/tester/line.h"
#include "reader/tester/profile.h"

namespace walkdown::gui {

enum class Part : std::uint8_t { module, rail, pin, value, unit, seq };
inline constexpr std::size_t kParts = 6;
[[nodiscard]] std::string_view group_name(Part part);

// Bytes first .. first + length - 1 of the line.
struct Marking {
  Part part = Part::value;
  std::size_t first = 0;
  std::size_t length = 0;
};

// The profile for lines as this one: without a checksum, or with the one it carries (two hex digits
// behind '*' or four); all else is `base`'s.
[[nodiscard]] tester::Profile profile_for(tester::Profile base, std::string_view line);

// Of the line without its checksum. Errors (bad_input): no value marked, a part marked twice, marks
// that overlap or run off the line.
[[nodiscard]] Result<std::string> pattern_of(std::string_view line, std::vector<Marking> markings);

struct Tried {
  std::string line;
  bool taken = false;
  std::string what;  // "M07/R2/P05 2.31 ohm", or why not
};

// Every sample through a parser with this pattern; the rest of the profile is `base`'s.
[[nodiscard]] Result<std::vector<Tried>> try_pattern(const tester::Profile& base,
                                                     const std::string& pattern,
                                                     const std::vector<std::string>& samples);

// The profile as TOML, to be saved and named in a show. `base` gives what the line does not say.
[[nodiscard]] std::string profile_text(const tester::Profile& base, const std::string& pattern);

}  // namespace walkdown::gui
