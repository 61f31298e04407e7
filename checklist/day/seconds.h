// SPDX-License-Identifier: Apache-2.0
// Claims that wait for a second signature, whatever they claim. Internal to this folder.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "checklist/day/standing.h"

namespace walkdown::day {

// Both are there and look together. Common practice, no source for the figure.
inline constexpr std::int64_t kSecondWithin_ms = 600'000;

struct OpenClaim {
  Claim claim;
  Roles roles;              // who may confirm it
  std::string barred;       // who may not, besides the first signer
  bool needs_gate = false;  // a release
};

// Empty where entry n claims nothing, or is confirmed already.
[[nodiscard]] std::optional<OpenClaim> open_claim(const View& view, std::uint64_t n);

struct Confirmed {
  std::string by;
  std::uint64_t n = 0;
};

// Precondition: open_claim(view, n) found one; `day` is the view's.
void confirm(const View& view, std::uint64_t n, const Confirmed& second, Moment moment, Day& day);

}  // namespace walkdown::day
