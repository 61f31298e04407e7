// SPDX-License-Identifier: Apache-2.0
// Wind against its limits, and the thunder with the wait that runs.
#pragma once

#include <QLineEdit>
#include <QVBoxLayout>

#include "gui/live/session.h"
#include "gui/parts/pieces.h"
#include "gui/weather/wind_plot.h"

namespace walkdown::gui {

class WeatherView : public QWidget {
  Q_OBJECT

 public:
  explicit WeatherView(Session& session, QWidget* parent = nullptr);

  void see(const Seen& seen);
  void dress(const Look& look);

 Q_SIGNALS:
  void item_wanted(std::size_t item);  // the wind is answered in the checklist, signed

 private:
  void add_thunder(QVBoxLayout* layout);
  void hear();
  void take_winds();
  void fill_thunder(const Snapshot& seen);

  Session& session_;
  std::size_t wind_item_ = day::Checklist::npos;
  std::size_t thunder_item_ = day::Checklist::npos;
  WindPlot* plot_;
  QLabel* wind_now_;
  QLabel* wait_;
  QLineEdit* flash_;
  QVBoxLayout* heard_;
  std::vector<WindPoint> winds_;  // of the record, as far as they were looked at
  std::size_t filled_ = static_cast<std::size_t>(-1);
};

}  // namespace walkdown::gui
