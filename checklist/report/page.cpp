// SPDX-License-Identifier: Apache-2.0
#include "checklist/report/page.h"

#include <algorithm>
#include <array>
#include <cstdlib>

#include "checklist/day/duration.h"
#include "checklist/record/clock.h"
#include "checklist/report/html.h"
#include "reader/match/coverage_text.h"

namespace walkdown::report {

std::string esc(std::string_view text) {
  std::string out;
  out.reserve(text.size());
  for (const char c : text) {
    if (c == '&') {
      out += "&amp;";
    } else if (c == '<') {
      out += "&lt;";
    } else if (c == '>') {
      out += "&gt;";
    } else if (c == '"') {
      out += "&quot;";
    } else if (c == '%' && out.ends_with(' ')) {
      out.replace(out.size() - 1, 1, "&nbsp;%");  // a line never ends between the two
    } else {
      out += c;
    }
  }
  return out;
}

std::string Times::clock(std::int64_t at_ms) const { return day::say_clock(at_ms, offset_min_); }
std::string Times::full(std::int64_t at_ms) const {
  return record::rfc3339(at_ms + offset_min_ * 60'000).substr(11, 8);
}
std::string Times::date(std::int64_t at_ms) const {
  return record::rfc3339(at_ms + offset_min_ * 60'000).substr(0, 10);
}
std::string Times::zone() const {
  if (offset_min_ == 0) return "UTC";
  const std::int64_t size = std::abs(offset_min_);
  return fmt::format("UTC{}{:02}:{:02}", offset_min_ < 0 ? '-' : '+', size / 60, size % 60);
}

void Page::section(std::string_view title) {
  ++sections_;
  add("<section id=\"s{}\"><h2><span class=\"no\">{}</span>{}</h2>\n", sections_, sections_, title);
}

namespace {

// One word that no narrow column needs to break.
bool is_word(std::string_view cell) {
  constexpr std::size_t kMost = 12;
  return !cell.empty() && cell.size() <= kMost &&
         cell.find_first_of(" <") == std::string_view::npos;
}

}  // namespace

void Page::table(const std::vector<std::string>& head,
                 const std::vector<std::vector<std::string>>& rows, std::string_view css) {
  // The width is said here too, for readers of HTML that take it from no style sheet; one of them
  // rounds it upwards, and would need to scroll to the side.
  add("<table class=\"{}\" width=\"99%\"><thead><tr>", css);
  for (const std::string& cell : head) add("<th>{}</th>", cell);
  out += "</tr></thead><tbody>\n";
  for (const auto& row : rows) {
    out += "<tr>";
    for (const std::string& cell : row) {
      add("<td{}>{}</td>", is_word(cell) ? " class=\"stands\"" : "", cell);
    }
    out += "</tr>\n";
  }
  out += "</tbody></table>\n";
}

void Page::lines(const std::vector<Line>& lines, std::string_view nothing) {
  if (lines.empty()) return text(nothing);
  std::vector<std::vector<std::string>> rows;
  rows.reserve(lines.size());
  for (const Line& line : lines) {
    rows.push_back({entry(line.n), times.full(line.at_ms), esc(line.say)});
  }
  table({"entry", "time", "what"}, rows, "log");
}

std::string standing_word(day::Standing standing) {
  static constexpr std::array<const char*, 7> kSigns = {
      "&#9633;", "&#9633;!", "&#9632;", "&#9684;", "&#10005;", "&#10006;", "&#9706;"};
  return fmt::format("<span class=\"stands\"><span class=\"sign\">{}</span>&nbsp;{}</span>",
                     kSigns.at(static_cast<std::size_t>(standing)), day::word(standing));
}

std::string seen(const day::ItemState& item) {
  return esc(item.answer.empty() ? item.why : item.answer);
}

std::string signed_by(const day::ItemState& item) {
  if (item.by.empty()) {
    const bool open = item.standing == day::Standing::open || item.standing == day::Standing::due;
    return open ? "" : "(follows from the entries)";
  }
  std::string who = esc(item.by);
  if (!item.second.empty()) who += fmt::format(" and {}", esc(item.second));
  if (item.answered_n) who += fmt::format(" {}", Page::entry(*item.answered_n));
  return who;
}

std::string pin_list(const std::vector<plan::PinId>& pins, std::size_t most) {
  std::string out;
  std::size_t runs = 0;
  for (std::size_t i = 0; i < pins.size();) {
    std::size_t end = i + 1;
    while (end < pins.size() && pins[end].module == pins[i].module &&
           pins[end].rail == pins[i].rail && pins[end].pin == pins[end - 1].pin + 1) {
      ++end;
    }
    if (runs++ == most) return fmt::format("{}, and {} more", out, pins.size() - i);
    out += (out.empty() ? "" : ", ") + plan::text(pins[i]);
    if (end - i > 1) out += fmt::format(" to P{:02}", pins[end - 1].pin);
    i = end;
  }
  return out;
}

std::string shell_word(const std::string& name) {
  const auto plain = [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '.' ||
           c == '_' || c == '-';
  };
  if (!name.starts_with('-') && std::all_of(name.begin(), name.end(), plain)) return name;
  // A name that begins as an option does is one no more with the folder before it.
  std::string word = name.starts_with('-') ? "'./" : "'";
  for (const char c : name) word += c == '\'' ? std::string("'\\''") : std::string(1, c);
  return word + '\'';
}

std::string metres_per_s(std::int64_t mm_per_s) {
  const std::int64_t tenths = (mm_per_s + 99) / 100;  // upwards, as the checklist judges
  return fmt::format("{}.{}", tenths / 10, tenths % 10);
}

std::string html(const Model& model) {
  Page page(model);
  page.out.reserve(std::size_t{1} << 18U);
  page.add(
      "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">"
      "<meta name=\"viewport\" content=\"width=device-width\"><title>{}: report of the day</title>"
      "<style>{}</style></head><body>\n",
      esc(model.file), kStyle);
  first_page(page);
  plan_part(page);
  faults_part(page);
  tester_part(page);
  weather_part(page);
  zone_part(page);
  custody_part(page);
  checklist_part(page);
  after_part(page);
  signatures_part(page);
  verify_part(page);
  page.add("<footer>{} &middot; mark {} &middot; {} entries</footer>\n</body></html>\n",
           esc(model.file), esc(model.check.mark), model.check.entries);
  return page.out;
}

}  // namespace walkdown::report
