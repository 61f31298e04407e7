// SPDX-License-Identifier: Apache-2.0
// Wind sentences of NMEA 0183: MWV and MWD. A sentence without its checksum is refused.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "reader/result.h"

namespace walkdown::weather {

// What an instrument says of the wind at one moment.
struct Instrument {
  std::int64_t mm_per_s = 0;
  // Degrees from true north, in tenths, 0..3599. Only MWD gives it: the angle of MWV is counted
  // from the sensor's own mark (T means theoretical, not true), so it is no bearing.
  std::optional<std::int32_t> from_ddeg;
};

// Takes "$WIMWV,302.4,T,289.6,M,..." like lines, with or without CR LF at the end. Units of MWV:
// N knots, M m/s, K km/h, S miles an hour. Errors: bad_input: wrong checksum, not a wind sentence,
// status other than A (valid), a missing or impossible value.
Result<Instrument> parse_nmea(std::string_view line);

}  // namespace walkdown::weather
