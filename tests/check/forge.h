// SPDX-License-Identifier: Apache-2.0
// What somebody can do who holds the station's key, and nobody's own: change a record in any way
// and seal all of it anew, so that every hash and every checkpoint is right.
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "checklist/record/entry.h"

namespace walkdown::check::test {

class Forge {
 public:
  explicit Forge(const std::string& record);

  // The entries; the first with this kind, or the last.
  std::vector<record::Entry> entries;
  [[nodiscard]] std::size_t first(const std::string& kind) const;
  [[nodiscard]] std::size_t last(const std::string& kind) const;
  // The first of this kind whose body's member is `value`.
  [[nodiscard]] std::size_t first(const std::string& kind, const char* member,
                                  const nlohmann::json& value) const;

  // Numbered anew, and each commit sealed where the checkpoint of the original stood, by the
  // station's key of tests/record/scratch.h.
  [[nodiscard]] std::string sealed() const;

 private:
  std::vector<std::uint64_t> commits_;  // sizes at the original's checkpoints
};

}  // namespace walkdown::check::test
