// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/sweep_file.h"

#include <optional>
#include <variant>

namespace walkdown::cli {
namespace {

constexpr std::string_view kNoAddress =
    "a bare value names no pin; `walkdown read` walks the plan with such a meter";

tester::ChecksumHabit habit_of(std::string_view bytes) {
  tester::ChecksumHabit habit;
  tester::Framer framer;
  const auto see = [&](const tester::Line& line) { habit.see(line.text); };
  framer.feed(bytes, see);
  framer.finish(tester::Ending::end_of_file, see);
  return habit;
}

std::optional<std::string> take(const tester::Parsed& parsed, Sweep& sweep) {
  if (const auto* reading = std::get_if<tester::Reading>(&parsed)) {
    sweep.samples.push_back({reading->pin, reading->ohm(), reading->over});
    return std::nullopt;
  }
  if (const auto* rejected = std::get_if<tester::Rejected>(&parsed)) return rejected->why;
  return std::string(kNoAddress);
}

}  // namespace

Sweep read_sweep(std::string_view bytes, const tester::LineParser& parser) {
  const tester::ChecksumHabit habit = habit_of(bytes);
  Sweep sweep;
  tester::Framer framer;
  const auto sink = [&](const tester::Line& line) {
    const auto damaged = habit.judge(line.text);
    const auto why = damaged ? std::optional(damaged->why) : take(parser.parse(line), sweep);
    if (why) sweep.rejected.push_back({line.number, std::string(line.text), *why});
  };
  framer.feed(bytes, sink);
  framer.finish(tester::Ending::end_of_file, sink);
  return sweep;
}

}  // namespace walkdown::cli
