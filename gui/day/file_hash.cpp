// SPDX-License-Identifier: Apache-2.0
#include "gui/day/file_hash.h"

#include "checklist/record/sha256.h"
#include "gui/parts/load.h"

namespace walkdown::gui {

Result<std::string> sha256_of_file(const std::string& path) {
  const auto bytes = load_file(path);
  if (!bytes) return bytes.error();
  return record::hex(record::sha256(*bytes));
}

}  // namespace walkdown::gui
