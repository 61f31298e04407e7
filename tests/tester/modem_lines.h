// SPDX-License-Identifier: Apache-2.0
#pragma once

namespace walkdown::tester {

// While one lives, pseudo-terminals of this process seem to have modem lines.
struct ModemLines {
  ModemLines();
  ~ModemLines();
  ModemLines(const ModemLines&) = delete;
  ModemLines& operator=(const ModemLines&) = delete;
};

// How many ioctl() requests were made that send a break or a flow-control byte, or type input.
int sending_requests();

}  // namespace walkdown::tester
