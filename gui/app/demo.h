// SPDX-License-Identifier: Apache-2.0
// The demo show, live: a simulated field with mistakes in it, a tester on a pseudo-terminal, and an
// invented crew. What a hand would do at the modules is done in the simulated field; everything
// else goes through the window as on any day.
#pragma once

#include <memory>
#include <optional>
#include <string>

#include "checklist/cli/demo_files.h"
#include "checklist/desk/desk.h"
#include "gui/app/opening.h"
#include "gui/live/session.h"
#include "reader/trainer/field.h"
#include "reader/trainer/pty.h"
#include "reader/trainer/sweep.h"

namespace walkdown::gui {

// Everybody's in the demo; the names are invented.
inline constexpr const char* kDemoPassphrase = "walk the demo";

class Demo {
 public:
  // `folder` empty: a new one for temporary files. Makes keys and files: some seconds of a thread
  // that may wait, or the start of the program.
  static Result<std::unique_ptr<Demo>> make(const std::string& folder);

  [[nodiscard]] const cli::DemoFiles& files() const { return files_; }
  [[nodiscard]] Places places() const;
  [[nodiscard]] const std::string& folder() const { return files_.folder; }
  // A show three and a half hours from now, its crew enrolled. Errors: as the desk's.
  [[nodiscard]] Result<desk::Desk> open(const record::Clock& clock) const;

  [[nodiscard]] const std::string& port() const { return tester_->path(); }
  // The simulated tester goes over every pin, or over these.
  void sweep(const std::vector<plan::PinId>& pins = {});
  // 0: as fast as they are taken.
  void set_rate(double lines_per_s) { tester_->set_rate(lines_per_s); }
  // What a hand does at the module for this finding, in the simulated field; then reads again.
  void mend(const match::Finding& finding);
  void unplug(bool out);

 private:
  Demo(cli::DemoFiles files, trainer::Field field, std::unique_ptr<trainer::TesterPty> tester);

  cli::DemoFiles files_;
  trainer::Field field_;
  std::unique_ptr<trainer::TesterPty> tester_;
  trainer::SweepForm form_;  // its line numbers run on
};

}  // namespace walkdown::gui
