// SPDX-License-Identifier: Apache-2.0
// Mean wind and gust over time with their limits: the mean as a solid line with discs, the gust as
// a broken line with crosses.
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "gui/look/look.h"

namespace walkdown::gui {

struct WindPoint {
  std::int64_t at_ms = 0;
  double mean_m_per_s = 0;
  double gust_m_per_s = 0;
};

class WindPlot : public QWidget {
  Q_OBJECT

 public:
  explicit WindPlot(QWidget* parent = nullptr);

  void see(std::vector<WindPoint> points, std::int64_t now_ms);
  void set_limits(std::optional<double> mean_m_per_s, std::optional<double> gust_m_per_s);
  void dress(const Look& look);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  [[nodiscard]] QPointF at(std::int64_t at_ms, double m_per_s) const;
  void paint_limit(QPainter& painter, double limit, const QString& name, Qt::PenStyle style,
                   bool below) const;
  void paint_axes(QPainter& painter) const;
  void paint_lines(QPainter& painter) const;

  std::vector<WindPoint> points_;
  std::optional<double> mean_limit_;
  std::optional<double> gust_limit_;
  std::int64_t from_ms_ = 0;
  std::int64_t to_ms_ = 1;
  double top_m_per_s_ = 15;
  Look look_;
};

}  // namespace walkdown::gui
