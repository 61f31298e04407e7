// SPDX-License-Identifier: Apache-2.0
// Where one item stands at one moment, and why.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "checklist/day/checklist.h"
#include "checklist/day/continuity.h"
#include "checklist/day/day.h"
#include "checklist/day/outside.h"

namespace walkdown::day {

enum class Standing : std::uint8_t {
  open,     // not answered, or waiting for its second signature
  due,      // not answered, and late for the show time
  holds,    // answered well, until a time or until broken
  expired,  // it held, and its time is over
  broken,   // it held, and an event broke it
  refused,  // what was seen does not let it hold
  waived,   // it does not hold, and two people took that on themselves with a reason
};
[[nodiscard]] std::string_view word(Standing standing);

struct Judgement {
  Standing standing = Standing::open;
  std::optional<std::int64_t> until_aged_ms;  // while it holds or is waived: its end, if any
  std::optional<std::int64_t> ready_sure_ms;  // while a wait runs: its end
  std::string why;
  Failure failure;  // what a waiver would be for; meaningless while it holds

  [[nodiscard]] bool good() const {
    return standing == Standing::holds || standing == Standing::waived;
  }
};

// Everything a rule may look at.
struct View {
  const Checklist& list;
  const Outside& outside;
  const Day& day;
  PinBook& book;
};

[[nodiscard]] Judgement judge(const View& view, std::size_t item, Moment moment);

// Nobody can take on himself that somebody is in the field, or that a key is elsewhere.
[[nodiscard]] bool can_be_waived(const Item& item);

// A stage opens when the pause before it is closed; the release is the pause before the first stage
// that it does not rest on.
[[nodiscard]] bool locked(const View& view, std::size_t stage);

}  // namespace walkdown::day
