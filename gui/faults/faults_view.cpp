// SPDX-License-Identifier: Apache-2.0
#include "gui/faults/faults_view.h"

#include <QVBoxLayout>
#include <algorithm>

#include "gui/faults/fault_readings.h"
#include "gui/look/words.h"
#include "gui/parts/flow_layout.h"
#include "gui/parts/paper.h"
#include "gui/parts/top_layout.h"

namespace walkdown::gui {
namespace {

constexpr std::size_t kMostReadings = 12;

}  // namespace

FaultsView::FaultsView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      list_(new QListView),
      head_(label({}, 1.2, true)),
      kind_(label({}, 1.8, true)),
      where_(label({}, 1.5)),
      say_(label({}, 1.7)),
      sure_(quiet_label({})),
      readings_(label({})),
      from_(new QComboBox) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  panes_ = new TwoPane(QStringLiteral("faults"), make_list(), make_page(), 40);
  layout->addWidget(panes_);
  connect(list_->selectionModel(), &QItemSelectionModel::currentChanged, this,
          &FaultsView::show_fault);
  connect(list_, &QListView::clicked, panes_, &TwoPane::show_page);
  connect(list_, &QListView::activated, panes_, &TwoPane::show_page);
  show_fault();
}

QWidget* FaultsView::make_list() {
  list_->setModel(&model_);
  list_->setItemDelegate(&delegate_);
  list_->setMinimumHeight(kLeastScrolled_px);
  list_->setAccessibleName(tr("Faults in walking order"));
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  auto* left = new QWidget;
  auto* layout = new QVBoxLayout(left);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(head_);
  add_places();
  layout->addWidget(from_row_);
  layout->addWidget(list_, 1);
  layout->addWidget(button(tr("Print the walk sheet \u2026"), [this] { print(); }));
  left->setFocusProxy(list_);
  return left;
}

QWidget* FaultsView::make_page() {
  auto* page = new QWidget;
  auto* layout = new TopLayout(page);
  press_ = button(tr("Re-hooked: read again"), [this] { rehook(); });
  look_at_ = button(tr("Show in the field"), [this] {
    if (const Fault* fault = chosen(); fault != nullptr && !fault->pins.empty()) {
      Q_EMIT pin_wanted(fault->pins.front());
    }
  });
  next_ = button(tr("Next to do"), [this] { choose_next(); });
  for (QWidget* widget : std::initializer_list<QWidget*>{kind_, where_, say_, sure_, press_, next_,
                                                         look_at_, readings_}) {
    layout->addWidget(widget);
  }
  return scrolled(page);
}

const Fault* FaultsView::chosen() const {
  const int row = list_->currentIndex().row();
  if (row < 0 || row >= static_cast<int>(model_.faults().size())) return nullptr;
  return &model_.faults()[static_cast<std::size_t>(row)];
}

void FaultsView::choose(int row) { list_->setCurrentIndex(model_.index(row)); }

void FaultsView::see(const Seen& seen) {
  const auto& rehooks = session_.ledger().rehooks();
  if (shown_ == seen->outcome && shown_rehooks_ == rehooks.size()) return;
  shown_ = seen->outcome;
  shown_rehooks_ = rehooks.size();
  refill();
}

// Whoever has a fault before their eyes keeps it there, wherever it comes to stand in the list; and
// where it is gone, no other one slips under the finger.
void FaultsView::refill() {
  const Fault* before = chosen();
  auto faults = faults_of(session_.prepared().planned.plan, *shown_, session_.ledger().rehooks());
  walk(faults);
  // Before anybody looked, the first of the walk is chosen.
  const int row = first_look_ ? 0 : before == nullptr ? -1 : find_again(faults, before->pins);
  first_look_ = first_look_ && (faults.empty() || !isVisible());
  const auto left = std::count_if(faults.begin(), faults.end(), [](const Fault& fault) {
    return fault.step != Fault::Step::done;
  });
  head_->setText(left == 0
                     ? tr("Nothing is found. That is never more than what the tester can show.")
                     : tr("%n to do", nullptr, static_cast<int>(left)));
  model_.set(std::move(faults));
  choose(row);
  show_fault();
}

void FaultsView::add_places() {
  from_row_ = new QWidget;
  auto* row = new FlowLayout(from_row_);
  QLabel* name = quiet_label(tr("The walk begins"));
  name->setWordWrap(false);
  row->addWidget(name);
  row->addWidget(from_);
  from_->setAccessibleName(name->text());
  from_->addItem(tr("where the crew was last"), QString());
  const auto& site = session_.prepared().site;
  if (site) {
    for (const auto& position : site->positions) from_->addItem(q(position.name), q(position.name));
  }
  from_row_->setVisible(site.has_value());
  connect(from_, &QComboBox::currentIndexChanged, this, [this] {
    if (shown_) refill();
  });
}

void FaultsView::walk(std::vector<Fault>& faults) {
  const desk::Prepared& prepared = session_.prepared();
  std::string from = from_->currentData().toString().toStdString();
  if (from.empty()) from = last_place(prepared.planned.plan, session_.ledger().rehooks());
  auto asked = std::make_pair(std::move(from), positions_of(faults));
  if (asked != round_for_) {
    round_ = round_of(prepared.site ? &*prepared.site : nullptr, asked.first, asked.second);
    round_for_ = std::move(asked);
  }
  put_in_order(faults, round_.order);
}

void FaultsView::choose_next() {
  const auto& faults = model_.faults();
  const auto next = std::find_if(faults.begin(), faults.end(), [](const Fault& fault) {
    return fault.step == Fault::Step::to_do;
  });
  if (next != faults.end()) choose(static_cast<int>(next - faults.begin()));
}

void FaultsView::show_fault() {
  const Fault* fault = chosen();
  const bool any = fault != nullptr;
  kind_->setText(any ? fault->kind : tr("No fault is chosen"));
  where_->setText(any ? (fault->position.isEmpty() ? fault->where
                                                   : fault->position + QChar('\n') + fault->where)
                      : QString());
  say_->setText(any ? fault->say : QString());
  const bool to_do = any && fault->step == Fault::Step::to_do;
  QString sure = to_do ? tr("Confidence: %1 %").arg(fault->confidence_pct) : QString();
  if (to_do && !fault->runner_up.isEmpty()) sure += tr(". Or else: %1").arg(fault->runner_up);
  sure_->setText(sure);
  const bool read = to_do && shown_;
  readings_->setText(read ? readings_words(*shown_, fault->pins, kMostReadings).join(QChar('\n'))
                          : QString());
  press_->setVisible(to_do && !fault->pins.empty());
  look_at_->setVisible(any && !fault->pins.empty());
  next_->setVisible(any && !to_do && !positions_of(model_.faults()).empty());
}

void FaultsView::rehook() {
  const Fault* fault = chosen();
  if (fault == nullptr || fault->step != Fault::Step::to_do || !shown_) return;
  const match::Finding finding = shown_->findings.at(fault->finding);
  audit::Rehook rehook;
  rehook.pins = touched_by(session_.prepared().planned.plan, finding);
  rehook.why = finding.say;
  session_.act([rehook](desk::Desk& desk) { return desk::rehook(desk, rehook); }, this,
               [this, finding] { Q_EMIT rehooked(finding); });
}

SheetHead FaultsView::sheet_head() const {
  return {session_.now() ? session_.now()->mark : QString(), q(round_.from), round_.length_m};
}

void FaultsView::print() {
  ask_to_print(
      this,
      [faults = model_.faults(), outcome = shown_, head = sheet_head()] {
        auto sheet = std::make_unique<QTextDocument>();
        fill_walk_sheet(*sheet, faults, outcome ? *outcome : match::Outcome{}, head);
        return sheet;
      },
      [this](bool printed) {
        Q_EMIT session_.said(printed_words(printed), QLatin1String(printed ? "good" : "bad"));
      });
}

void FaultsView::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  first_look_ = first_look_ && model_.faults().empty();
}

void FaultsView::dress(const Look& look) {
  delegate_.dress(look);
  panes_->set_least_width(look.em(46));
  list_->doItemsLayout();
}

}  // namespace walkdown::gui
