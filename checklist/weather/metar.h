// SPDX-License-Identifier: Apache-2.0
// The wind group of an aerodrome report: dddff[Gff](KT|MPS|KMH) [dddVddd] (WMO-No. 306, FM 15,
// regulation 15.5). A second opinion from the nearest aerodrome; it is 10 m up and miles away.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "reader/result.h"

namespace walkdown::weather {

struct Metar {
  std::optional<std::int32_t> from_deg;         // 0..360; empty: variable
  std::int64_t mean_mm_per_s = 0;               // 10 min mean (2 min in US reports)
  std::optional<std::int64_t> gust_mm_per_s;    // empty: not more than 10 kt above the mean
  bool above = false;                           // "P99": the wind is more than the figure
  std::optional<std::int32_t> varies_from_deg;  // both or none
  std::optional<std::int32_t> varies_to_deg;
};

// A wind group, or a whole report in which the first wind group is taken.
// Errors: bad_input where no word of the text is a wind group, or the variation is malformed.
Result<Metar> parse_metar_wind(std::string_view text);

}  // namespace walkdown::weather
