// SPDX-License-Identifier: Apache-2.0
// Time from left to right in a drawing. Internal to this folder.
#pragma once

#include <cstdint>
#include <string>

#include "checklist/report/page.h"

namespace walkdown::report {

class TimeAxis {
 public:
  // From the first to the last entry of the record, between these x.
  TimeAxis(const Page& page, double left, double right);

  [[nodiscard]] double x(std::int64_t at_ms) const;
  // Ticks with clock times under `bottom`, and thin lines from `top` to it.
  [[nodiscard]] std::string ticks(double top, double bottom) const;
  // Upright lines where the show was to be and where releases stood.
  [[nodiscard]] std::string moments(double top, double bottom) const;
  [[nodiscard]] std::int64_t from() const { return from_ms_; }
  [[nodiscard]] std::int64_t to() const { return to_ms_; }

 private:
  const Page& page_;
  std::int64_t from_ms_, to_ms_;
  double left_, right_;
};

// Hatchings for what is not black: "url(#hatch)", "url(#cross)", "url(#dots)".
extern const char* const kPatterns;

}  // namespace walkdown::report
