// SPDX-License-Identifier: Apache-2.0
// Looks at the desk in a thread of its own: when something was written, and once a second because
// time passes. Everything that can wait for a lock, a disk or a diagnosis waits here.
#pragma once

#include <QObject>
#include <QTimer>
#include <atomic>
#include <memory>

#include "checklist/desk/desk.h"
#include "gui/live/snapshot.h"
#include "gui/live/tail.h"

namespace walkdown::gui {

class Watcher : public QObject {
  Q_OBJECT

 public:
  // `desk` outlives this. `gone_on`: entries that the record had when it was opened.
  explicit Watcher(desk::Desk& desk);
  ~Watcher() override;

  // In the thread this lives in.
  void begin();

 Q_SIGNALS:
  void rows(const walkdown::gui::Rows& rows);
  void seen(const walkdown::gui::Seen& seen);

 private:
  void written(std::uint64_t end);  // from a thread of the desk
  void look();
  [[nodiscard]] Snapshot snapshot() const;

  desk::Desk& desk_;
  Tail tail_;
  QTimer* soon_ = nullptr;
  QTimer* second_ = nullptr;
  std::atomic<std::uint64_t> end_{0};
  std::atomic<bool> called_{false};
  qint64 last_cost_ms_ = 0;
};

}  // namespace walkdown::gui
