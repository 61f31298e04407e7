// SPDX-License-Identifier: Apache-2.0
#include "gui/live/listener.h"

#include <variant>

#include "gui/look/words.h"
#include "reader/match/test_current.h"

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

Listener::Listener(desk::Desk& desk, QObject* parent) : QObject(parent), desk_(desk) {
  qRegisterMetaType<LinkWord>();
  qRegisterMetaType<WalkState>();
}

Listener::~Listener() { stop(); }

void Listener::stop() {
  stop_ = true;
  {
    const std::lock_guard lock(mutex_);
    if (link_ != nullptr) link_->stop();
  }
  if (thread_.joinable()) thread_.join();
  told_.reset();
  told_walk_.reset();
}

void Listener::listen(const std::string& path) {
  stop();
  stop_ = false;
  thread_ = std::thread([this, path] { run(path); });
}

void Listener::run(const std::string& path) {
  const audit::Planned& planned = desk_.prepared().planned;
  if (const Done may = match::may_read(planned.plan, planned.tester.model); !may) {
    return tell(LinkWord::trouble, q(may.error().sentence()));
  }
  auto link = tester::Link::open(path, planned.tester.port);
  if (!link) return tell(LinkWord::trouble, q(link.error().sentence()));
  {
    const std::lock_guard lock(mutex_);
    link_ = &*link;
  }
  const tester::LineParser parser = desk_.parser();
  cli::Intake intake(parser, walk_for(parser, planned), desk_.writer());
  tell(LinkWord::quiet, q(link->name()));
  tell_walk(intake);
  work(*link, intake);
  const std::lock_guard lock(mutex_);
  link_ = nullptr;
}

void Listener::work(tester::Link& link, cli::Intake& intake) {
  while (!stop_) {
    if (!step(link.next(kLook), intake)) return;
    grant(intake);
    tell_walk(intake);
  }
}

bool Listener::step(const tester::Event& event, cli::Intake& intake) {
  namespace what = tester::event;
  Done took = done();
  if (const auto* bytes = std::get_if<what::Bytes>(&event)) {
    took = intake.feed(bytes->bytes);
    tell(LinkWord::reading);
  } else if (std::holds_alternative<what::Quiet>(event)) {
    tell(LinkWord::quiet);
  } else if (std::holds_alternative<what::Unplugged>(event)) {
    took = intake.hang_up();
    tell(LinkWord::unplugged);
  } else if (std::holds_alternative<what::Back>(event)) {
    tell(LinkWord::quiet);
  } else if (const auto* trouble = std::get_if<what::Trouble>(&event)) {
    tell(LinkWord::trouble, q(trouble->error.sentence()));
  }
  if (!took) tell(LinkWord::trouble, q(took.error().sentence()));
  return took.ok() && !std::holds_alternative<what::Stopped>(event);
}

void Listener::grant(cli::Intake& intake) {
  std::deque<Wish> wishes;
  {
    const std::lock_guard lock(mutex_);
    wishes.swap(wishes_);
  }
  for (const Wish wish : wishes) {
    if (wish == Wish::skip) intake.skip();
    if (wish == Wish::back) intake.back();
    if (wish == Wish::open) intake.take_open();
  }
}

void Listener::tell_walk(const cli::Intake& intake) {
  const auto& walk = intake.walk();
  if (!walk) return;
  const auto now = std::make_pair(walk->done(), walk->waits_for_lift());
  if (told_walk_ == now) return;
  told_walk_ = now;
  Q_EMIT walk_changed({true, walk->current(), walk->done(), walk->of(), walk->waits_for_lift()});
}

void Listener::tell(LinkWord word, const QString& say) {
  if (told_ == word && say.isEmpty()) return;
  told_ = word;
  Q_EMIT link_changed(word, say);
}

void Listener::wish(Wish wish) {
  const std::lock_guard lock(mutex_);
  wishes_.push_back(wish);
}

void Listener::walk_skip() { wish(Wish::skip); }
void Listener::walk_back() { wish(Wish::back); }
void Listener::walk_take_open() { wish(Wish::open); }

}  // namespace walkdown::gui
