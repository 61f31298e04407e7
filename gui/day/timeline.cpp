// SPDX-License-Identifier: Apache-2.0
#include "gui/day/timeline.h"

#include <QPainter>
#include <algorithm>

#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

constexpr std::int64_t kHour_ms = 3'600'000;
constexpr int kSide_px = 12;

}  // namespace

TimelineView::TimelineView(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("Timeline of the release"));
}

void TimelineView::see(Bars bars) {
  bars_ = std::move(bars);
  QStringList lines;
  for (const Bar& bar : bars_.bars) lines << bar.name + QStringLiteral(": ") + bar.say;
  setAccessibleDescription(lines.join(QChar('\n')));
  updateGeometry();
  setMinimumHeight(minimumSizeHint().height());
  update();
}

void TimelineView::dress(const Look& look) {
  look_ = look;
  setMinimumHeight(minimumSizeHint().height());
  update();
}

int TimelineView::row_height() const { return look_.em(3.9); }
int TimelineView::head_height() const { return look_.em(4.4); }

QSize TimelineView::minimumSizeHint() const {
  return {200, head_height() + static_cast<int>(bars_.bars.size()) * row_height() + look_.em(1)};
}

double TimelineView::x_of(std::int64_t at_ms) const {
  const double share = static_cast<double>(at_ms - bars_.from_ms) /
                       static_cast<double>(std::max<std::int64_t>(bars_.to_ms - bars_.from_ms, 1));
  return kSide_px + std::clamp(share, 0.0, 1.0) * (width() - 2 * kSide_px);
}

void TimelineView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.fillRect(rect(), look_.palette()[Tone::ground]);
  painter.setFont(look_.font());
  painter.setPen(look_.palette()[Tone::text]);
  if (bars_.bars.empty()) {
    painter.drawText(rect().adjusted(12, 12, -12, -12), Qt::AlignLeft | Qt::TextWordWrap,
                     tr("No show time is set, so nothing can be planned backwards from it."));
    return;
  }
  paint_hours(painter);
  paint_line(painter, bars_.show_ms, tr("show %1").arg(clock_words(bars_.show_ms)), 0);
  paint_line(painter, bars_.end_ms, tr("end %1").arg(clock_words(bars_.end_ms)), 1);
  paint_line(painter, bars_.now_ms, tr("now %1").arg(clock_words(bars_.now_ms)), 2);
  int top = head_height();
  for (const Bar& bar : bars_.bars) {
    paint_row(painter, bar, top);
    top += row_height();
  }
}

void TimelineView::paint_hours(QPainter& painter) const {
  painter.setPen(QPen(look_.palette()[Tone::rule], 1));
  for (std::int64_t at = bars_.from_ms / kHour_ms * kHour_ms; at <= bars_.to_ms; at += kHour_ms) {
    if (at < bars_.from_ms) continue;
    painter.drawLine(QPointF(x_of(at), head_height()), QPointF(x_of(at), height()));
  }
}

// Names stand on three levels, so that lines close together do not cover each other's.
void TimelineView::paint_line(QPainter& painter, std::int64_t at_ms, const QString& name,
                              int level) const {
  const double x = x_of(at_ms);
  const bool now = level == 2;
  painter.setPen(
      QPen(look_.palette()[Tone::text], now ? 3 : 1.5, level == 1 ? Qt::DashLine : Qt::SolidLine));
  const QFontMetrics metrics(look_.font(0.9, now));
  const int step = look_.em(1.4);
  painter.drawLine(QPointF(x, level * step + metrics.height()), QPointF(x, height()));
  painter.setFont(look_.font(0.9, now));
  const double room = metrics.horizontalAdvance(name);
  const double left = std::clamp(x - room / 2, 2.0, std::max(2.0, width() - room - 2.0));
  // No line of another goes through the words.
  painter.fillRect(QRectF(left - 2, level * step, room + 4, metrics.height()),
                   look_.palette()[Tone::ground]);
  painter.drawText(QPointF(left, level * step + metrics.ascent()), name);
}

void TimelineView::paint_row(QPainter& painter, const Bar& bar, int top) const {
  const Palette& palette = look_.palette();
  const QFont small = look_.font(0.9);
  const QFontMetrics metrics(small);
  painter.setPen(QPen(palette[Tone::rule], 1));
  painter.drawLine(0, top, width(), top);
  const int room = width() - 2 * kSide_px;
  // The upright lines stand behind the bars, not behind the words.
  painter.fillRect(QRect(0, top + 1, width(), 2 * metrics.height() + 2), palette[Tone::ground]);
  painter.setFont(look_.font(0.9, bar.late || bar.breaks_first));
  painter.setPen(palette[bar.late ? Tone::bad : bar.holds ? Tone::good : Tone::warn]);
  const int line = metrics.height();
  const QString say = (bar.late || bar.breaks_first) ? QStringLiteral("! ") + bar.say : bar.say;
  painter.drawText(QRect(kSide_px, top + 1 + line, room, line), Qt::AlignLeft,
                   QFontMetrics(painter.font()).elidedText(say, Qt::ElideRight, room));
  painter.setFont(small);
  painter.setPen(palette[Tone::text]);
  painter.drawText(QRect(kSide_px, top + 1, room, line), Qt::AlignLeft,
                   metrics.elidedText(bar.name, Qt::ElideRight, room));
  const double bar_top = top + 2 + 2.0 * line;
  paint_bar(painter, bar, QRectF(0, bar_top, width(), top + row_height() - bar_top - 3));
}

void TimelineView::paint_bar(QPainter& painter, const Bar& bar, const QRectF& row) const {
  const Palette& palette = look_.palette();
  if (bar.holds) {
    const double end = x_of(bar.until_ms.value_or(bars_.to_ms));
    painter.setPen(bar.breaks_first ? QPen(palette[Tone::text], 2) : QPen(Qt::NoPen));
    painter.setBrush(palette[Tone::good]);
    painter.drawRect(QRectF(x_of(bar.from_ms), row.top(), end - x_of(bar.from_ms), row.height()));
    return;
  }
  const Tone tone = bar.late ? Tone::bad : Tone::warn;
  const double latest = x_of(bar.latest_ms);
  const double first = x_of(std::max(bar.not_before_ms.value_or(bars_.from_ms), bars_.from_ms));
  painter.setPen(QPen(palette[tone], 1.5));
  painter.setBrush(Qt::NoBrush);
  if (latest > first) painter.drawRect(QRectF(first, row.top(), latest - first, row.height() - 1));
  painter.setBrush(palette[tone]);
  const double half = std::max(5.0, row.height() * 0.6);
  painter.drawPolygon(
      QPolygonF{{latest - half, row.top()}, {latest + half, row.top()}, {latest, row.bottom()}});
}

}  // namespace walkdown::gui
