// SPDX-License-Identifier: Apache-2.0
// Resistance of standard copper wire from its size, at 20 degC.
//
// AWG: diameter by the formula of ASTM B258, d = 0.005 in * 92^((36-n)/39), not rounded; annealed
// copper of 1/58 ohm mm2/m (IEC 60028). A nominal value: its tolerance is Wiring::lead_tol_pct.
// mm2: from the ideal 1/(58 A) up to the most that IEC 60228 allows class 5 (flexible, plain
// copper) for 0.5, 0.75, 1, 1.5 and 2.5 mm2. The standard gives a maximum only; that wire is no
// better than ideal is our assumption. Other areas are not in the tables we hold: up to
// 1.16 times ideal, the largest ratio of those five, which is our assumption too.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "reader/plan/catalogue.h"

namespace walkdown::plan {

inline constexpr double kCopperOhmMm2PerM = 1.0 / 58.0;  // IEC 60028, annealed copper at 20 degC

// Takes "AWG24", "awg 24", "AWG0" to "AWG0000", "AWG1/0" to "AWG4/0" (40 is the finest) and
// "0.5mm2", "0,5 mm2", "1.5 mm\u00b2" (0.01 to 1000). The name of the result is canonical: "AWG24",
// "AWG2/0", "0.5mm2". Empty for anything else.
[[nodiscard]] std::optional<Wire> standard_wire(std::string_view size);

// `n` from -3 (AWG4/0) to 40.
[[nodiscard]] double awg_diameter_mm(int n);
[[nodiscard]] double awg_area_mm2(int n);

}  // namespace walkdown::plan
