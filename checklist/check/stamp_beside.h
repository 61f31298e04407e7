// SPDX-License-Identifier: Apache-2.0
// A time-stamp that is kept beside a record and not in it: a closed record takes no more entries,
// and the stamp that is worth most is the one over the closing mark.
#pragma once

#include <string>

#include "checklist/record/base64.h"
#include "checklist/record/verify.h"
#include "reader/result.h"

namespace walkdown::check {

// Which head of the record at `path` the answer of the authority is over. `n` of what is found is
// 0. Errors: forged where it is over none of its heads, or does not hold; as check_time_stamp();
// io. Whether the record holds is check_file()'s matter.
[[nodiscard]] Result<record::StampFound> stamp_beside(const std::string& path,
                                                      const record::Bytes& response,
                                                      const std::string& authorities);

}  // namespace walkdown::check
