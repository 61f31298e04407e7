// SPDX-License-Identifier: Apache-2.0
#include "gui/live/listener.h"

#include <atomic>
#include <chrono>
#include <mutex>
#include <variant>

#include "gui/look/sentences.h"
#include "gui/look/words.h"
#include "reader/match/test_current.h"
#include "reader/tester/link.h"

namespace walkdown::gui {
namespace {

constexpr std::chrono::milliseconds kLook{100};  // how soon a wish of the walk is granted

std::optional<tester::Walk> walk_for(const tester::LineParser& parser,
                                     const audit::Planned& planned) {
  if (parser.addressed()) return std::nullopt;
  std::vector<plan::PinId> pins;
  pins.reserve(planned.plan.pins.size());
  for (const auto& pin : planned.plan.pins) pins.push_back(pin.id);
  return tester::Walk(std::move(pins), planned.tester.model);
}

}  // namespace

// All of it belongs to the run's thread but what the lock guards and `stopped`.
struct Listener::Run {
  Listener* listener = nullptr;  // waits for its runs before it goes
  std::atomic<bool> stopped{false};
  std::mutex mutex;
  tester::Link* link = nullptr;  // while it is open
  std::vector<std::function<void(cli::Intake&)>> wishes;
  std::optional<LinkWord> told;
  std::optional<std::pair<std::size_t, bool>> told_walk;

  void stop();
  void listen(tester::Link& open, cli::Intake& intake);
  bool step(const tester::Event& event, cli::Intake& intake);
  void grant(cli::Intake& intake);
  void tell(LinkWord word, const QString& say = {});
  void tell_walk(const cli::Intake& intake);
};

Listener::Listener(desk::Desk& desk, QObject* parent) : QObject(parent), desk_(desk) {
  qRegisterMetaType<LinkWord>();
  qRegisterMetaType<WalkState>();
}

Listener::~Listener() {
  stop();
  if (thread_.joinable()) thread_.join();
}

void Listener::stop() {
  if (!run_) return;
  run_->stop();
  run_.reset();
  // Behind whatever the run had to say still.
  QMetaObject::invokeMethod(
      this, [this] { Q_EMIT link_changed(LinkWord::none, {}); }, Qt::QueuedConnection);
}

void Listener::listen(const std::string& path) {
  stop();
  run_ = std::make_shared<Run>();
  run_->listener = this;
  thread_ = std::thread([this, path, run = run_, before = std::move(thread_)]() mutable {
    if (before.joinable()) before.join();
    work(*run, path);
  });
}

void Listener::work(Run& run, const std::string& path) {
  const audit::Planned& planned = desk_.prepared().planned;
  if (const Done may = match::may_read(planned.plan, planned.tester.model); !may) {
    return run.tell(LinkWord::trouble, translated(may.error()));
  }
  auto link = tester::Link::open(path, planned.tester.port);
  if (!link) return run.tell(LinkWord::trouble, translated(link.error()));
  const tester::LineParser parser = desk_.parser();
  cli::Intake intake(parser, walk_for(parser, planned), desk_.writer());
  run.listen(*link, intake);
}

void Listener::wish(const std::function<void(cli::Intake&)>& wish) {
  if (!run_) return;
  const std::lock_guard lock(run_->mutex);
  run_->wishes.push_back(wish);
}

void Listener::walk_skip() {
  wish([](cli::Intake& intake) { intake.skip(); });
}
void Listener::walk_back() {
  wish([](cli::Intake& intake) { intake.back(); });
}
void Listener::walk_take_open() {
  wish([](cli::Intake& intake) { intake.take_open(); });
}

void Listener::Run::stop() {
  const std::lock_guard lock(mutex);
  stopped = true;
  if (link != nullptr) link->stop();
}

void Listener::Run::listen(tester::Link& open, cli::Intake& intake) {
  {
    const std::lock_guard lock(mutex);
    link = &open;
  }
  tell(LinkWord::quiet, q(open.name()));
  tell_walk(intake);
  while (!stopped && step(open.next(kLook), intake)) {
    grant(intake);
    tell_walk(intake);
  }
  const std::lock_guard lock(mutex);
  link = nullptr;
}

bool Listener::Run::step(const tester::Event& event, cli::Intake& intake) {
  namespace what = tester::event;
  Done took = done();
  if (const auto* bytes = std::get_if<what::Bytes>(&event)) {
    took = intake.feed(bytes->bytes);
    tell(LinkWord::reading);
  } else if (std::holds_alternative<what::Quiet>(event) ||
             std::holds_alternative<what::Back>(event)) {
    tell(LinkWord::quiet);
  } else if (std::holds_alternative<what::Unplugged>(event)) {
    took = intake.hang_up();
    tell(LinkWord::unplugged);
  } else if (const auto* trouble = std::get_if<what::Trouble>(&event)) {
    tell(LinkWord::trouble, translated(trouble->error));
  }
  if (!took) tell(LinkWord::trouble, translated(took.error()));
  return took.ok() && !std::holds_alternative<what::Stopped>(event);
}

void Listener::Run::grant(cli::Intake& intake) {
  std::vector<std::function<void(cli::Intake&)>> granted;
  {
    const std::lock_guard lock(mutex);
    granted.swap(wishes);
  }
  for (const auto& each : granted) each(intake);
}

void Listener::Run::tell_walk(const cli::Intake& intake) {
  const auto& walk = intake.walk();
  if (!walk) return;
  const auto now = std::make_pair(walk->done(), walk->waits_for_lift());
  if (told_walk == now) return;
  told_walk = now;
  const std::lock_guard lock(mutex);
  if (stopped) return;
  Q_EMIT listener->walk_changed(
      {true, walk->current(), walk->done(), walk->of(), walk->waits_for_lift()});
}

// One that was stopped says nothing more: the next may be telling already.
void Listener::Run::tell(LinkWord word, const QString& say) {
  if (told == word && say.isEmpty()) return;
  told = word;
  const std::lock_guard lock(mutex);
  if (stopped) return;
  Q_EMIT listener->link_changed(word, say);
}

}  // namespace walkdown::gui
