// SPDX-License-Identifier: Apache-2.0
// An extract (record/extract.h) taken from the file of a record that holds.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "checklist/check/choice.h"
#include "checklist/record/verify.h"
#include "reader/result.h"

namespace walkdown::check {

struct ExtractWish {
  std::vector<Choice> any_of;         // an entry is chosen by any of these
  std::vector<std::string> withhold;  // printed names, as enrolled
  bool withhold_everybody = false;    // all who are enrolled, and whoever a `by` or `person` names
};

struct Extract {
  std::string text;  // the file
  std::uint64_t entries = 0;
  std::uint64_t withheld = 0;
  std::string mark;  // of the record's last checkpoint
};

// Checks the record in full first. forged: it does not hold; refused: a choice names what the
// record does not know, a name to withhold is not enrolled or stands in what every extract says
// (the record's origin, its station's key), or nothing is chosen; io.
[[nodiscard]] Result<Extract> take_extract(const std::string& path, ExtractWish wish,
                                           record::VerifyOptions options);

}  // namespace walkdown::check
