// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/field_record.h"

#include <utility>

#include "checklist/cli/day_desk.h"

namespace walkdown::cli {

Result<FieldRecord> FieldRecord::open(const std::string& path, const Inputs& inputs,
                                      const std::string& key_path, const record::Clock& clock) {
  return open(path, inputs.show, key_path, clock);
}

Result<FieldRecord> FieldRecord::open(const std::string& path, const show::Show& show,
                                      const std::string& key_path, const record::Clock& clock) {
  DayPaths paths;
  paths.record = path;
  paths.station_key = key_path;
  auto opened = open_desk(paths, show, clock);
  if (!opened) return opened.error();
  return FieldRecord(std::move(opened).value());
}

Result<match::Outcome> FieldRecord::claim() {
  const auto seen = desk_.claim();
  if (!seen) return seen.error();
  return **seen;
}

}  // namespace walkdown::cli
