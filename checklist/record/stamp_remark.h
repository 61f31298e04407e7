// SPDX-License-Identifier: Apache-2.0
// What a reader should know of a time-stamp that holds, in sentences.
#pragma once

#include <optional>
#include <string>

#include "checklist/record/rules.h"

namespace walkdown::record {

// `none_given`: the reader named no authorities. `not_vouched`: why none of theirs stands behind
// it.
[[nodiscard]] std::string stamp_remark(const StampAt& at, bool none_given,
                                       const std::optional<std::string>& not_vouched);

// Where the station's clock and the authority's cannot both be right, give or take a minute: the
// stamp has to lie between the last entry it covers and the entry that it came back with.
[[nodiscard]] std::optional<std::string> clocks_apart(const StampAt& at);

}  // namespace walkdown::record
