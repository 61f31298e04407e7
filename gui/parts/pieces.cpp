// SPDX-License-Identifier: Apache-2.0
#include "gui/parts/pieces.h"

#include <QApplication>
#include <QEvent>
#include <QFontInfo>
#include <QLayout>
#include <QScrollBar>
#include <QStyle>
#include <QStyleOption>
#include <QVariant>

namespace walkdown::gui {
namespace {

constexpr const char* kTimes = "times";
constexpr const char* kBold = "bold";

// The application's font is the person's text size.
QFont sized(double times, bool bold) {
  QFont font = QApplication::font();
  font.setPixelSize(static_cast<int>(QFontInfo(font).pixelSize() * times));
  font.setBold(bold);
  return font;
}

// The style gives the widget back the font that it had when it was first polished: at 200 % text
// whatever changed its tone shrank.
void polish(QWidget* widget) {
  widget->style()->unpolish(widget);
  widget->style()->polish(widget);
  const QVariant times = widget->property(kTimes);
  if (times.isValid()) widget->setFont(sized(times.toDouble(), widget->property(kBold).toBool()));
}

}  // namespace

QLabel* label(const QString& text, double times, bool bold) {
  auto* made = new QLabel(text);
  made->setWordWrap(true);
  made->setTextFormat(Qt::PlainText);
  made->setProperty(kTimes, times);
  made->setProperty(kBold, bold);
  made->setFont(sized(times, bold));
  return made;
}

QLabel* quiet_label(const QString& text) {
  QLabel* made = label(text, 0.9);
  made->setProperty("quiet", true);
  return made;
}

void set_tone(QWidget* widget, const char* tone) {
  if (widget->property("tone").toString() == QLatin1String(tone)) return;
  widget->setProperty("tone", QString::fromLatin1(tone));
  polish(widget);
}

void set_flag(QWidget* widget, const char* name, bool on) {
  if (widget->property(name).toBool() == on) return;
  widget->setProperty(name, on);
  polish(widget);
}

QPushButton* button(const QString& text, const std::function<void()>& pressed,
                    const QString& accessible) {
  auto* made = new QPushButton(text);
  made->setAccessibleName(accessible.isEmpty() ? text : accessible);
  made->setAutoDefault(false);
  QObject::connect(made, &QPushButton::clicked, made, [pressed] { pressed(); });
  return made;
}

QFrame* card() {
  auto* made = new QFrame;
  made->setProperty("card", true);
  return made;
}

QScrollArea* scrolled(QWidget* inner) {
  auto* area = new QScrollArea;
  area->setWidgetResizable(true);
  area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  area->setFocusPolicy(Qt::NoFocus);
  area->setMinimumHeight(kLeastScrolled_px);
  area->setWidget(inner);
  inner->setMinimumWidth(0);
  return area;
}

void dress_labels(QWidget* root) {
  for (QLabel* each : root->findChildren<QLabel*>()) {
    const QVariant times = each->property(kTimes);
    if (times.isValid()) each->setFont(sized(times.toDouble(), each->property(kBold).toBool()));
  }
}

void lay_out_again(QWidget* root) {
  for (QWidget* each : root->findChildren<QWidget*>()) {
    if (each->layout() == nullptr) continue;
    each->layout()->invalidate();
    each->layout()->activate();
    QCoreApplication::postEvent(each, new QEvent(QEvent::LayoutRequest));
  }
}

void fit_placeholder(QLineEdit& line) {
  line.ensurePolished();
  QStyleOptionFrame option;
  option.initFrom(&line);
  option.rect = QRect(0, 0, 1000, 100);
  const QRect inside = line.style()->subElementRect(QStyle::SE_LineEditContents, &option, &line);
  // Qt keeps two pixels of its own on either side of the text.
  const int beside = option.rect.width() - inside.width() + 6;
  line.setMinimumWidth(QFontMetrics(line.font()).horizontalAdvance(line.placeholderText()) +
                       beside);
}

void clear_layout(QLayout* layout) {
  while (QLayoutItem* item = layout->takeAt(0)) {
    if (QWidget* widget = item->widget()) {
      widget->hide();
      widget->deleteLater();
    } else if (QLayout* inner = item->layout()) {
      clear_layout(inner);
    }
    delete item;
  }
}

}  // namespace walkdown::gui
