// SPDX-License-Identifier: Apache-2.0
#include "gui/live/session.h"

#include "gui/live/watcher.h"
#include "gui/look/sentences.h"
#include "gui/look/words.h"

namespace walkdown::gui {

Session::Session(desk::Desk desk, desk::Crew crew, QObject* parent)
    : QObject(parent), desk_(std::move(desk)), members_(crew) {
  qRegisterMetaType<Rows>();
  qRegisterMetaType<Seen>();
  doer_ = std::make_unique<Doer>(desk_, std::move(crew));
  listener_ = std::make_unique<Listener>(desk_);
  watcher_ = new Watcher(desk_);
  watcher_->moveToThread(&watching_);
  connect(&watching_, &QThread::finished, watcher_, &QObject::deleteLater);
  connect(&watching_, &QThread::started, watcher_, &Watcher::begin);
  connect(watcher_, &Watcher::rows, this, [this](const Rows& rows) { ledger_.add(rows); });
  connect(watcher_, &Watcher::seen, this, [this](const Seen& seen) {
    now_ = seen;
    Q_EMIT this->seen(seen);
  });
}

Session::~Session() {
  listener_.reset();
  doer_.reset();
  watching_.quit();
  watching_.wait();
}

void Session::act(Doer::Act act, QObject* owner, const std::function<void()>& after) {
  doer_->act(std::move(act), owner, [this, after](const desk::Entry& entry) {
    if (!entry) {
      Q_EMIT said(translated(entry.error()), QStringLiteral("bad"));
      return;
    }
    Q_EMIT said(tr("Written as entry %1.").arg(*entry), QStringLiteral("good"));
    if (after) after();
  });
}

void Session::begin() {
  members_.look();
  watching_.start();
}

}  // namespace walkdown::gui
