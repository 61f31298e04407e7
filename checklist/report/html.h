// SPDX-License-Identifier: Apache-2.0
// The report as one HTML file: no script, no other file, drawings as SVG, made to be printed on A4
// or Letter and to be read without colour.
#pragma once

#include <string>

#include "checklist/report/model.h"

namespace walkdown::report {

[[nodiscard]] std::string html(const Model& model);

// The mark as a QR code (ISO/IEC 18004, error correction M), an <svg> of 29 modules or so. Empty
// where the text does not fit one, which a mark always does.
[[nodiscard]] std::string qr_svg(const std::string& text);

}  // namespace walkdown::report
