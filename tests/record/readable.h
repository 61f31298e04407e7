// SPDX-License-Identifier: Apache-2.0
// What a person can read of a record or a page: without its hashes, keys, salts and signatures.
// They are chance, and sooner or later spell any short name or number that a test looks for.
#pragma once

#include <string>

namespace walkdown::record::test {

// Every run of 20 or more digits of base 64 or base 16 is left out; an unbroken word of that length
// is taken for one.
[[nodiscard]] std::string readable(const std::string& text);

}  // namespace walkdown::record::test
