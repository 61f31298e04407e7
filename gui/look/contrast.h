// SPDX-License-Identifier: Apache-2.0
// Contrast of two colours as WCAG 2.2 defines it.
#pragma once

#include <QColor>

namespace walkdown::gui {

// Relative luminance, 0 (black) .. 1 (white); WCAG 2.2, "relative luminance".
[[nodiscard]] double luminance(const QColor& colour);

// (L1 + 0.05) / (L2 + 0.05), the lighter one above: 1..21.
[[nodiscard]] double contrast(const QColor& a, const QColor& b);

inline constexpr double kTextContrast = 4.5;   // WCAG 2.2, 1.4.3, any size of text
inline constexpr double kShapeContrast = 3.0;  // WCAG 2.2, 1.4.11, what must be seen to understand

}  // namespace walkdown::gui
