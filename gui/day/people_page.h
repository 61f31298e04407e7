// SPDX-License-Identifier: Apache-2.0
// Who is enrolled, who is in the field, whose tag hangs; going in and coming out.
#pragma once

#include <QComboBox>
#include <QVBoxLayout>

#include "gui/day/sign_dialog.h"

namespace walkdown::gui {

class PeoplePage : public QWidget {
  Q_OBJECT

 public:
  explicit PeoplePage(Session& session, QWidget* parent = nullptr);

  void see(const Snapshot& seen);

 private:
  void fill(const day::State& state);
  void add_person(const std::string& name, const QStringList& roles, const day::State& state);
  void go_in(const std::string& name);
  void come_out(const std::string& name, bool by_another);
  void tag_back(const std::string& name, bool by_another);

  Session& session_;
  QVBoxLayout* people_;
  QComboBox* position_;
  QByteArray filled_;
};

}  // namespace walkdown::gui
