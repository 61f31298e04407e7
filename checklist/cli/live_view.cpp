// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/live_view.h"

#include <fmt/format.h>
#include <unistd.h>

#include <array>

namespace walkdown::cli {
namespace {

constexpr int kRows = 4;

bool same_but_for_last(const LiveFacts& a, const LiveFacts& b) {
  LiveFacts c = a;
  c.last = b.last;
  c.entries = b.entries;
  return c == b;
}

}  // namespace

std::string one_line(const LiveFacts& facts) {
  std::string line = fmt::format("{} | {} of {} pins read, {} fit | {} entries on disk", facts.link,
                                 facts.read, facts.planned, facts.fit, facts.entries);
  if (facts.rejected > 0) line += fmt::format(", {} lines rejected", facts.rejected);
  if (!facts.wrong.empty()) line += " | does not fit: " + facts.wrong;
  if (!facts.last.empty()) line += " | last: " + facts.last;
  return line;
}

LiveView::LiveView(std::FILE* out) : LiveView(out, isatty(fileno(out)) == 1) {}

void LiveView::show(const LiveFacts& facts) {
  if (in_place_ ? (drawn_ && facts == shown_) : (drawn_ && same_but_for_last(facts, shown_)))
    return;
  if (in_place_) {
    erase();
    draw(facts);
  } else {
    fmt::print(out_, "{}\n", one_line(facts));
  }
  (void)std::fflush(out_);
  shown_ = facts;
  drawn_ = true;
}

void LiveView::say(std::string_view sentence) {
  const bool redraw = in_place_ && drawn_;
  if (redraw) erase();
  fmt::print(out_, "{}\n", sentence);
  if (redraw) draw(shown_);
  (void)std::fflush(out_);
}

void LiveView::erase() {
  // Up to the first row of the block and clear to the end of the screen (ECMA-48 CUU, ED).
  if (drawn_) fmt::print(out_, "\x1b[{}A\x1b[0J", kRows);
}

void LiveView::draw(const LiveFacts& facts) {
  fmt::print(out_, "tester {:<10} {} entries on disk, {} lines rejected\n", facts.link,
             facts.entries, facts.rejected);
  fmt::print(out_, "pins   {} of {} read, {} fit\n", facts.read, facts.planned, facts.fit);
  fmt::print(out_, "last   {}\n", facts.last.empty() ? "nothing yet" : facts.last);
  fmt::print(out_, "wrong  {:.70}\n", facts.wrong.empty() ? "none so far" : facts.wrong);
}

}  // namespace walkdown::cli
