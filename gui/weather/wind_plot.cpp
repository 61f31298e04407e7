// SPDX-License-Identifier: Apache-2.0
#include "gui/weather/wind_plot.h"

#include <QPainter>
#include <algorithm>

#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

constexpr std::int64_t kShown_ms = 2LL * 3600 * 1000;

}  // namespace

WindPlot::WindPlot(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("Wind and gust over the last two hours"));
  dress({});
}

void WindPlot::dress(const Look& look) {
  look_ = look;
  setMinimumHeight(look_.em(13));
  update();
}

void WindPlot::set_limits(std::optional<double> mean_m_per_s, std::optional<double> gust_m_per_s) {
  mean_limit_ = mean_m_per_s;
  gust_limit_ = gust_m_per_s;
  update();
}

void WindPlot::see(std::vector<WindPoint> points, std::int64_t now_ms) {
  points_ = std::move(points);
  to_ms_ = now_ms;
  from_ms_ = now_ms - kShown_ms;
  std::erase_if(points_, [&](const WindPoint& point) { return point.at_ms < from_ms_; });
  top_m_per_s_ = std::max(mean_limit_.value_or(10), gust_limit_.value_or(10)) * 1.25;
  for (const WindPoint& point : points_) {
    top_m_per_s_ = std::max(top_m_per_s_, point.gust_m_per_s * 1.1);
  }
  update();
}

QPointF WindPlot::at(std::int64_t at_ms, double m_per_s) const {
  const double left = look_.em(2.6);
  const double top = look_.em(1.4);
  const double foot = height() - look_.em(1.8);
  const double share =
      static_cast<double>(at_ms - from_ms_) / static_cast<double>(to_ms_ - from_ms_);
  return {left + share * (width() - left - 12), foot - m_per_s / top_m_per_s_ * (foot - top)};
}

void WindPlot::paint_axes(QPainter& painter) const {
  painter.setPen(look_.palette()[Tone::quiet]);
  painter.setFont(look_.font(0.85));
  const int unit = top_m_per_s_ > 25 ? 10 : 5;
  for (int v = 0; v < top_m_per_s_; v += unit) {
    const QPointF point = at(from_ms_, v);
    painter.setPen(look_.palette()[Tone::rule]);
    painter.drawLine(point, at(to_ms_, v));
    painter.setPen(look_.palette()[Tone::quiet]);
    painter.drawText(QPointF(4, point.y() + look_.em(0.3)), QString::number(v));
  }
  const QFontMetrics metrics(painter.font());
  const QString now = tr("now %1").arg(clock_words(to_ms_));
  painter.drawText(QPointF(at(from_ms_, 0).x(), height() - look_.em(0.4)), clock_words(from_ms_));
  painter.drawText(
      QPointF(width() - metrics.horizontalAdvance(now) - 6.0, height() - look_.em(0.4)), now);
  painter.drawText(QPointF(4, look_.em(1.0)), tr("m/s"));
}

void WindPlot::paint_limit(QPainter& painter, double limit, const QString& name, Qt::PenStyle style,
                           bool below) const {
  painter.setPen(QPen(look_.palette()[Tone::bad], 2, style));
  const QPointF left = at(from_ms_, limit);
  painter.drawLine(left, at(to_ms_, limit));
  const QFontMetrics metrics(painter.font());
  const QString text =
      name + QStringLiteral(": ") + number_words(limit, 1) + QStringLiteral(" m/s");
  const double up = below ? -metrics.ascent() - 3.0 : metrics.descent() + 2.0;
  const QRectF box(left.x() + 6, left.y() - up - metrics.ascent(),
                   metrics.horizontalAdvance(text) + 4, metrics.height());
  painter.fillRect(box, look_.palette()[Tone::ground]);  // no line of the scale through the words
  painter.drawText(box, Qt::AlignLeft, text);
}

void WindPlot::paint_lines(QPainter& painter) const {
  const Palette& palette = look_.palette();
  QPolygonF mean, gust;
  for (const WindPoint& point : points_) {
    mean << at(point.at_ms, point.mean_m_per_s);
    gust << at(point.at_ms, point.gust_m_per_s);
  }
  painter.setPen(QPen(palette[Tone::text], 2));
  painter.drawPolyline(mean);
  painter.setBrush(palette[Tone::text]);
  for (const QPointF& point : mean) painter.drawEllipse(point, 4, 4);
  painter.setPen(QPen(palette[Tone::text], 1.5, Qt::DashLine));
  painter.drawPolyline(gust);
  painter.setPen(QPen(palette[Tone::text], 2));
  for (const QPointF& point : gust) {
    painter.drawLine(point + QPointF(-4, -4), point + QPointF(4, 4));
    painter.drawLine(point + QPointF(-4, 4), point + QPointF(4, -4));
  }
}

void WindPlot::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), look_.palette()[Tone::ground]);
  paint_axes(painter);
  painter.setFont(look_.font(0.9));
  if (mean_limit_) paint_limit(painter, *mean_limit_, tr("limit of the mean"), Qt::SolidLine, true);
  if (gust_limit_) paint_limit(painter, *gust_limit_, tr("limit of the gust"), Qt::DashLine, false);
  if (points_.empty()) {
    painter.setPen(look_.palette()[Tone::text]);
    const QPointF top = at(from_ms_, 0);
    painter.drawText(
        QRectF(top.x() + 6, top.y() - look_.em(4), width() - top.x() - 12, look_.em(4)),
        Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap,
        tr("No wind is in the record for the last two hours."));
  }
  paint_lines(painter);
}

}  // namespace walkdown::gui
