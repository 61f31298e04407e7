// SPDX-License-Identifier: Apache-2.0
// A record of a large field, read over and over: what a verifier's speed is measured on.
#pragma once

#include <string>

namespace walkdown::check::test {

// `pins` planned pins, `readings` readings of them in turn, 100 to a commit, and a claim of what
// they say at the end; all of it holds. Written to `path`. Takes some seconds for a million.
void write_big_record(const std::string& path, int pins, int readings);

}  // namespace walkdown::check::test
