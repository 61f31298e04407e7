// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/status.h"

#include <cstdio>
#include <string>

namespace walkdown::cli {

Status not_done(const Error& error) {
  complain(error.sentence());
  return Status::not_done;
}

void complain(std::string_view sentence) {
  const std::string line = "walkdown: " + std::string(sentence) + "\n";
  (void)std::fwrite(line.data(), 1, line.size(), stderr);
}

bool flush_output() { return std::fflush(stdout) == 0 && std::ferror(stdout) == 0; }

}  // namespace walkdown::cli
