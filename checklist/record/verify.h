// SPDX-License-Identifier: Apache-2.0
// Checks a record from its bytes alone, in one pass: each line has the one spelling it may have,
// entries are numbered and in the order of time, each checkpoint is the tree over all entries
// before it and signed by a station of this record, each sign-off and cosignature holds where it
// stands, nothing follows the close, and nothing is left without a checkpoint.
//
// Memory does not grow with the record: a log2(n) of hashes, the entries since the last checkpoint
// (at most kLongestCommit), and the last kHeadsKept heads for the sign-offs.
#pragma once

#include <cstdint>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/record/head.h"
#include "checklist/record/line.h"
#include "checklist/record/vkey.h"
#include "reader/result.h"

namespace walkdown::record {

inline constexpr std::size_t kLongestCommit = kLongestOpen + (std::size_t{64} << 20U);

// Called for each entry in order once its checkpoint held, so that the layer above can derive
// again what the entry claims. A sentence means: this entry does not hold, and why; the record's
// verification ends there. The views live for the call; entry_of(view) makes a tree.
using Visitor = std::function<std::optional<std::string>(const EntryView&)>;

struct VerifyOptions {
  // Only numbers, times, hashes and roots, and the signature of the last checkpoint: a quick look
  // at a large record. Sign-offs, cosignatures, time-stamps and earlier signatures are not checked,
  // nor is the spelling inside a reading (the root stands for it), and the visitor is not called.
  // Where something does not hold, the file is read once more with its spelling, to name the line.
  bool hash_only = false;
  std::vector<VerifyKey> known;  // keys whose names are trusted; empty: none was given
  std::string authorities;       // PEM of the time-stamp authorities that are trusted; may be empty
  std::string expected_mark;     // as written on paper; spaces and case do not matter
  Visitor visitor;
  // Told now and then how many bytes of the file have been checked.
  std::function<void(std::uint64_t bytes)> progress;
};

// A time-stamp in the record. It holds; `vouched` says whether it shows anything to this reader.
struct StampFound {
  std::uint64_t n = 0;        // its entry
  std::uint64_t entries = 0;  // stood at the latest at
  std::int64_t at_ms = 0;     // the authority's time, UTC
  std::string authority;
  bool vouched = false;  // its certificate leads to one of VerifyOptions::authorities
};

struct Report {
  bool holds = false;
  std::uint64_t entries = 0;               // that hold, up to the last good checkpoint
  std::string mark;                        // of that checkpoint; empty where there is none
  std::optional<std::uint64_t> first_bad;  // 1-based line of the file
  std::string why;                         // one sentence; empty where all holds
  bool closed = false;
  std::vector<std::string> unknown_keys;  // vkeys of this record that `known` does not have
  std::vector<StampFound> stamps;
  std::vector<std::string> remarks;  // what holds, but should be known: trust on first use
  Sealed sealed;                     // to go on from the last good checkpoint
};

// io where the file cannot be read. A record that does not hold is a Report, not an Error.
[[nodiscard]] Result<Report> verify_file(const std::string& path,
                                         const VerifyOptions& options = {});
[[nodiscard]] Report verify_bytes(std::string_view bytes, const VerifyOptions& options = {});

// One vkey a line; empty lines and lines that begin with # are passed over.
[[nodiscard]] Result<std::vector<VerifyKey>> parse_known_keys(std::string_view text);

}  // namespace walkdown::record
