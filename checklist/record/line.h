// SPDX-License-Identifier: Apache-2.0
// One line of a record, without its LF. Two kinds, told by their first key:
//   {"n":0,"at":"2026-07-04T19:02:11.123Z","up_ms":81234,"kind":"open","body":{...}}
//   {"checkpoint":"<signed note>"}
// The keys stand in this order; what is inside the body is canonical (canonical.h).
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>

#include "checklist/record/entry.h"
#include "reader/result.h"

namespace walkdown::record {

inline constexpr std::size_t kLongestLine = std::size_t{1} << 20U;    // 1 MiB
inline constexpr std::size_t kLongestOpen = std::size_t{256} << 20U;  // entry 0: the whole show

// An entry as it stands in its line; the views live as long as the line.
struct EntryView {
  std::uint64_t n = 0;
  std::int64_t at_ms = 0;
  std::int64_t up_ms = 0;
  std::string_view kind;
  std::string_view body;  // canonical JSON, an object
};

struct CheckpointLine {
  std::string note;
};

using LineView = std::variant<EntryView, CheckpointLine>;

// What of an entry's body is looked at. `unread`: nothing inside the bodies of `reading` and
// `rejected`, which change no rule and are nearly all of a record; for hashing alone, where the
// root already stands for every bit of them.
enum class Bodies { checked, unread };

[[nodiscard]] constexpr bool is_plain_kind(std::string_view kind) {
  return kind == "reading" || kind == "rejected";
}

// bad_input unless the line is exactly what the functions below write. Costs about a pass over
// the bytes: no tree is built.
[[nodiscard]] Result<LineView> parse_line(std::string_view line, Bodies bodies = Bodies::checked);

// The body as a tree.
[[nodiscard]] Entry entry_of(const EntryView& view);

// 1 to 40 of a-z, 0-9, '-', beginning with a letter.
[[nodiscard]] bool is_kind(std::string_view kind);

// `body` is canonical JSON. Precondition: is_kind(kind), 0 <= at_ms < year 10000, up_ms >= 0.
void append_entry_line(const EntryView& entry, std::string& out);
// The same with every rule checked: bad_input for what a record does not hold.
[[nodiscard]] Result<std::string> entry_line(const Entry& entry);
[[nodiscard]] std::string checkpoint_line(std::string_view note);

}  // namespace walkdown::record
