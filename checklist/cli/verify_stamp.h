// SPDX-License-Identifier: Apache-2.0
// verify --time-stamp: the authority's answer that is kept beside a record.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "checklist/record/verify.h"

namespace walkdown::cli {

struct StampBeside {
  std::optional<record::StampFound> found;
  std::string why;  // where there is none: what does not hold
};

// `file` empty: nothing was asked for. Errors: where the answer or the record cannot be read, or is
// no such file.
[[nodiscard]] Result<std::optional<StampBeside>> stamp_beside(const std::string& record,
                                                              const std::string& file,
                                                              const std::string& authorities);

[[nodiscard]] std::string stamp_text(const std::string& file, const StampBeside& beside);

// [{"entry":12,"entries":11,"at":"...","authority":"...","vouched":true}]; `entry` is null for one
// that is beside the record.
[[nodiscard]] std::string stamps_json(const std::vector<record::StampFound>& stamps);

}  // namespace walkdown::cli
