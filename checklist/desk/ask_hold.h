// SPDX-License-Identifier: Apache-2.0
// Calls a hold on a record that another program has open: lays it in the hold box and waits until
// it is an entry on disk.
#pragma once

#include <chrono>
#include <functional>
#include <string>

#include "checklist/desk/acts.h"

namespace walkdown::desk {

struct HoldAsk {
  std::string record;
  std::string by;
  std::string reason;
  // That long one waits for the other program before it is said that the hold is not recorded.
  std::chrono::milliseconds patience = std::chrono::seconds(8);
  // Opens the record and closes it again where nobody else has it any more: opening it takes the
  // call up. Asked about once a second, so that a program which died costs no more than that.
  std::function<void()> open;
};

// The entry of the hold. busy: it was NOT recorded in time, and the call was taken back; io.
Entry ask_for_hold(const HoldAsk& ask);

}  // namespace walkdown::desk
