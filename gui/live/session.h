// SPDX-License-Identifier: Apache-2.0
// One open record in the window: the desk, and the threads round it. The views are given this, and
// hold nothing of the day themselves.
#pragma once

#include <QObject>
#include <QThread>
#include <memory>
#include <optional>

#include "checklist/desk/desk.h"
#include "gui/live/doer.h"
#include "gui/live/ledger.h"
#include "gui/live/listener.h"
#include "gui/live/members.h"
#include "gui/live/snapshot.h"

namespace walkdown::gui {

class Session : public QObject {
  Q_OBJECT

 public:
  Session(desk::Desk desk, desk::Crew crew, QObject* parent = nullptr);
  ~Session() override;

  // Reads what the record has and looks from then on. Connect before.
  void begin();

  [[nodiscard]] const desk::Prepared& prepared() const { return desk_.prepared(); }
  [[nodiscard]] const day::Checklist& checklist() const { return desk_.checklist(); }
  [[nodiscard]] const std::string& path() const { return desk_.path(); }
  [[nodiscard]] Ledger& ledger() { return ledger_; }
  [[nodiscard]] Doer& doer() { return *doer_; }
  [[nodiscard]] Listener& listener() { return *listener_; }
  [[nodiscard]] Members& members() { return members_; }
  [[nodiscard]] desk::Desk& desk() { return desk_; }
  // Shown where a passphrase is asked for: the demonstration's. Empty: nothing is shown.
  void set_passphrase_note(const QString& note) { passphrase_note_ = note; }
  [[nodiscard]] const QString& passphrase_note() const { return passphrase_note_; }
  // Anyone, unsigned; says how it went.
  void act(Doer::Act act, QObject* owner, const std::function<void()>& after = {});

  // The last snapshot; null before the first.
  [[nodiscard]] const Seen& now() const { return now_; }

 Q_SIGNALS:
  void seen(const walkdown::gui::Seen& seen);
  // A sentence for the person: what was written, or what was refused. `tone`: "good" or "bad".
  void said(const QString& sentence, const QString& tone);

 private:
  desk::Desk desk_;
  Ledger ledger_;
  Members members_;
  std::unique_ptr<Doer> doer_;
  std::unique_ptr<Listener> listener_;
  QThread watching_;
  class Watcher* watcher_;  // lives in watching_, which deletes it
  Seen now_;
  QString passphrase_note_;
};

}  // namespace walkdown::gui
