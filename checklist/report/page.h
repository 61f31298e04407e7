// SPDX-License-Identifier: Apache-2.0
// The page as it is being written. Internal to this folder.
#pragma once

#include <fmt/format.h>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/report/model.h"

namespace walkdown::report {

// For text and for attributes.
[[nodiscard]] std::string esc(std::string_view text);

// Clock times of the record's own place, or UTC where it does not tell.
class Times {
 public:
  explicit Times(std::int64_t utc_offset_min) : offset_min_(utc_offset_min) {}
  [[nodiscard]] std::string clock(std::int64_t at_ms) const;  // "21:31"
  [[nodiscard]] std::string full(std::int64_t at_ms) const;   // "21:31:07"
  [[nodiscard]] std::string date(std::int64_t at_ms) const;   // "2027-06-19"
  [[nodiscard]] std::string zone() const;                     // "UTC+02:00", "UTC"

 private:
  std::int64_t offset_min_;
};

class Page {
 public:
  explicit Page(const Model& shown) : model(shown), times(shown.utc_offset_min) {}

  const Model& model;
  const Times times;
  std::string out;

  template <typename... Args>
  void add(fmt::format_string<Args...> form, Args&&... args) {
    fmt::format_to(std::back_inserter(out), form, std::forward<Args>(args)...);
  }
  void section(std::string_view title);
  void end_section() { out += "</section>\n"; }
  void text(std::string_view paragraph) { add("<p>{}</p>\n", esc(paragraph)); }
  // A table whose cells are HTML already.
  void table(const std::vector<std::string>& head,
             const std::vector<std::vector<std::string>>& rows, std::string_view css = "");
  // The lines as a table of entry, time and words; `nothing` where there is none.
  void lines(const std::vector<Line>& lines, std::string_view nothing);
  // "#1844", the number of an entry.
  [[nodiscard]] static std::string entry(std::uint64_t n) {
    return fmt::format("<span class=\"n\">#{}</span>", n);
  }

 private:
  int sections_ = 0;
};

// A word with the sign that stands for it in drawings, so that neither needs colour.
[[nodiscard]] std::string standing_word(day::Standing standing);
// What an item's answer was; of one that nobody answers, what the entries say instead.
[[nodiscard]] std::string seen(const day::ItemState& item);
// "Mara Linde and Jon Weir #1831", or that it follows from other entries.
[[nodiscard]] std::string signed_by(const day::ItemState& item);
// "M07/R1/P01 to P16, M07/R2/P01": at most `most` runs.
[[nodiscard]] std::string pin_list(const std::vector<plan::PinId>& pins, std::size_t most);
// A file's name as it has to be typed behind a command: in quotes where it has a space or the like.
[[nodiscard]] std::string shell_word(const std::string& name);
[[nodiscard]] std::string metres_per_s(std::int64_t mm_per_s);

// The parts of the page, in order.
void first_page(Page& page);
void plan_part(Page& page);
void faults_part(Page& page);
void tester_part(Page& page);
void weather_part(Page& page);
void zone_part(Page& page);
void custody_part(Page& page);
void checklist_part(Page& page);
void after_part(Page& page);
void signatures_part(Page& page);
void verify_part(Page& page);

// Drawings, each an <svg>.
[[nodiscard]] std::string wind_chart(const Page& page);
[[nodiscard]] std::string site_plan(const Page& page);
[[nodiscard]] std::string custody_lines(const Page& page);
[[nodiscard]] std::string headcount_chart(const Page& page);
[[nodiscard]] std::string checklist_chart(const Page& page);

extern const char* const kStyle;

}  // namespace walkdown::report
