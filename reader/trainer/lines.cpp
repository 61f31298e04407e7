// SPDX-License-Identifier: Apache-2.0
#include "reader/trainer/lines.h"

#include <fmt/format.h>

#include "reader/tester/check.h"

namespace walkdown::trainer {
namespace {

std::string ohm_text(std::int64_t micro) {
  const std::uint64_t size =
      micro < 0 ? 0 - static_cast<std::uint64_t>(micro) : static_cast<std::uint64_t>(micro);
  std::string text =
      fmt::format("{}{}.{:06}", micro < 0 ? "-" : "", size / 1'000'000, size % 1'000'000);
  for (int spare = 4; spare > 0 && text.back() == '0'; --spare) text.pop_back();
  return text;
}

}  // namespace

std::string line(const tester::Reading& reading, const LineForm& form) {
  std::string text =
      fmt::format("M{:02},R{},P{:02},{},ohm", reading.pin.module, reading.pin.rail, reading.pin.pin,
                  reading.over ? "OL" : ohm_text(reading.micro_ohm));
  if (form.seq) text += fmt::format(",{}", *form.seq);
  if (form.check) text += fmt::format("*{:02X}", tester::xor8(text));
  return text;
}

}  // namespace walkdown::trainer
