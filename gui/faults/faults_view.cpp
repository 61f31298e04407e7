// SPDX-License-Identifier: Apache-2.0
#include "gui/faults/faults_view.h"

#include <QPrintDialog>
#include <QPrinter>
#include <QVBoxLayout>
#include <algorithm>

#include "gui/faults/walk_sheet.h"
#include "gui/look/words.h"

namespace walkdown::gui {

FaultsView::FaultsView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      list_(new QListView),
      head_(label({}, 1.2, true)),
      kind_(label({}, 1.8, true)),
      where_(label({}, 1.5)),
      say_(label({}, 1.7)),
      sure_(quiet_label({})) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  panes_ = new TwoPane(make_list(), make_page(), 40);
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
  list_->setAccessibleName(tr("Faults in walking order"));
  list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
  auto* left = new QWidget;
  auto* layout = new QVBoxLayout(left);
  layout->setContentsMargins(0, 0, 0, 0);
  layout->addWidget(head_);
  layout->addWidget(list_, 1);
  layout->addWidget(button(tr("Print the walk sheet \u2026"), [this] { print(); }));
  left->setFocusProxy(list_);
  return left;
}

QWidget* FaultsView::make_page() {
  auto* page = new QWidget;
  auto* layout = new QVBoxLayout(page);
  layout->setAlignment(Qt::AlignTop);
  press_ = button(tr("Re-hooked: read again"), [this] { rehook(); });
  look_at_ = button(tr("Show in the field"), [this] {
    if (const Fault* fault = chosen(); fault != nullptr && !fault->pins.empty()) {
      Q_EMIT pin_wanted(fault->pins.front());
    }
  });
  for (QWidget* widget :
       std::initializer_list<QWidget*>{kind_, where_, say_, sure_, press_, look_at_}) {
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
  const int row = std::max(list_->currentIndex().row(), 0);
  auto faults = faults_of(session_.prepared().planned.plan, *shown_, rehooks);
  const auto left = std::count_if(faults.begin(), faults.end(), [](const Fault& fault) {
    return fault.step != Fault::Step::done;
  });
  head_->setText(left == 0
                     ? tr("Nothing is found. That is never more than what the tester can show.")
                     : tr("%n to do", nullptr, static_cast<int>(left)));
  model_.set(std::move(faults));
  choose(std::min(row, model_.rowCount({}) - 1));
  show_fault();
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
  press_->setVisible(to_do && !fault->pins.empty());
  look_at_->setVisible(any && !fault->pins.empty());
}

void FaultsView::rehook() {
  const Fault* fault = chosen();
  if (fault == nullptr || fault->step != Fault::Step::to_do || !shown_) return;
  const match::Finding finding = shown_->findings.at(fault->finding);
  audit::Rehook rehook;
  rehook.pins = finding.pins;
  rehook.why = finding.say;
  session_.act([rehook](desk::Desk& desk) { return desk::rehook(desk, rehook); }, this,
               [this, finding] { Q_EMIT rehooked(finding); });
}

void FaultsView::print() {
  QTextDocument sheet;
  fill_walk_sheet(sheet, model_.faults(), session_.now() ? session_.now()->mark : QString());
  QPrinter printer(QPrinter::HighResolution);
  QPrintDialog dialog(&printer, this);
  if (dialog.exec() == QDialog::Accepted) sheet.print(&printer);
}

void FaultsView::dress(const Look& look) {
  delegate_.dress(look);
  panes_->set_least_width(look.em(46));
  list_->doItemsLayout();
}

}  // namespace walkdown::gui
