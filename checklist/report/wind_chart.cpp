// SPDX-License-Identifier: Apache-2.0
#include <algorithm>
#include <cmath>

#include "checklist/report/time_axis.h"

namespace walkdown::report {
namespace {

constexpr double kLeft = 34, kRight = 700, kTop = 30, kBottom = 170;

double top_of_scale(const Page& page) {
  std::int64_t most = 5'000;
  for (const Wind& each : page.model.winds) most = std::max(most, each.gust_mm_per_s);
  for (const day::Item& item : page.model.prepared.checklist.items) {
    most = std::max({most, item.gust_max_mm_per_s.value_or(0), item.mean_max_mm_per_s.value_or(0)});
  }
  return std::ceil(static_cast<double>(most) * 1.1 / 5'000) * 5'000;
}

class Chart {
 public:
  explicit Chart(const Page& page)
      : page_(page), axis_(page, kLeft, kRight), most_(top_of_scale(page)) {}

  [[nodiscard]] std::string draw() const {
    return fmt::format(
        "<svg class=\"chart\" viewBox=\"0 0 720 190\" role=\"img\" aria-label=\"Mean wind and "
        "gusts over the day\">{}{}{}{}{}{}</svg>\n",
        axis_.ticks(kTop, kBottom), scale(), limits(), series(), thunder(),
        axis_.moments(kTop, kBottom));
  }

 private:
  [[nodiscard]] double y(double mm_per_s) const {
    return kBottom - mm_per_s / most_ * (kBottom - kTop);
  }
  [[nodiscard]] std::string scale() const {
    std::string out;
    for (int line = 0; 5'000 * line <= most_; ++line) {
      const double each = 5'000 * line;
      out += fmt::format(
          "<path d=\"M{} {:.1f}H{}\" stroke=\"#bbb\" stroke-width=\".5\"/><text x=\"{}\" "
          "y=\"{:.1f}\" text-anchor=\"end\">{}</text>",
          kLeft, y(each), kRight, kLeft - 4, y(each) + 3, each / 1000);
    }
    return out + fmt::format("<text x=\"{}\" y=\"{}\" text-anchor=\"end\">m/s</text>", kLeft - 4,
                             kTop - 6);
  }
  [[nodiscard]] std::string limit(const char* word, std::optional<std::int64_t> mm_per_s) const {
    if (!mm_per_s) return {};
    const double at = y(static_cast<double>(*mm_per_s));
    return fmt::format(
        "<path d=\"M{} {:.1f}H{}\" stroke=\"#111\" stroke-width=\"1\" stroke-dasharray=\"1.5 "
        "2.5\"/><text x=\"{}\" y=\"{:.1f}\">limit, {} {}</text>",
        kLeft, at, kRight, kLeft + 4, at - 2.5, word, metres_per_s(*mm_per_s));
  }
  [[nodiscard]] std::string limits() const {
    std::string out;
    for (const day::Item& item : page_.model.prepared.checklist.items) {
      if (item.kind != day::Kind::wind) continue;
      out += limit("mean", item.mean_max_mm_per_s) + limit("gust", item.gust_max_mm_per_s);
    }
    return out;
  }
  [[nodiscard]] std::string series() const {
    std::string line, marks;
    for (const Wind& each : page_.model.winds) {
      const double x = axis_.x(each.at_ms), mean = y(static_cast<double>(each.mean_mm_per_s)),
                   gust = y(static_cast<double>(each.gust_mm_per_s));
      line += fmt::format("{}{:.1f} {:.1f}", line.empty() ? "M" : "L", x, mean);
      marks += fmt::format(
          "<circle cx=\"{0:.1f}\" cy=\"{1:.1f}\" r=\"3\"/><path d=\"M{0:.1f} {2:.1f}l-3.6 "
          "6.4h7.2z\" fill=\"#fff\" stroke=\"#111\"/><path d=\"M{0:.1f} {1:.1f}V{3:.1f}\" "
          "stroke=\"#111\" stroke-width=\".6\"/>",
          x, mean, gust - 3.6, gust + 2.8);
    }
    return fmt::format(
        "<path d=\"{}\" fill=\"none\" stroke=\"#111\" stroke-width=\"1.2\"/>{}<text x=\"{}\" "
        "y=\"12\" text-anchor=\"end\">&#9679; mean &#160; &#9651; gust &#160; T thunder</text>",
        line, marks, kRight);
  }
  [[nodiscard]] std::string thunder() const {
    std::string out;
    for (const Line& each : page_.model.thunder) {
      out += fmt::format(
          "<text x=\"{:.1f}\" y=\"{}\" text-anchor=\"middle\" font-weight=\"700\">T</text>",
          axis_.x(each.at_ms), kBottom - 3);
    }
    return out;
  }

  const Page& page_;
  TimeAxis axis_;
  double most_;
};

}  // namespace

std::string wind_chart(const Page& page) { return Chart(page).draw(); }

}  // namespace walkdown::report
