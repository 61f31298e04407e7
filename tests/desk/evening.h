// SPDX-License-Identifier: Apache-2.0
// A small show with real keys on a real file, for the tests of this folder.
#pragma once

#include <gtest/gtest.h>

#include <optional>
#include <string>

#include "checklist/desk/acts.h"
#include "checklist/desk/desk.h"
#include "tests/record/scratch.h"

namespace walkdown::desk::test {

inline constexpr std::int64_t kMinute_ms = 60'000;

// Six pins at North and South, a checklist of five items, a site whose distances hold.
show::Show evening_show();
// The line of a pin that reads as planned, i = 0 .. 5.
const char* fitting_line(int i);

class Evening {
 public:
  explicit Evening(std::optional<show::Show> show = evening_show());

  // Opens again, as after a crash or the next morning: the desk before is gone by then.
  void reopen();
  void read_all();
  void read(const char* line);
  void enrol_all();
  // Every item of the release holds.
  void ready();
  void release();
  [[nodiscard]] std::string standing(const std::string& item) const;
  [[nodiscard]] std::string state_json() const { return to_json(desk->state()).dump(); }

  record::test::Scratch scratch;
  record::test::ManualClock clock;
  std::int64_t slept_ms = 0;
  std::string path = scratch.path("evening.record");
  std::optional<show::Show> show;
  std::optional<Desk> desk;
  Signer mara;  // lead
  Signer jon;   // safety
  Signer edda;  // crew

 private:
  DeskOptions options();
};

// The number of the entry; fails the test, and gives 0, where it was refused.
std::uint64_t fine(const Entry& entry);
// The sentence; empty where it was not refused.
std::string refusal(const Entry& entry);

}  // namespace walkdown::desk::test
