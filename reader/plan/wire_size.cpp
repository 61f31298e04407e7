// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/wire_size.h"

#include <fmt/format.h>

#include <array>
#include <cmath>
#include <numbers>

#include "reader/plan/decimal.h"

namespace walkdown::plan {
namespace {

constexpr int kFinestAwg = 40;
constexpr double kMmPerInch = 25.4;
constexpr double kOtherSizes = 1.16;  // most over ideal, see the header

struct Size {
  double area_mm2;
  double most_ohm_per_km;
};
// IEC 60228, table 3 (class 5), plain copper at 20 degC.
constexpr std::array<Size, 5> kClass5{
    {{0.5, 39.0}, {0.75, 26.0}, {1.0, 19.5}, {1.5, 13.3}, {2.5, 7.98}}};

// Lower case, without spaces, "\u00b2" as 2. Empty where it is too long to be a size.
std::string folded(std::string_view size) {
  std::string text;
  for (std::size_t i = 0; i < size.size() && i < 24; ++i) {
    const char c = size[i];
    if (size.substr(i).starts_with("\xC2\xB2")) {
      text += '2';
      ++i;
    } else if (c >= 'A' && c <= 'Z') {
      text += static_cast<char>(c - 'A' + 'a');
    } else if (c != ' ') {
      text += c;
    }
  }
  return size.size() > 24 ? std::string{} : text;
}

// "24" -> 24, "0" -> 0, "00" and "2/0" -> -1, "0000" and "4/0" -> -3.
std::optional<int> awg_number(std::string_view text) {
  if (text == "0" || text == "1/0") return 0;
  if (text == "00" || text == "2/0") return -1;
  if (text == "000" || text == "3/0") return -2;
  if (text == "0000" || text == "4/0") return -3;
  const auto n = parse_count(text, kFinestAwg);
  if (!n || text.front() == '0') return std::nullopt;
  return *n;
}

Wire awg(int n) {
  const double ohm_per_km = kCopperOhmMm2PerM / awg_area_mm2(n) * 1000;
  Wire wire;
  wire.name = n >= 0 ? fmt::format("AWG{}", n) : fmt::format("AWG{}/0", 1 - n);
  wire.ohm_per_km = {ohm_per_km, ohm_per_km};
  wire.source = "ASTM B258 diameter, not rounded; annealed copper, IEC 60028";
  return wire;
}

Wire metric(double area_mm2) {
  const double ideal = kCopperOhmMm2PerM / area_mm2 * 1000;
  Wire wire;
  wire.name = fmt::format("{}mm2", area_mm2);
  wire.ohm_per_km = {ideal, ideal * kOtherSizes};
  wire.source = "ideal copper, IEC 60028, to 1.16 times that: an assumption, size not in the table";
  for (const Size& size : kClass5) {
    if (size.area_mm2 != area_mm2) continue;
    wire.ohm_per_km.hi = size.most_ohm_per_km;
    wire.source = "ideal copper, IEC 60028, to the maximum of IEC 60228 class 5, plain";
  }
  return wire;
}

}  // namespace

double awg_diameter_mm(int n) { return 0.005 * kMmPerInch * std::pow(92.0, (36.0 - n) / 39.0); }

double awg_area_mm2(int n) {
  const double d = awg_diameter_mm(n);
  return std::numbers::pi / 4 * d * d;
}

std::optional<Wire> standard_wire(std::string_view size) {
  const std::string text = folded(size);
  const std::string_view rest = text;
  if (rest.starts_with("awg")) {
    const auto n = awg_number(rest.substr(3));
    return n ? std::optional(awg(*n)) : std::nullopt;
  }
  if (!rest.ends_with("mm2")) return std::nullopt;
  const auto area = parse_decimal(rest.substr(0, rest.size() - 3), true);
  if (!area || *area < 0.01 || *area > 1000) return std::nullopt;
  return metric(*area);
}

}  // namespace walkdown::plan
