// SPDX-License-Identifier: Apache-2.0
// Whose keys are on this computer. Their folder is read in another thread; what it said last is at
// hand at once.
#pragma once

#include <QObject>
#include <vector>

#include "checklist/desk/crew.h"

namespace walkdown::gui {

class Members : public QObject {
  Q_OBJECT

 public:
  explicit Members(desk::Crew crew, QObject* parent = nullptr);

  // Reads the folder again; changed() follows where it says something else.
  void look();
  [[nodiscard]] const std::vector<desk::Member>& list() const { return list_; }

 Q_SIGNALS:
  void changed();

 private:
  void see(std::vector<desk::Member> list);

  desk::Crew crew_;
  std::vector<desk::Member> list_;
};

}  // namespace walkdown::gui
