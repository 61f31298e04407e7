// SPDX-License-Identifier: Apache-2.0
// The demo show's files, put into a folder where a person can look at them and use them.
#pragma once

#include <string>

#include "checklist/cli/inputs.h"
#include "reader/result.h"

namespace walkdown::cli {

struct DemoFiles {
  std::string folder;
  InputPaths inputs;
  std::string site;
  std::string checklist;
  std::string distances;
  std::string faults;
  std::string record;
  std::string report;
  std::string station_key;
};

// `folder` empty: a new one in the folder for temporary files. Errors: io; refused where the folder
// holds a demo record already.
Result<DemoFiles> lay_out_demo(std::string folder);

}  // namespace walkdown::cli
