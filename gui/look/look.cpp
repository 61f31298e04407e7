// SPDX-License-Identifier: Apache-2.0
#include "gui/look/look.h"

#include <QApplication>
#include <QFontDatabase>
#include <QFontInfo>
#include <QFontMetrics>

#include "gui/look/style.h"

namespace walkdown::gui {

QFont Look::font(double times, bool bold) const {
  QFont font(QStringLiteral("DejaVu Sans"));
  font.setPixelSize(static_cast<int>(15.0 * times * text_pct / 100.0));
  font.setBold(bold);
  return font;
}

int Look::em(double times) const { return static_cast<int>(times * 15.0 * text_pct / 100.0); }

QPalette widget_palette(const Palette& palette) {
  QPalette out;
  out.setColor(QPalette::Window, palette[Tone::ground]);
  out.setColor(QPalette::WindowText, palette[Tone::text]);
  out.setColor(QPalette::Base, palette[Tone::ground]);
  out.setColor(QPalette::AlternateBase, palette[Tone::panel]);
  out.setColor(QPalette::Text, palette[Tone::text]);
  out.setColor(QPalette::PlaceholderText, palette[Tone::quiet]);
  out.setColor(QPalette::Button, palette[Tone::raised]);
  out.setColor(QPalette::ButtonText, palette[Tone::text]);
  out.setColor(QPalette::BrightText, palette[Tone::text]);
  out.setColor(QPalette::Highlight, palette[Tone::picked]);
  out.setColor(QPalette::HighlightedText, palette[Tone::picked_text]);
  out.setColor(QPalette::ToolTipBase, palette[Tone::panel]);
  out.setColor(QPalette::ToolTipText, palette[Tone::text]);
  out.setColor(QPalette::Link, palette[Tone::good]);
  for (const auto role : {QPalette::Light, QPalette::Midlight, QPalette::Mid, QPalette::Dark}) {
    out.setColor(role, palette[Tone::rule]);
  }
  out.setColor(QPalette::Shadow, palette[Tone::ground]);
  for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
    out.setColor(QPalette::Disabled, role, palette[Tone::quiet]);
  }
  return out;
}

void dress_application(const Look& look) {
  if (qApp->styleSheet().isEmpty()) {
    QApplication::setStyle(new Style);
  }
  QApplication::setPalette(widget_palette(look.palette()));
  QApplication::setFont(look.font());
  qApp->setStyleSheet(style_sheet(look));
}

bool has_font() {
  return !QFontDatabase::families().isEmpty() && !QFontInfo(QFont()).family().isEmpty();
}

}  // namespace walkdown::gui
