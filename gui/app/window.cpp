// SPDX-License-Identifier: Apache-2.0
#include "gui/app/window.h"

#include <fmt/format.h>

#include <QCloseEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>
#include <cstdio>

#include "gui/app/demo.h"
#include "gui/app/look_dialog.h"
#include "gui/app/settings.h"
#include "gui/look/sentences.h"
#include "gui/look/words.h"
#include "gui/new_show/new_show_dialog.h"
#include "gui/parts/ask_file.h"
#include "gui/parts/background.h"
#include "gui/parts/pieces.h"
#include "gui/parts/reading_order.h"
#include "gui/parts/two_pane.h"

namespace walkdown::gui {
namespace {

constexpr int kSaid_ms = 15'000;

}  // namespace

Window::Window(QWidget* parent)
    : QWidget(parent),
      look_(kept_look()),
      strip_(new Strip),
      standing_(new StandingLine),
      said_(label({})),
      forget_(new QTimer(this)),
      layout_(new QVBoxLayout(this)) {
  setWindowTitle(QStringLiteral("walkdown"));
  setMinimumSize(1024, 700);
  resize(1280, 800);
  layout_->setContentsMargins(0, 0, 0, 0);
  layout_->setSpacing(0);
  layout_->addWidget(strip_);
  layout_->addWidget(standing_);
  said_->setMargin(6);
  said_->setObjectName(QStringLiteral("said"));
  said_->hide();
  forget_->setSingleShot(true);
  connect(forget_, &QTimer::timeout, this, [this] {
    said_->hide();
    standing_->give_way(false);
  });
  layout_->addWidget(said_);
  connect(strip_, &Strip::hold_called, this, &Window::call_hold);
  restoreGeometry(kept_geometry());
}

Window::~Window() {
  // The views point into the session.
  delete body_;
}

void Window::open(std::unique_ptr<Session> session, Demo* demo) {
  delete body_;
  body_ = nullptr;
  session_ = std::move(session);
  demo_ = demo;
  strip_->setVisible(true);
  body_ = new QWidget;
  auto* row = new QHBoxLayout(body_);
  row->setContentsMargins(0, 0, 0, 0);
  row->setSpacing(4);
  navigation_ = new Navigation(strip_->views_button(), body_);
  views_ = new Views(*session_);
  row->addWidget(navigation_);
  row->addWidget(views_, 1);
  layout_->addWidget(body_, 1);
  add_navigation();
  connect(session_.get(), &Session::seen, this, [this](const Seen& seen) {
    strip_->see(*seen, session_->checklist());
    standing_->see(*seen, session_->checklist());
  });
  connect(session_.get(), &Session::said, this, &Window::say);
  connect(&session_->listener(), &Listener::link_changed, strip_, &Strip::see_link);
  setWindowTitle(tr("%1 \u2013 walkdown").arg(QFileInfo(q(session_->path())).fileName()));
  dress(look_);
  navigation_->choose(std::clamp(kept_view(), 0, views_->count() - 1));
  views_->setFocus();
  session_->begin();
  if (demo_ != nullptr) views_->tester().listen(QString::fromStdString(demo_->port()));
}

void Window::start(const record::Clock& clock, Places places) {
  clock_ = &clock;
  places_ = std::move(places);
  start_ = new StartPage(kept_record());
  layout_->addWidget(start_, 1);
  body_ = start_;
  strip_->hide();
  connect(start_, &StartPage::last_wanted, this,
          [this] { open_later(kept_record().toStdString(), std::nullopt); });
  connect(start_, &StartPage::open_wanted, this, &Window::ask_for_record);
  connect(start_, &StartPage::new_wanted, this, &Window::ask_for_show);
  dress(look_);
}

void Window::ask_for_record() {
  const QString path = ask_to_open(this, tr("Open a record"));
  if (!path.isEmpty()) open_later(path.toStdString(), std::nullopt);
}

void Window::ask_for_show() {
  auto* dialog = new NewShowDialog(this);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->resize(size() * 0.85);
  connect(dialog, &QDialog::accepted, this,
          [this, dialog] { open_later(dialog->record().toStdString(), dialog->draft()); });
  dialog->open();
}

void Window::open_later(const std::string& path, const std::optional<ShowDraft>& draft) {
  if (start_) start_->say(tr("Reading the record \u2026"));
  in_background(
      this,
      [path, draft, places = places_, clock = clock_]() -> Result<desk::Desk> {
        if (!draft) return open_record(path, std::nullopt, places, *clock);
        const auto show = show_of(*draft);
        return show ? open_record(path, *show, places, *clock) : show.error();
      },
      [this, is_new = draft.has_value()](Result<desk::Desk>& desk) { opened(desk, is_new); });
}

void Window::refused(const Error& error) {
  if (start_) start_->say(translated(error));
}

void Window::opened(Result<desk::Desk>& desk, bool is_new) {
  if (!desk) return refused(desk.error());
  open(std::make_unique<Session>(std::move(desk).value(), crew_of(places_)), nullptr);
  keep_record(QFileInfo(q(session_->path())).absoluteFilePath());
  if (is_new) go(views_->indexOf(&views_->crew()));
}

void Window::open_demo_later(const std::string& folder) {
  if (start_) start_->say(tr("Making the demonstration \u2026"));
  struct Made {
    std::shared_ptr<Demo> demo;
    Result<desk::Desk> desk;
  };
  in_background(
      this,
      [folder, clock = clock_]() -> Made {
        auto demo = Demo::make(folder);
        if (!demo) return {nullptr, demo.error()};
        auto desk = (*demo)->open(*clock);
        return {std::move(demo).value(), std::move(desk)};
      },
      [this](Made& made) {
        if (!made.desk) return refused(made.desk.error());
        own_demo_ = made.demo;
        fmt::print("The demonstration's files are in {}\n", made.demo->folder());
        (void)std::fflush(stdout);
        open(std::make_unique<Session>(std::move(made.desk).value(), crew_of(made.demo->places())),
             made.demo.get());
      });
}

void Window::add_navigation() {
  for (const QString& name : views_->names()) navigation_->add(name);
  connect(navigation_, &Navigation::chosen, views_, &QStackedWidget::setCurrentIndex);
  connect(views_, &Views::view_wanted, this, &Window::go);
  if (demo_ != nullptr) {
    connect(&views_->faults(), &FaultsView::rehooked, this,
            [this](const match::Finding& finding) { demo_->mend(finding); });
    navigation_->add_below(button(
        tr("Demo: sweep"), [this] { demo_->sweep(); }, tr("The simulated tester reads every pin")));
    session_->set_passphrase_note(tr("A demonstration: everybody's passphrase is: %1")
                                      .arg(QString::fromLatin1(kDemoPassphrase)));
    say(tr("A demonstration: show, people and faults are invented. Everybody's passphrase is: %1")
            .arg(QString::fromLatin1(kDemoPassphrase)),
        {});
  }
  navigation_->add_below(button(
      tr("Light and text"), [this] { choose_look(); }, tr("Light and size of text")));
}

void Window::go(int view) { navigation_->choose(view); }

void Window::dress(const Look& look) {
  look_ = look;
  dress_application(look);
  dress_labels(this);
  strip_->dress(look);
  if (views_ != nullptr) views_->dress(look);
  lay_out_again(this);
  arrange();
}

// The names of the views stand beside the view where there is room for both.
void Window::arrange() {
  if (navigation_ == nullptr) return;
  navigation_->fit(look_.em(1.2));
  navigation_->fold(width() < look_.em(52) || height() < look_.em(36));
}

void Window::resizeEvent(QResizeEvent*) { arrange(); }

bool Window::focusNextPrevChild(bool next) { return focus_next(*this, next); }

void Window::choose_look() {
  auto* dialog = new LookDialog(look_, this);
  connect(dialog, &LookDialog::changed, this, [this](const Look& look) {
    dress(look);
    keep_look(look);
  });
  dialog->open();
}

void Window::call_hold() {
  if (!session_) return;
  session_->act([](desk::Desk& desk) { return desk::hold(desk, {}, {}); }, this);
}

void Window::say(const QString& sentence, const QString& tone) {
  said_->setText(sentence);
  set_tone(said_, tone.toLatin1().constData());
  said_->show();
  standing_->give_way(true);
  forget_->start(kSaid_ms);
}

void Window::closeEvent(QCloseEvent* event) {
  keep_geometry(saveGeometry());
  if (views_ != nullptr) {
    keep_view(views_->currentIndex());
    for (const TwoPane* each : views_->findChildren<TwoPane*>()) each->keep_share();
  }
  event->accept();
}

}  // namespace walkdown::gui
