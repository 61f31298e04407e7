// SPDX-License-Identifier: Apache-2.0
#include "gui/app/navigation.h"

#include <QPushButton>
#include <QShortcut>
#include <QVBoxLayout>
#include <algorithm>

#include "gui/parts/pieces.h"

namespace walkdown::gui {

Navigation::Navigation(QPushButton& opener, QWidget* parent)
    : QWidget(parent),
      opener_(opener),
      menu_(new QMenu(this)),
      inner_(new QWidget),
      names_(new QVBoxLayout),
      below_(new QVBoxLayout) {
  auto* layout = new QVBoxLayout(inner_);
  layout->setContentsMargins(4, 4, 4, 4);
  layout->addLayout(names_);
  layout->addStretch();
  layout->addLayout(below_);
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  outer->addWidget(scrolled(inner_));
  buttons_.setExclusive(true);
  connect(&buttons_, &QButtonGroup::idClicked, this, &Navigation::choose);
  setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Expanding);
  setAccessibleName(tr("Views"));
  opener_.setMenu(menu_);
}

void Navigation::add(const QString& name) {
  const int id = count();
  QPushButton* made = button(name, [] {});
  made->setCheckable(true);
  buttons_.addButton(made, id);
  names_->addWidget(made);
  add_to_menu(made);
  if (id >= 9) return;
  auto* shortcut = new QShortcut(QKeySequence(QStringLiteral("Ctrl+%1").arg(id + 1)), window());
  connect(shortcut, &QShortcut::activated, this, [this, id] { choose(id); });
}

void Navigation::choose(int index) {
  if (auto* button = buttons_.button(index)) button->setChecked(true);
  tell();
  Q_EMIT chosen(index);
}

QString Navigation::name(int index) const {
  const auto* button = buttons_.button(index);
  return button == nullptr ? QString() : button->text();
}

void Navigation::fit(int bar_px) {
  int widest = 0;
  for (const auto* each : inner_->findChildren<QPushButton*>()) {
    each->ensurePolished();
    widest = std::max(widest, each->sizeHint().width());
  }
  setFixedWidth(widest + 12 + bar_px);
  lay_out_again(this);
}

void Navigation::add_below(QPushButton* below) {
  if (below_->count() == 0) menu_->addSeparator();
  below_->addWidget(below);
  add_to_menu(below);
}

void Navigation::add_to_menu(QPushButton* button) {
  QAction* action = menu_->addAction(button->text());
  action->setCheckable(button->isCheckable());
  connect(action, &QAction::triggered, button, &QPushButton::click);
  connect(button, &QPushButton::toggled, action, &QAction::setChecked);
}

void Navigation::fold(bool folded) {
  setVisible(!folded);
  opener_.setVisible(folded);
  tell();
}

void Navigation::tell() {
  const QString now = name(buttons_.checkedId());
  opener_.setText(now + QStringLiteral(" \u25be"));
  opener_.setAccessibleDescription(now);
}

}  // namespace walkdown::gui
