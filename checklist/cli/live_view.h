// SPDX-License-Identifier: Apache-2.0
// What a person sees while readings come in: one block redrawn in place on a terminal, one line for
// each change elsewhere.
#pragma once

#include <cstddef>
#include <cstdio>
#include <string>
#include <string_view>

namespace walkdown::cli {

struct LiveFacts {
  std::string link;         // "reading", "quiet", "unplugged"
  std::string last;         // the last reading, as a person reads it
  std::size_t planned = 0;  // pins
  std::size_t read = 0;     // planned pins with a reading
  std::size_t fit = 0;
  std::size_t entries = 0;   // acknowledged
  std::size_t rejected = 0;  // lines that could not be taken
  std::string wrong;         // the first pins that do not fit, and how many more there are

  friend bool operator==(const LiveFacts&, const LiveFacts&) = default;
};

// A line without its end: "reading | 120 of 442 read, 117 fit | wrong: ... | last: ...".
[[nodiscard]] std::string one_line(const LiveFacts& facts);

class LiveView {
 public:
  // `out` is not owned. In place when it is a terminal.
  explicit LiveView(std::FILE* out);
  LiveView(std::FILE* out, bool in_place) : out_(out), in_place_(in_place) {}

  // Nothing is written when nothing changed. Off a terminal the last reading alone is no change.
  void show(const LiveFacts& facts);
  // A sentence that stays: it goes above the block.
  void say(std::string_view sentence);

 private:
  void erase();
  void draw(const LiveFacts& facts);

  std::FILE* out_;
  bool in_place_;
  bool drawn_ = false;
  LiveFacts shown_;
};

}  // namespace walkdown::cli
