// SPDX-License-Identifier: Apache-2.0
// How the window looks now: which light, and how large the text. Handed to every view.
#pragma once

#include <QFont>
#include <QPalette>
#include <QString>

#include "gui/look/palette.h"

namespace walkdown::gui {

inline constexpr int kLeastText_pct = 100;
inline constexpr int kMostText_pct = 200;

struct Look {
  Light light = Light::dusk;
  int text_pct = 100;  // 100..200

  [[nodiscard]] const Palette& palette() const { return gui::palette(light); }
  [[nodiscard]] QFont font(double times = 1.0, bool bold = false) const;
  // A length that grows with the text: so many tenths of the text's height.
  [[nodiscard]] int em(double times) const;

  friend bool operator==(const Look&, const Look&) = default;
};

[[nodiscard]] QPalette widget_palette(const Palette& palette);
// The style sheet of the whole window: edges, focus, sizes of what is pressed.
[[nodiscard]] QString style_sheet(const Look& look);

// Style, palette, font and sheet of the application.
void dress_application(const Look& look);

// Whether any font can be drawn with at all; without one every text is empty, and so is a PDF.
[[nodiscard]] bool has_font();

}  // namespace walkdown::gui
