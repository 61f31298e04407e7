// SPDX-License-Identifier: Apache-2.0
// Work that may wait for a disk or takes its time, away from the window's thread.
#pragma once

#include <QCoreApplication>
#include <QPointer>
#include <QThreadPool>
#include <memory>
#include <utility>

namespace walkdown::gui {

// Does `job` in a thread of the pool; what it gives back goes to `then`, in the window's thread,
// unless `owner` is gone by then. Both must be copyable. Call it in the window's thread.
template <typename Job, typename Then>
void in_background(QObject* owner, Job job, Then then) {
  QThreadPool::globalInstance()->start(
      [guard = QPointer<QObject>(owner), job = std::move(job), then = std::move(then)] {
        auto made = std::make_shared<decltype(job())>(job());
        QMetaObject::invokeMethod(QCoreApplication::instance(), [guard, made, then] {
          if (guard) then(*made);
        });
      });
}

}  // namespace walkdown::gui
