// SPDX-License-Identifier: Apache-2.0
#include "gui/live/doer.h"

#include <sodium.h>

namespace walkdown::gui {

Doer::Doer(desk::Desk& desk, desk::Crew crew, QObject* parent)
    : QObject(parent), desk_(desk), crew_(std::move(crew)), there_(new QObject) {
  there_->moveToThread(&thread_);
  connect(&thread_, &QThread::finished, there_, &QObject::deleteLater);
  thread_.start();
}

Doer::~Doer() {
  thread_.quit();
  thread_.wait();
}

void Doer::run(std::function<desk::Entry()> job, QObject* owner, Then then) {
  if (running_++ == 0) Q_EMIT busy(true);
  QMetaObject::invokeMethod(there_, [this, job = std::move(job), then = std::move(then),
                                     guard = QPointer<QObject>(owner)] {
    auto result = std::make_shared<desk::Entry>(job());
    QMetaObject::invokeMethod(this, [this, result, then, guard] {
      if (--running_ == 0) Q_EMIT busy(false);
      if (guard) then(*result);
    });
  });
}

void Doer::act(Act act, QObject* owner, Then then) {
  run([this, act = std::move(act)] { return act(desk_); }, owner, std::move(then));
}

void Doer::sign(Pen pen, Signed act, QObject* owner, Then then) {
  run(
      [this, pen = std::move(pen), act = std::move(act)]() mutable -> desk::Entry {
        auto key = crew_.load(pen.name, pen.passphrase);
        sodium_memzero(pen.passphrase.data(), pen.passphrase.size());
        if (!key) return key.error();
        return act(desk_, desk::Signer{std::move(key).value(), pen.name, pen.role});
      },
      owner, std::move(then));
}

}  // namespace walkdown::gui
