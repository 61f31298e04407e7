// SPDX-License-Identifier: Apache-2.0
// How a hold reaches a record that another program has open: one writer at a time, but a hold is
// for anyone and at once. Whoever calls it lays a file beside the record, <record>.hold; the desk
// that has the record open enters it as a hold, and takes the file away once the entry is on the
// medium. The file is no state of the day: it is nothing until it is an entry.
//
// The file: {"request":"<32 hex digits>","by":"...","reason":"..."}, put in place by renaming, at
// most kMostCall bytes. Whatever else a plain file of this name has in it, also nothing, is a hold
// without name and reason: `touch today.record.hold` on a shared folder calls one. One call lies
// there at a time; a caller whose file was replaced before it was entered lays it there again.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>

#include "reader/result.h"

namespace walkdown::desk {

inline constexpr std::size_t kMostCall = 4'096;

struct HoldCall {
  std::string request;  // by which the caller finds the entry; empty: of a file by hand
  std::string by;       // may be empty
  std::string reason;   // may be empty

  friend bool operator==(const HoldCall&, const HoldCall&) = default;
};

// With a request of its own. bad_input: name and reason are too long, or no UTF-8.
[[nodiscard]] Result<HoldCall> new_hold_call(const std::string& by, const std::string& reason);

[[nodiscard]] std::string hold_box_path(const std::string& record_path);

// Lays it beside the record, over one that lies there. io: the folder cannot be written.
Done put_hold_call(const std::string& record_path, const HoldCall& call);
// What lies there. Nothing where there is no plain file of this name.
[[nodiscard]] std::optional<HoldCall> lying_hold_call(const std::string& record_path);
// Whether the file is gone afterwards.
bool take_hold_call_away(const std::string& record_path);

// The entry that this request has become, once a checkpoint stands behind it in the file. Looks
// through the whole record. io: it cannot be read.
[[nodiscard]] Result<std::optional<std::uint64_t>> hold_entry(const std::string& record_path,
                                                              const std::string& request);

}  // namespace walkdown::desk
