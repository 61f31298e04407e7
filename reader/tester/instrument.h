// SPDX-License-Identifier: Apache-2.0
// Which instrument a profile is of, as its label and its certificate say: the optional table
// [instrument] of a profile. It changes no reading; it is kept in the record for those who ask.
#pragma once

#include <string>
#include <string_view>

namespace walkdown::tester {

struct Instrument {
  std::string type, serial, certificate;       // one line each, at most 200 bytes
  std::string calibrated_on, calibration_due;  // "2027-03-01"

  [[nodiscard]] bool told() const { return !type.empty() || !serial.empty(); }
  friend bool operator==(const Instrument&, const Instrument&) = default;
};

// Of a profile that read_profile() takes; empty where it says nothing of it, or is none.
[[nodiscard]] Instrument instrument_of(std::string_view profile_toml);

}  // namespace walkdown::tester
