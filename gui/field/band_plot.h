// SPDX-License-Identifier: Apache-2.0
// The band in which a sound pin reads, and every reading of the pin along it, the oldest at the
// top. Readings from before the last re-hook are hollow.
#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "gui/live/ledger.h"
#include "gui/look/look.h"
#include "reader/match/band.h"

namespace walkdown::gui {

class BandPlot : public QWidget {
  Q_OBJECT

 public:
  explicit BandPlot(QWidget* parent = nullptr);

  // `band` empty where nothing is planned. `zero_ohm`: taken off every reading before it is drawn.
  void show_readings(std::optional<match::Band> band, std::vector<PinEvent> events,
                     double zero_ohm);
  void dress(const Look& look);

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void paint_band(QPainter& painter) const;
  void paint_readings(QPainter& painter) const;
  [[nodiscard]] double x_of(double ohm) const;

  std::optional<match::Band> band_;
  std::vector<PinEvent> events_;
  double zero_ohm_ = 0;
  double from_ohm_ = 0;
  double to_ohm_ = 1;
  Look look_;
};

}  // namespace walkdown::gui
