// SPDX-License-Identifier: Apache-2.0
// A show being put together from files: where each comes from, and what the program makes of them.
#pragma once

#include <array>
#include <string>
#include <vector>

#include "checklist/show/show.h"
#include "reader/result.h"

namespace walkdown::gui {

// What is put before the name of a file that the program carries itself: "template:...".
inline constexpr std::string_view kTemplate = "template:";

struct ShowDraft {
  std::array<std::string, show::kRoles> paths;  // by role; empty: none. A path or a template

  [[nodiscard]] std::string& path(show::Role role) {
    return paths.at(static_cast<std::size_t>(role));
  }
  [[nodiscard]] const std::string& path(show::Role role) const {
    return paths.at(static_cast<std::size_t>(role));
  }
};

// Errors: io, with the file.
[[nodiscard]] Result<show::Show> show_of(const ShowDraft& draft);

struct Looked {
  bool good = false;
  std::string summary;              // "442 pins on 12 modules, 7 positions"
  std::vector<std::string> errors;  // all of them
  std::vector<std::string> warnings;
};
// Reads and checks everything; waits for the disk.
[[nodiscard]] Looked look_at(const ShowDraft& draft);

}  // namespace walkdown::gui
