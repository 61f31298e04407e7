// SPDX-License-Identifier: Apache-2.0
// Sentences of the Qt-free parts in the language of the person. The record, the files and the
// terminal keep the English ones; what is signed is never a translation.
#pragma once

#include <QString>
#include <string_view>
#include <vector>

#include "reader/result.h"

namespace walkdown::gui {

struct Sentence {
  const char* text;  // places for values as "%1", "%2", ... in this order; no full stop at its end
  bool inside;       // stands only where a value of another sentence does
};

// All that are known.
[[nodiscard]] std::vector<Sentence> sentences();

// The same sentence in the language of the person, values in it translated too where they are
// sentences themselves. As it is where it is not known, or no language was loaded.
[[nodiscard]] QString translated(std::string_view said);
[[nodiscard]] QString translated(const Error& error);

// Whether it is one of sentences().
[[nodiscard]] bool is_known(std::string_view said);

}  // namespace walkdown::gui
