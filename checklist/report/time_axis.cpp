// SPDX-License-Identifier: Apache-2.0
#include "checklist/report/time_axis.h"

#include <algorithm>
#include <array>

namespace walkdown::report {

const char* const kPatterns =
    "<defs><pattern id=\"hatch\" width=\"5\" height=\"5\" patternUnits=\"userSpaceOnUse\" "
    "patternTransform=\"rotate(45)\"><rect width=\"5\" height=\"5\" fill=\"#fff\"/><path d=\"M0 "
    "0v5\" "
    "stroke=\"#111\" stroke-width=\"2\"/></pattern><pattern id=\"cross\" width=\"5\" height=\"5\" "
    "patternUnits=\"userSpaceOnUse\"><rect width=\"5\" height=\"5\" fill=\"#fff\"/><path d=\"M0 "
    "0l5 5M5 0l-5 "
    "5\" stroke=\"#111\" stroke-width=\".9\"/></pattern><pattern id=\"dots\" width=\"4\" "
    "height=\"4\" "
    "patternUnits=\"userSpaceOnUse\"><rect width=\"4\" height=\"4\" fill=\"#fff\"/><circle "
    "cx=\"2\" cy=\"2\" "
    "r=\".9\" fill=\"#111\"/></pattern></defs>";

TimeAxis::TimeAxis(const Page& page, double left, double right)
    : page_(page),
      from_ms_(page.model.opened_at_ms),
      to_ms_(std::max(page.model.last_at_ms, page.model.opened_at_ms + 60'000)),
      left_(left),
      right_(right) {}

double TimeAxis::x(std::int64_t at_ms) const {
  const double share =
      static_cast<double>(at_ms - from_ms_) / static_cast<double>(to_ms_ - from_ms_);
  return left_ + std::clamp(share, 0.0, 1.0) * (right_ - left_);
}

std::string TimeAxis::ticks(double top, double bottom) const {
  constexpr std::array<std::int64_t, 10> kMinutes = {1, 2, 5, 10, 15, 30, 60, 120, 240, 720};
  std::int64_t step_ms = 86'400'000;
  for (const std::int64_t minutes : kMinutes) {
    if ((to_ms_ - from_ms_) / (minutes * 60'000) > 10) continue;
    step_ms = minutes * 60'000;
    break;
  }
  std::string out;
  for (std::int64_t at = (from_ms_ / step_ms + 1) * step_ms; at <= to_ms_; at += step_ms) {
    out += fmt::format(
        "<path d=\"M{0:.1f} {1}V{2}\" stroke=\"#bbb\" stroke-width=\".5\"/><text x=\"{0:.1f}\" "
        "y=\"{3}\" text-anchor=\"middle\">{4}</text>",
        x(at), top, bottom, bottom + 10, page_.times.clock(at));
  }
  return out;
}

std::string TimeAxis::moments(double top, double bottom) const {
  std::string out;
  const auto line = [&](std::int64_t at_ms, const char* word) {
    if (at_ms < from_ms_ || at_ms > to_ms_) return;
    out += fmt::format(
        "<path d=\"M{0:.1f} {1}V{2}\" stroke=\"#111\" stroke-width=\"1\" "
        "stroke-dasharray=\"5 2\"/><text x=\"{0:.1f}\" y=\"{3}\" text-anchor=\"middle\" "
        "font-weight=\"700\">{4}</text>",
        x(at_ms), top, bottom, top - 3, word);
  };
  if (page_.model.show_at_ms) line(*page_.model.show_at_ms, "show");
  for (const Release& each : page_.model.releases) {
    if (!each.second_n) continue;
    const double a = x(each.at_ms), b = x(each.fell_at_ms.value_or(to_ms_));
    out += fmt::format(
        "<path d=\"M{0:.1f} {1}H{2:.1f}\" stroke=\"#111\" stroke-width=\"2.4\"/><text "
        "x=\"{0:.1f}\" y=\"{3}\" text-anchor=\"end\" font-weight=\"700\">released&#160;</text>",
        a, top - 12, b, top - 9);
  }
  return out;
}

}  // namespace walkdown::report
