// SPDX-License-Identifier: Apache-2.0
// Two files that both say they are the record: where they part. A record has one history; two that
// begin alike and then differ, each rightly signed, show that whoever has the station's key wrote
// the day twice.
#pragma once

#include <cstdint>
#include <string>

#include "reader/result.h"

namespace walkdown::check {

enum class Relation : std::uint8_t {
  same,          // byte for byte
  a_goes_on,     // b is the beginning of a
  b_goes_on,     // a is the beginning of b
  part,          // alike up to a checkpoint, then different: two histories of one record
  other_record,  // not even the opening is the same
};

struct Fork {
  Relation relation = Relation::same;
  std::uint64_t entries = 0;  // up to the last checkpoint that both have
  std::string mark;           // of that checkpoint; empty where there is none
  std::uint64_t line = 0;     // the first that differs, or that only one of them has; 0: none

  [[nodiscard]] bool differ() const {
    return relation == Relation::part || relation == Relation::other_record;
  }
  [[nodiscard]] std::string sentence() const;
};

// Compares bytes; whether either holds is check_file()'s matter. io where a file cannot be read.
[[nodiscard]] Result<Fork> compare(const std::string& a, const std::string& b);

}  // namespace walkdown::check
