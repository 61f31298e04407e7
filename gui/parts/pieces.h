// SPDX-License-Identifier: Apache-2.0
// Small pieces that every view is put together from.
#pragma once

#include <QFrame>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <functional>

namespace walkdown::gui {

// A label that wraps, whose text can be chosen with the mouse. `times`: of the text's size; it is
// kept when the text grows.
[[nodiscard]] QLabel* label(const QString& text, double times = 1.0, bool bold = false);
[[nodiscard]] QLabel* quiet_label(const QString& text);
void set_tone(QWidget* widget, const char* tone);  // "good", "warn", "bad"; "" for none
void set_flag(QWidget* widget, const char* name, bool on);

// A button with its text as accessible name.
[[nodiscard]] QPushButton* button(const QString& text, const std::function<void()>& pressed,
                                  const QString& accessible = {});

[[nodiscard]] QFrame* card();
// What Qt asks for a scroll bar is a third of a small window with large text.
inline constexpr int kLeastScrolled_px = 96;
// Scrolls up and down only; its widget is as wide as it is.
[[nodiscard]] QScrollArea* scrolled(QWidget* inner);

// Sets the fonts of all labels made above that are below `root` after the text size changed.
void dress_labels(QWidget* root);
// What is hidden does not notice that its text grew or shrank, and shows up as it was laid out
// before.
void lay_out_again(QWidget* root);
// As wide as what it says while it is empty.
void fit_placeholder(QLineEdit& line);
void clear_layout(QLayout* layout);

}  // namespace walkdown::gui
