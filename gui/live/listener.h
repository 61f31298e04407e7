// SPDX-License-Identifier: Apache-2.0
// Listens to a tester in a thread of its own: bytes in, entries out. The window is told how the
// link is, and of the lines by the record alone.
#pragma once

#include <QObject>
#include <QString>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <thread>
#include <vector>

#include "checklist/cli/intake.h"
#include "checklist/desk/desk.h"
#include "reader/plan/pin.h"

namespace walkdown::gui {

enum class LinkWord : std::uint8_t { none, quiet, reading, unplugged, trouble };

// How the walk of a meter without addresses stands.
struct WalkState {
  bool walking = false;
  std::optional<plan::PinId> pin;  // to hold the probe to; empty: all are walked
  std::size_t done = 0;
  std::size_t of = 0;
  bool lift_first = false;
};

class Listener : public QObject {
  Q_OBJECT

 public:
  // `desk` outlives this.
  explicit Listener(desk::Desk& desk, QObject* parent = nullptr);
  ~Listener() override;

  // Opens the port in the thread; how it went comes by link_changed. The tester's lines are those
  // of the record's profile. Ends what was listened to before. Neither of these waits: a port that
  // is slow to open or to close keeps its own thread alone.
  void listen(const std::string& path);
  void stop();

  // Of the walk; nothing happens where none is going on.
  void walk_skip();
  void walk_back();
  void walk_take_open();

 Q_SIGNALS:
  void link_changed(walkdown::gui::LinkWord word, const QString& say);
  void walk_changed(const walkdown::gui::WalkState& state);

 private:
  // One port that is, or was, listened to.
  struct Run;
  void work(Run& run, const std::string& path);
  void wish(const std::function<void(cli::Intake&)>& wish);

  desk::Desk& desk_;
  std::shared_ptr<Run> run_;
  std::thread thread_;  // of run_; joins the one before it
};

}  // namespace walkdown::gui

Q_DECLARE_METATYPE(walkdown::gui::LinkWord)
Q_DECLARE_METATYPE(walkdown::gui::WalkState)
