// SPDX-License-Identifier: Apache-2.0
// A fold kept as bytes, to go on from without folding all entries again. A snapshot is a shortcut
// and never a source: whoever keeps one keeps with it which entries it is of, and by what key it
// was made (desk/snapshot.h), and folds anew where any of that does not fit.
#pragma once

#include <string>
#include <string_view>

#include "checklist/day/fold.h"

namespace walkdown::day {

// To be raised with every change of a rule or of Day: a snapshot of other rules is not taken.
inline constexpr unsigned kSnapshotVersion = 2;

// The day, and what the pin source keeps of itself.
[[nodiscard]] std::string snapshot(const Fold& fold);

// False, and the fold as new, where the bytes are not such, are of another version, or are of
// another checklist or plan. Allocates no more than a few times bytes.size(), whatever they are.
// Precondition: nothing was taken yet.
[[nodiscard]] bool restore(Fold& fold, std::string_view bytes);

}  // namespace walkdown::day
