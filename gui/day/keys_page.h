// SPDX-License-Identifier: Apache-2.0
// Each key: in exactly one hand or place. The receiver signs first, and the giver holds it until
// the giver has signed too.
#pragma once

#include <QVBoxLayout>

#include "gui/day/sign_dialog.h"

namespace walkdown::gui {

class KeysPage : public QWidget {
  Q_OBJECT

 public:
  explicit KeysPage(Session& session, QWidget* parent = nullptr);

  void see(const Snapshot& seen);

 private:
  void fill(const day::State& state);
  void add_key(std::size_t index, const day::KeyState& key);
  void add_buttons(QLayout* buttons, const day::Key& key, const day::KeyState& now);

  Session& session_;
  QVBoxLayout* keys_;
  QByteArray filled_;
};

}  // namespace walkdown::gui
