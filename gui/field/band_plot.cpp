// SPDX-License-Identifier: Apache-2.0
#include "gui/field/band_plot.h"

#include <QPainter>
#include <algorithm>

#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

constexpr int kSide_px = 14;
constexpr std::size_t kMostDrawn = 200;  // the latest ones

}  // namespace

BandPlot::BandPlot(QWidget* parent) : QWidget(parent) {
  setAccessibleName(tr("Expected band and readings"));
  dress({});
}

void BandPlot::dress(const Look& look) {
  look_ = look;
  setMinimumHeight(look_.em(11));
  update();
}

void BandPlot::show_readings(std::optional<match::Band> band, std::vector<PinEvent> events,
                             double zero_ohm) {
  band_ = band;
  events_ = std::move(events);
  zero_ohm_ = zero_ohm;
  if (events_.size() > kMostDrawn) {
    events_.erase(events_.begin(), events_.end() - static_cast<std::ptrdiff_t>(kMostDrawn));
  }
  double low = band_ ? band_->worst.lo : 1e9;
  double high = band_ ? band_->worst.hi : -1e9;
  for (const PinEvent& event : events_) {
    if (!event.ohm) continue;
    low = std::min(low, *event.ohm - zero_ohm_);
    high = std::max(high, *event.ohm - zero_ohm_);
  }
  if (low > high) low = 0, high = 1;
  const double margin = std::max((high - low) * 0.25, 0.2);
  from_ohm_ = low - margin;
  to_ohm_ = high + margin;
  update();
}

double BandPlot::x_of(double ohm) const {
  return kSide_px + (ohm - from_ohm_) / (to_ohm_ - from_ohm_) * (width() - 2 * kSide_px);
}

void BandPlot::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), look_.palette()[Tone::ground]);
  painter.setPen(QPen(look_.palette()[Tone::rule], 1));
  painter.drawRect(rect().adjusted(0, 0, -1, -1));
  if (band_) paint_band(painter);
  paint_readings(painter);
}

// The worst case as a frame, what is likely (two standard uncertainties) hatched within it.
void BandPlot::paint_band(QPainter& painter) const {
  const Palette& palette = look_.palette();
  const double top = look_.em(1.8);
  const double foot = height() - look_.em(1.8);
  const double left = x_of(band_->worst.lo);
  const double right = x_of(band_->worst.hi);
  painter.setPen(QPen(palette[Tone::edge], 2));
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(QRectF(left, top, right - left, foot - top));
  const double likely = std::max(band_->mean_ohm - 2 * band_->u_ohm, band_->worst.lo);
  const double likely_to = std::min(band_->mean_ohm + 2 * band_->u_ohm, band_->worst.hi);
  painter.fillRect(QRectF(x_of(likely), top, x_of(likely_to) - x_of(likely), foot - top),
                   QBrush(palette[Tone::edge], Qt::BDiagPattern));
  painter.setFont(look_.font(0.9));
  painter.setPen(palette[Tone::text]);
  const QString low = number_words(band_->worst.lo, 2);
  const QString high = number_words(band_->worst.hi, 2);
  const QFontMetrics metrics(painter.font());
  const int gap = look_.em(0.4);
  const double low_x = std::max(2.0, left - metrics.horizontalAdvance(low) / 2.0);
  const double high_x = std::clamp(right - metrics.horizontalAdvance(high) / 2.0,
                                   low_x + metrics.horizontalAdvance(low) + gap,
                                   width() - metrics.horizontalAdvance(high) - 2.0);
  painter.drawText(QPointF(low_x, height() - gap), low);
  painter.drawText(QPointF(std::max(high_x, 2.0), height() - gap), high);
  painter.drawText(QRectF(4, 2, width() - 8, top), Qt::AlignLeft,
                   metrics.elidedText(tr("expected, in ohm"), Qt::ElideRight, width() - 8));
}

void BandPlot::paint_readings(QPainter& painter) const {
  const Palette& palette = look_.palette();
  if (events_.empty()) return;
  const double top = look_.em(2.4);
  const double step =
      (height() - look_.em(4.8)) / std::max<double>(1.0, static_cast<double>(events_.size()) - 1);
  const double half = std::max(3.5, look_.em(0.3) * 1.0);
  double y = top;
  for (const PinEvent& event : events_) {
    if (event.rehook) {
      painter.setPen(QPen(palette[Tone::text], 1, Qt::DashLine));
      painter.drawLine(QPointF(2, y), QPointF(width() - 2, y));
    } else if (event.ohm) {
      painter.setPen(QPen(palette[Tone::text], 1.5));
      painter.setBrush(event.counts ? QBrush(palette[Tone::text]) : QBrush(Qt::NoBrush));
      painter.drawEllipse(QPointF(x_of(*event.ohm - zero_ohm_), y), half, half);
    } else {
      painter.setPen(QPen(palette[Tone::bad], 2));
      const double x = width() - kSide_px;
      painter.drawLine(QPointF(x - half, y - half), QPointF(x + half, y));
      painter.drawLine(QPointF(x - half, y + half), QPointF(x + half, y));
    }
    y += step;
  }
}

}  // namespace walkdown::gui
