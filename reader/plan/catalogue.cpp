// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/catalogue.h"

#include <algorithm>

namespace walkdown::plan {
namespace {

template <typename Named>
std::size_t index_of(const std::vector<Named>& all, std::string_view name) {
  const auto at =
      std::find_if(all.begin(), all.end(), [name](const Named& one) { return one.name == name; });
  return at == all.end() ? Catalogue::npos : static_cast<std::size_t>(at - all.begin());
}

}  // namespace

std::size_t Catalogue::igniter(std::string_view name) const { return index_of(igniters, name); }

std::size_t Catalogue::wire(std::string_view name) const { return index_of(wires, name); }

}  // namespace walkdown::plan
