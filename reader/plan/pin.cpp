// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/pin.h"

#include <fmt/format.h>

namespace walkdown::plan {
namespace {

constexpr std::uint16_t kMaxPart = 9999;
static_assert(kMaxModule == kMaxPart && kMaxRail == kMaxPart && kMaxPin == kMaxPart);

// Digits only: no sign, no space, no exponent. Counted by hand so that any number of leading
// zeros is taken and no length overflows.
std::optional<std::uint16_t> whole(std::string_view digits) {
  if (digits.empty()) return std::nullopt;
  unsigned value = 0;
  for (const char c : digits) {
    if (c < '0' || c > '9') return std::nullopt;
    value = value * 10 + static_cast<unsigned>(c - '0');
    if (value > kMaxPart) return std::nullopt;
  }
  if (value == 0) return std::nullopt;
  return static_cast<std::uint16_t>(value);
}

char upper(char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; }

// Takes "M07" off the front of `rest`, up to the slash or the end.
std::optional<std::uint16_t> take(std::string_view& rest, char letter) {
  if (rest.empty() || rest.front() != letter) return std::nullopt;
  const std::size_t slash = rest.find('/');
  const auto value = whole(rest.substr(1, slash == std::string_view::npos ? slash : slash - 1));
  rest = slash == std::string_view::npos ? std::string_view{} : rest.substr(slash + 1);
  return value;
}

}  // namespace

std::string text(PinId pin) {
  return fmt::format("M{:02}/R{}/P{:02}", pin.module, pin.rail, pin.pin);
}

std::optional<PinId> parse_pin(std::string_view text) {
  std::string_view rest = text;
  const auto module = take(rest, 'M');
  const auto rail = take(rest, 'R');
  if (rest.find('/') != std::string_view::npos) return std::nullopt;
  const auto pin = take(rest, 'P');
  if (!module || !rail || !pin) return std::nullopt;
  return PinId{*module, *rail, *pin};
}

std::optional<std::uint16_t> parse_part(std::string_view text, char letter) {
  if (!text.empty() && upper(text.front()) == upper(letter)) text.remove_prefix(1);
  return whole(text);
}

}  // namespace walkdown::plan
