// SPDX-License-Identifier: Apache-2.0
#include "gui/live/watcher.h"

#include <QElapsedTimer>
#include <algorithm>

#include "checklist/record/merkle.h"
#include "gui/look/sentences.h"
#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

constexpr int kSecond_ms = 1000;
constexpr qint64 kSoonest_ms = 40;  // a frame or two: many entries make one look
constexpr std::size_t kTold = 12;

}  // namespace

Watcher::Watcher(desk::Desk& desk) : desk_(desk), tail_(desk.path()) {
  desk_.listen([this](desk::Written entries) { written(entries.end); });
}

Watcher::~Watcher() { desk_.listen({}); }

void Watcher::begin() {
  soon_ = new QTimer(this);
  soon_->setSingleShot(true);
  connect(soon_, &QTimer::timeout, this, &Watcher::look);
  second_ = new QTimer(this);
  connect(second_, &QTimer::timeout, this, [this] {
    // An error of the clocks is the medium's, and is told by the snapshot.
    static_cast<void>(desk_.look());
    look();
  });
  second_->start(kSecond_ms);
  look();
}

void Watcher::written(std::uint64_t end) {
  end_.store(end);
  if (called_.exchange(true)) return;
  // A look that takes long is made the more seldom: at most half of the time goes into looking.
  QMetaObject::invokeMethod(this, [this] {
    if (soon_ != nullptr && !soon_->isActive()) {
      soon_->start(static_cast<int>(std::max(kSoonest_ms, last_cost_ms_)));
    }
  });
}

void Watcher::look() {
  called_.store(false);
  QElapsedTimer timer;
  timer.start();
  auto seen = std::make_shared<const Snapshot>(snapshot());
  Rows fresh = tail_.read_below(seen->state.entries);
  if (!fresh.empty()) Q_EMIT rows(fresh);
  Q_EMIT this->seen(seen);
  last_cost_ms_ = timer.elapsed();
}

Snapshot Watcher::snapshot() const {
  Snapshot out;
  out.now = desk_.now();
  out.outcome = desk_.outcome();
  out.state = desk_.state();
  out.schedule = desk_.schedule();
  out.counts = desk_.counts();
  out.told = desk_.told(kTold);
  out.mark = q(record::mark(desk_.head().root));
  if (const auto why = desk_.disagrees()) out.trouble = q(*why);
  if (const Done health = desk_.health(); !health) out.trouble = translated(health.error());
  return out;
}

}  // namespace walkdown::gui
