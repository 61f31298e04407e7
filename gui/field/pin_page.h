// SPDX-License-Identifier: Apache-2.0
// One pin: its plan, the expected band with all its readings, its history, its findings.
#pragma once

#include <QByteArray>
#include <QVBoxLayout>
#include <QWidget>
#include <optional>

#include "gui/field/band_plot.h"
#include "gui/live/session.h"
#include "gui/look/look.h"

class QLabel;

namespace walkdown::gui {

class PinPage : public QWidget {
  Q_OBJECT

 public:
  explicit PinPage(Session& session, QWidget* parent = nullptr);

  void show_pin(plan::PinId pin);
  void see(const Snapshot& seen);
  void dress(const Look& look);

 Q_SIGNALS:
  void group_wanted(const std::vector<walkdown::plan::PinId>& pins);

 private:
  [[nodiscard]] QByteArray key(const Snapshot& seen) const;
  void fill(const Snapshot& seen);
  void fill_head(const match::PinVerdict* verdict);
  void fill_current(const match::Outcome& outcome);
  void fill_findings(const match::Outcome& outcome);
  void fill_alike(QLayout* buttons);
  void fill_history(const std::vector<PinEvent>& events);
  void fill_buttons(const match::PinVerdict* verdict);
  [[nodiscard]] QString event_words(const PinEvent& event) const;

  Session& session_;
  std::vector<std::vector<plan::PinId>> alike_;
  std::optional<plan::PinId> pin_;
  QVBoxLayout* layout_;
  QVBoxLayout* top_;
  QVBoxLayout* below_;
  BandPlot* plot_;
  QByteArray filled_;  // what is shown now: filled anew only when it changed
};

}  // namespace walkdown::gui
