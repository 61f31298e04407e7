// SPDX-License-Identifier: Apache-2.0
// The show as one file, for the stick between office and field. FORMAT.md beside this file has it
// byte by byte.
//
// The hash in the file tells damage, not forgery: anybody can write a show file. What makes a show
// evidence is that all of it goes into the first entry of a signed record.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "checklist/show/show.h"
#include "reader/result.h"

namespace walkdown::show {

inline constexpr std::size_t kMaxShowBytes = std::size_t{128} << 20U;  // of the whole file
inline constexpr unsigned kShowVersion = 2;  // what pack() writes; unpack() takes 1 to this

// Code::bad_input where the show could not be unpacked again: a name with a folder in it or with
// control characters, text that is not UTF-8, a temperature off -100..100 degC, more than
// kMaxShowBytes.
[[nodiscard]] Result<std::string> pack(const Show& show);

// Code::forged where the bytes are not those that were written (cut, longer, altered);
// Code::bad_input where it is no show file, was written by a newer walkdown, or holds what pack()
// would refuse. Every name is a bare file name: it can be written into a folder as it is.
// Allocates no more than a few times bytes.size(), whatever the bytes are.
[[nodiscard]] Result<Show> unpack(std::string_view bytes, std::string_view file_name);

// What pack() refuses, as a function of its own.
[[nodiscard]] Done check(const Show& show);

}  // namespace walkdown::show
