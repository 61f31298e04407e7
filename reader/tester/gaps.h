// SPDX-License-Identifier: Apache-2.0
// A tester that numbers its lines tells what was lost on the way. This watches the numbers.
#pragma once

#include <cstdint>
#include <optional>

namespace walkdown::tester {

struct SeqNote {
  enum class Kind : std::uint8_t {
    gap,      // `count` lines are missing before this one
    repeat,   // this line has the number of the one before it
    restart,  // the numbers jumped back: the tester began anew; how many were lost is not known
  };
  Kind kind = Kind::gap;
  std::uint64_t count = 0;
  friend bool operator==(const SeqNote&, const SeqNote&) = default;
};

// One per stream. A counter that runs from 255, 65535, 2^32-1, or 9, 99, ... 10^12-1 to 0 or 1 has
// wrapped, which is no gap. Elsewhere a smaller number is a restart.
class SeqWatch {
 public:
  // Empty where the number follows on, and for the first of a stream.
  std::optional<SeqNote> see(std::uint64_t seq);
  // After an unplugging the next number counts as a first one.
  void forget() { last_.reset(); }
  [[nodiscard]] std::uint64_t lost() const { return lost_; }

 private:
  std::optional<std::uint64_t> last_;
  std::uint64_t lost_ = 0;
};

}  // namespace walkdown::tester
