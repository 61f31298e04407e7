// SPDX-License-Identifier: Apache-2.0
// Ctrl-C and a polite kill ask for the end; the command then finishes what it holds and closes the
// record. A second one is no stronger: nothing is ever left half written for being in a hurry.
#pragma once

namespace walkdown::cli {

// From here on SIGINT, SIGTERM and SIGHUP only set a flag. Call once, before any thread starts.
void catch_stop();
[[nodiscard]] bool stop_asked();

}  // namespace walkdown::cli
