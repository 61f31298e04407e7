// SPDX-License-Identifier: Apache-2.0
// What the program says to the shell, the same for every command.
#pragma once

#include <string_view>

#include "reader/result.h"

namespace walkdown::cli {

enum class Status : int {
  nothing_to_act_on = 0,
  act = 1,       // done, and somebody has to do something: a pin that does not fit, a broken record
  not_done = 2,  // usage, bad input, I/O; a sentence stands on standard error
};

// Writes "walkdown: <sentence>" to standard error.
Status not_done(const Error& error);
void complain(std::string_view sentence);

// False where nobody takes the output (a full disk, a closed pipe): no command may then say done.
[[nodiscard]] bool flush_output();

}  // namespace walkdown::cli
