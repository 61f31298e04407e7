// SPDX-License-Identifier: Apache-2.0
// Listens to a tester in a thread of its own: bytes in, entries out. The window is told how the
// link is, and of the lines by the record alone.
#pragma once

#include <QObject>
#include <QString>
#include <atomic>
#include <deque>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <string>
#include <thread>
#include <vector>

#include "checklist/cli/intake.h"
#include "checklist/desk/desk.h"
#include "reader/plan/pin.h"
#include "reader/tester/link.h"

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
  // of the record's profile. Ends what was listened to before.
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
  enum class Wish : std::uint8_t { skip, back, open };
  void run(const std::string& path);
  void work(tester::Link& link, cli::Intake& intake);
  bool step(const tester::Event& event, cli::Intake& intake);
  void grant(cli::Intake& intake);
  void tell_walk(const cli::Intake& intake);
  void tell(LinkWord word, const QString& say = {});
  void wish(Wish wish);

  desk::Desk& desk_;
  std::thread thread_;
  std::mutex mutex_;
  tester::Link* link_ = nullptr;  // while it runs
  std::deque<Wish> wishes_;
  std::atomic<bool> stop_{false};
  std::optional<LinkWord> told_;
  std::optional<std::pair<std::size_t, bool>> told_walk_;
};

}  // namespace walkdown::gui

Q_DECLARE_METATYPE(walkdown::gui::LinkWord)
Q_DECLARE_METATYPE(walkdown::gui::WalkState)
