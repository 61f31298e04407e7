// SPDX-License-Identifier: Apache-2.0
#include <QRegularExpression>
#include <algorithm>

#include "gui/look/look.h"

namespace walkdown::gui {
namespace {

// @name is a colour, #n. is n tenths of the text's height in pixels, ~n. two pixels less: what has
// the focus has a border that is two pixels wider, and no more room for it.
constexpr const char* kSheet = R"(
QFrame[card="true"] { background: @panel; border: 1px solid @rule; border-radius: 3px; }
QLabel[quiet="true"] { color: @quiet; }
QLabel[tone="good"] { color: @good; }
QLabel[tone="warn"] { color: @warn; }
QLabel[tone="bad"] { color: @bad; }
QLabel[alarm="true"] { background: @alarm; color: @alarm_text; }
QPushButton, QToolButton { background: @raised; border: 1px solid @edge; border-radius: 3px;
  padding: 10px #8.px; min-height: #13.px; }
QPushButton:focus, QToolButton:focus, QLineEdit:focus, QComboBox:focus, QPlainTextEdit:focus,
QTextBrowser:focus, QAbstractItemView:focus, QSpinBox:focus, QDateTimeEdit:focus,
QListView:focus { border: 3px solid @focus; }
QPushButton:focus, QToolButton:focus { padding: 8px ~8.px; }
QPushButton:pressed, QPushButton:checked, QToolButton:checked { background: @picked;
  color: @picked_text; }
QPushButton:checked:focus { border: 3px solid @picked_text; }
QPushButton:disabled, QToolButton:disabled { color: @quiet; border: 1px dashed @rule;
  background: @panel; }
QPushButton[alarm="true"] { background: @alarm; color: @alarm_text; font-weight: bold; }
QLineEdit, QComboBox, QSpinBox, QDateTimeEdit { background: @ground; border: 1px solid @edge;
  border-radius: 3px; padding: #2.px #4.px; min-height: #20.px; }
QLineEdit:focus, QComboBox:focus, QSpinBox:focus, QDateTimeEdit:focus {
  padding: ~2.px ~4.px; }
QComboBox::drop-down { width: #20.px; border: none; }
QComboBox::down-arrow { width: 0; height: 0; border-left: #4.px solid @ground;
  border-right: #4.px solid @ground; border-top: #6.px solid @text; }
QComboBox QAbstractItemView { background: @ground; border: 1px solid @edge; }
QPlainTextEdit, QTextBrowser { background: @ground; border: 1px solid @edge; border-radius: 3px; }
QAbstractItemView { background: @ground; alternate-background-color: @panel;
  border: 1px solid @rule; gridline-color: @rule; }
QAbstractItemView::item:selected { background: @picked; color: @picked_text; }
QHeaderView::section { background: @panel; color: @text; border: none;
  border-right: 1px solid @rule; border-bottom: 1px solid @edge; padding: #3.px #5.px; }
QScrollBar:vertical { background: @ground; width: #12.px; }
QScrollBar:horizontal { background: @ground; height: #12.px; }
QScrollBar::handle { background: @raised; border: 1px solid @edge; border-radius: 3px;
  min-height: #30.px; min-width: #30.px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: @ground; }
QCheckBox, QRadioButton { spacing: #6.px; min-height: #24.px; padding: 0 #3.px; }
QCheckBox:focus, QRadioButton:focus { border: 2px solid @focus; }
QCheckBox::indicator, QRadioButton::indicator { width: #14.px; height: #14.px;
  border: 2px solid @edge; background: @ground; }
QRadioButton::indicator { border-radius: #9.px; }
QCheckBox::indicator:checked, QRadioButton::indicator:checked { background: @text; }
QPushButton::menu-indicator { image: none; width: 0; }
QSpinBox::up-button, QDateTimeEdit::up-button, QSpinBox::down-button, QDateTimeEdit::down-button {
  subcontrol-origin: padding; subcontrol-position: center right; width: #32.px; height: #23.px;
  background: @raised; border: none; border-left: 1px solid @edge; }
QSpinBox::down-button, QDateTimeEdit::down-button { right: #33.px; }
QSpinBox::up-arrow, QDateTimeEdit::up-arrow { width: 0; height: 0;
  border-left: #5.px solid @raised; border-right: #5.px solid @raised;
  border-bottom: #8.px solid @text; }
QSpinBox::down-arrow, QDateTimeEdit::down-arrow { width: 0; height: 0;
  border-left: #5.px solid @raised; border-right: #5.px solid @raised;
  border-top: #8.px solid @text; }
QMenu { background: @panel; border: 2px solid @edge; }
QMenu::item { padding: #7.px #24.px; border: 3px solid @panel; }
QMenu::item:selected { border: 3px solid @focus; }
QMenu::item:checked { background: @picked; color: @picked_text; }
QMenu::indicator { width: 0; }
QMenu::separator { height: 1px; background: @rule; }
QToolTip { background: @panel; color: @text; border: 1px solid @edge; }
QSplitter::handle { background: @rule; }
QScrollArea { border: none; }
)";

constexpr std::array kToneNames{"ground", "panel", "raised", "text",   "quiet",
                                "rule",   "edge",  "focus",  "picked", "picked_text",
                                "good",   "warn",  "bad",    "alarm",  "alarm_text"};
static_assert(kToneNames.size() == kTones);

QString replaced(const QRegularExpression& pattern, const QString& in, auto&& put) {
  QString out;
  qsizetype at = 0;
  for (auto it = pattern.globalMatch(in); it.hasNext();) {
    const auto match = it.next();
    out += in.mid(at, match.capturedStart() - at) + put(match.captured(1));
    at = match.capturedEnd();
  }
  return out + in.mid(at);
}

QString colour_of(const Palette& palette, const QString& name) {
  for (std::size_t i = 0; i < kToneNames.size(); ++i) {
    if (name == QLatin1String(kToneNames.at(i))) return palette.tones.at(i).name();
  }
  return name;
}

}  // namespace

QString style_sheet(const Look& look) {
  static const QRegularExpression colour(QStringLiteral("@([a-z_]+)"));
  static const QRegularExpression length(QStringLiteral("([#~]\\d+)\\."));
  const QString coloured = replaced(colour, QString::fromLatin1(kSheet), [&](const QString& name) {
    return colour_of(look.palette(), name);
  });
  return replaced(length, coloured, [&](const QString& tenths) {
    const int px = look.em(tenths.mid(1).toInt() / 10.0);
    return QString::number(tenths.startsWith(QLatin1Char('~')) ? std::max(px - 2, 0) : px);
  });
}

}  // namespace walkdown::gui
