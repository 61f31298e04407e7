// SPDX-License-Identifier: Apache-2.0
// The checked wrapping of a show file: nothing inside is looked at before length and hash hold,
// since Boost.Serialization trusts what it reads.
#pragma once

#include <string>
#include <string_view>

#include "reader/result.h"

namespace walkdown::show {

// Magic (16 bytes), version of the envelope (4), length of the payload (8), SHA-256 (32) of the
// three before and the payload, payload. Integers are little-endian.
[[nodiscard]] std::string wrap(std::string_view payload);

// The payload, a view into `bytes`. Errors as in archive.h, unpack().
[[nodiscard]] Result<std::string_view> unwrap(std::string_view bytes, std::string_view file_name);

}  // namespace walkdown::show
