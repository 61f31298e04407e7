// SPDX-License-Identifier: Apache-2.0
// Does what people ask for in a thread of its own, one after the other: opening a key takes about a
// second, writing waits for the disk. The answer comes back in the window's thread.
#pragma once

#include <QObject>
#include <QPointer>
#include <QThread>
#include <functional>

#include "checklist/desk/acts.h"
#include "checklist/desk/crew.h"
#include "checklist/desk/desk.h"

namespace walkdown::gui {

// Who signs, and how the key is opened. The passphrase is wiped once the key is open.
struct Pen {
  std::string name;
  std::string role;
  std::string passphrase;
};

class Doer : public QObject {
  Q_OBJECT

 public:
  using Act = std::function<desk::Entry(desk::Desk&)>;
  using Signed = std::function<desk::Entry(desk::Desk&, const desk::Signer&)>;
  using Then = std::function<void(const desk::Entry&)>;

  // `desk` outlives this.
  Doer(desk::Desk& desk, desk::Crew crew, QObject* parent = nullptr);
  ~Doer() override;

  // `then` is called in this object's thread, unless `owner` is gone by then.
  void act(Act act, QObject* owner, Then then);
  void sign(Pen pen, Signed act, QObject* owner, Then then);

  [[nodiscard]] const desk::Crew& crew() const { return crew_; }

 Q_SIGNALS:
  void busy(bool busy);

 private:
  void run(std::function<desk::Entry()> job, QObject* owner, Then then);

  desk::Desk& desk_;
  desk::Crew crew_;
  QThread thread_;
  QObject* there_;  // lives in thread_
  int running_ = 0;
};

}  // namespace walkdown::gui
