// SPDX-License-Identifier: Apache-2.0
// What stands against the release, as a person reads it: items by their question, not by the word
// that a terminal types.
#pragma once

#include <QString>
#include <QStringList>

#include "checklist/day/checklist.h"
#include "checklist/day/state.h"

namespace walkdown::gui {

// One line for each line of `state.against`, in its order.
[[nodiscard]] QStringList against_words(const day::State& state, const day::Checklist& list);
// The same for one such line, also of an earlier moment; as it is where it is not known.
[[nodiscard]] QString against_line(const std::string& line, const day::State& state,
                                   const day::Checklist& list);
// The schedule's sentence, its items by their question.
[[nodiscard]] QString schedule_words(const std::string& say, const day::Checklist& list);

}  // namespace walkdown::gui
