// SPDX-License-Identifier: Apache-2.0
// The people of the demonstration: invented, each with a real key under a passphrase.
#pragma once

#include <string>

#include "checklist/desk/crew.h"
#include "checklist/desk/desk.h"

namespace walkdown::cli {

inline constexpr const char* kDemoPassphrase = "only-a-demonstration";

struct DemoCrew {
  desk::Signer mara;   // lead
  desk::Signer jon;    // safety
  desk::Signer edda;   // crew
  desk::Signer ines;   // crew
  desk::Signer tomas;  // spotter
  desk::Signer olga;   // witness, of the authority
};

// Makes the keys in the folder and opens them. Errors: as Crew::add and Crew::load.
Result<DemoCrew> make_demo_crew(const std::string& folder);

}  // namespace walkdown::cli
