// SPDX-License-Identifier: Apache-2.0
// A text as a QR code in a terminal (ISO/IEC 18004), and such a text as it comes back from a
// camera.
#pragma once

#include <string>
#include <string_view>

#include "reader/result.h"

namespace walkdown::cli {

// Two rows of the code to a line of half blocks, with its quiet zone; dark on light in any
// terminal, as the colours are set. bad_input: the text is longer than a code holds (2331 bytes).
[[nodiscard]] Result<std::string> qr_text(const std::string& text);

// What a camera, a mail or a clipboard does to a text undone: CR LF is LF, and it ends in one LF.
[[nodiscard]] std::string as_carried(std::string_view text);

}  // namespace walkdown::cli
