// SPDX-License-Identifier: Apache-2.0
// Bars over time: where each key was, how many were in the field, how each item stood.
#include <algorithm>

#include "checklist/report/time_axis.h"

namespace walkdown::report {
namespace {

constexpr double kLeft = 150, kRight = 705, kTop = 28;

std::string bar(double x, double y, double width, double height, std::string_view fill) {
  return fmt::format(
      "<rect x=\"{:.1f}\" y=\"{:.1f}\" width=\"{:.1f}\" height=\"{}\" fill=\"{}\" stroke=\"#111\" "
      "stroke-width=\".6\"/>",
      x, y, std::max(width, 0.6), height, fill);
}

std::string label(double y, std::string_view words) {
  return fmt::format("<text x=\"{}\" y=\"{:.1f}\" text-anchor=\"end\">{}</text>", kLeft - 5, y,
                     esc(words));
}

std::string frame(double bottom, std::string_view what, const std::string& inside) {
  return fmt::format(
      "<svg class=\"chart\" viewBox=\"0 0 720 {:.0f}\" role=\"img\" aria-label=\"{}\">{}{}</svg>\n",
      bottom + 16, what, kPatterns, inside);
}

struct Look {
  std::string_view fill;
  double inset;  // from above and below
};

Look look(day::Standing standing) {
  switch (standing) {
    case day::Standing::holds:
      return {"#111", 0};
    case day::Standing::waived:
      return {"url(#hatch)", 0};
    case day::Standing::refused:
    case day::Standing::broken:
      return {"url(#cross)", 0};
    case day::Standing::expired:
      return {"url(#dots)", 0};
    default:
      return {"#fff", 3.4};
  }
}

std::string legend(double y) {
  struct Sign {
    const char* word;
    day::Standing standing;
  };
  constexpr Sign kSigns[] = {{"holds", day::Standing::holds},
                             {"waived", day::Standing::waived},
                             {"broken or refused", day::Standing::broken},
                             {"expired", day::Standing::expired},
                             {"open", day::Standing::open}};
  std::string out;
  double x = kLeft;
  for (const Sign& sign : kSigns) {
    const Look seen = look(sign.standing);
    out += bar(x, y + seen.inset, 18, 9 - 2 * seen.inset, seen.fill);
    out += fmt::format("<text x=\"{}\" y=\"{}\">{}</text>", x + 22, y + 8, sign.word);
    x += 40 + 5.2 * static_cast<double>(std::string_view(sign.word).size());
  }
  return out;
}

}  // namespace

std::string checklist_chart(const Page& page) {
  constexpr double kRow = 13;
  const TimeAxis axis(page, kLeft, kRight);
  const auto& items = page.model.items;
  double y = kTop + 14;
  std::string bars;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (i > 0 && items[i].stage != items[i - 1].stage) y += 7;
    bars += label(y + 8, items[i].last.id);
    for (const Span& span : items[i].spans) {
      const Look seen = look(span.standing);
      const double x = axis.x(span.from_ms);
      bars += bar(x, y + seen.inset, axis.x(span.to_ms) - x, 9 - 2 * seen.inset, seen.fill);
    }
    y += kRow;
  }
  return frame(y, "How each item stood over the day",
               axis.ticks(kTop + 10, y) + bars + legend(0) + axis.moments(kTop + 10, y));
}

std::string custody_lines(const Page& page) {
  if (page.model.keys.empty()) return {};
  const TimeAxis axis(page, kLeft, kRight);
  double y = kTop;
  std::string out;
  for (const KeyStory& key : page.model.keys) {
    out += label(y + 12, key.name);
    for (std::size_t i = 0; i < key.held.size(); ++i) {
      const Held& held = key.held[i];
      const double x = axis.x(held.from_ms), width = axis.x(held.to_ms) - x;
      out += bar(x, y, width, 16, held.person ? "url(#hatch)" : "#fff");
      const double wide = 5.0 * static_cast<double>(held.holder.size()) + 6;
      // Where a name has no room inside, it stands below, on one of three lines by turns.
      const bool inside = wide < width && !held.person;
      const double line = inside ? y + 11 : y + 26 + 9 * static_cast<double>(i % 3);
      const double at = std::min(x + 2, kRight - wide);
      out += fmt::format("<text x=\"{:.1f}\" y=\"{:.1f}\">{}</text>", at, line, esc(held.holder));
      if (!inside) {
        out += fmt::format("<path d=\"M{0:.1f} {1}V{2:.1f}\" stroke=\"#111\" stroke-width=\".5\"/>",
                           x + 0.5, y + 16, line);
      }
    }
    y += 56;
  }
  return frame(
      y, "Where each key was",
      axis.ticks(kTop - 4, y) + out + axis.moments(kTop - 4, y) +
          fmt::format("<text x=\"{}\" y=\"10\">white: in a place &#160; hatched: in a hand</text>",
                      kLeft));
}

std::string headcount_chart(const Page& page) {
  const auto& steps = page.model.headcount;
  std::int64_t most = 0;
  for (const Head& each : steps) most = std::max(most, each.inside);
  if (most == 0) return {};
  const TimeAxis axis(page, kLeft, kRight);
  const double bottom = kTop + 60;
  const auto y = [&](std::int64_t inside) {
    return bottom - 56.0 * static_cast<double>(inside) / static_cast<double>(most);
  };
  std::string path = fmt::format("M{:.1f} {:.1f}", axis.x(steps.front().at_ms), bottom);
  for (const Head& each : steps)
    path += fmt::format("H{:.1f}V{:.1f}", axis.x(each.at_ms), y(each.inside));
  path += fmt::format("H{:.1f}V{:.1f}z", axis.x(axis.to()), bottom);
  std::string scale = label(bottom + 3, "nobody") + label(y(most) + 3, std::to_string(most));
  return frame(bottom, "How many were in the field",
               axis.ticks(kTop, bottom) + scale +
                   fmt::format("<path d=\"{}\" fill=\"url(#hatch)\" stroke=\"#111\"/>", path) +
                   axis.moments(kTop, bottom));
}

}  // namespace walkdown::report
