// SPDX-License-Identifier: Apache-2.0
// The release: what stands against it, what waits for a second signature, the show time, the hold.
#pragma once

#include <QDateTimeEdit>
#include <QVBoxLayout>

#include "gui/day/sign_dialog.h"

namespace walkdown::gui {

class ReleasePage : public QWidget {
  Q_OBJECT

 public:
  explicit ReleasePage(Session& session, QWidget* parent = nullptr);

  void see(const Snapshot& seen);

 private:
  void fill(const Snapshot& seen);
  void add_waiting(const day::State& state);
  void add_release(const day::State& state);
  void add_show_time();
  void release();
  void second(const day::WaitingState& waiting);
  // `of`: the last hold that is on the screen.
  void lift(std::optional<quint64> of);

  Session& session_;
  QVBoxLayout* layout_;
  QVBoxLayout* now_;  // what changes with the state
  QDateTimeEdit* show_at_;
  QByteArray filled_;  // what is shown now: filled anew only when it changed
};

}  // namespace walkdown::gui
