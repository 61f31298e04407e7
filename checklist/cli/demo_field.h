// SPDX-License-Identifier: Apache-2.0
// The demo's field: a simulated tester on a real pseudo-terminal, listened to as any tester, into a
// real record.
#pragma once

#include <functional>
#include <memory>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/cli/demo_clock.h"
#include "checklist/cli/field_record.h"
#include "checklist/cli/intake.h"
#include "checklist/cli/live_view.h"
#include "reader/tester/link.h"
#include "reader/trainer/field.h"
#include "reader/trainer/pty.h"
#include "reader/trainer/sweep.h"

namespace walkdown::cli {

class DemoField {
 public:
  // `field`, `record` and `clock` outlive this; the clock moves on with each line, as if the tester
  // took the time of a real one. Errors as TesterPty::open and tester::Link::open.
  static Result<DemoField> open(trainer::Field& field, FieldRecord& record, DemoClock& clock,
                                const tester::PortSettings& port, double lines_per_s);

  // The tester walks the pins, `times` times, and every line arrives as an acknowledged entry; a
  // view of it is drawn meanwhile. Errors: what the record says; io where the tester falls silent.
  Done read(std::span<const plan::PinId> pins, unsigned times);

  [[nodiscard]] const std::string& port() const { return tester_->path(); }

 private:
  DemoField(trainer::Field& field, FieldRecord& record, DemoClock& clock,
            std::unique_ptr<trainer::TesterPty> tester, tester::Link link);
  Done pump();
  Done feed(std::string_view bytes);

  trainer::Field* field_;
  FieldRecord* record_;
  DemoClock* clock_;
  std::unique_ptr<trainer::TesterPty> tester_;
  tester::Link link_;
  Intake intake_;
  trainer::SweepForm form_;
  std::uint64_t sent_ = 0;  // lines, ever
};

}  // namespace walkdown::cli
