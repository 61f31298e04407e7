// SPDX-License-Identifier: Apache-2.0
// What somebody who trains at the simulated field does with their hands, typed on standard input.
#pragma once

#include <string>
#include <string_view>

#include "reader/result.h"
#include "reader/trainer/field.h"
#include "reader/trainer/pty.h"

namespace walkdown::cli {

class Trainee {
 public:
  // Both outlive this.
  Trainee(trainer::Field& field, trainer::TesterPty& tester) : field_(&field), tester_(&tester) {}

  // Takes what was typed, without waiting, and answers on standard error. False after `quit`. The
  // end of input is no quit: the tester goes on.
  [[nodiscard]] bool listen();

  // Does one line. Errors: usage, with the words there are.
  Done act(std::string_view line);

  [[nodiscard]] static std::string words();

 private:
  trainer::Field* field_;
  trainer::TesterPty* tester_;
  std::string typed_;
  bool ended_ = false;
  bool quit_ = false;
};

}  // namespace walkdown::cli
