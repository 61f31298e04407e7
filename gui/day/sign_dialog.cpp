// SPDX-License-Identifier: Apache-2.0
#include "gui/day/sign_dialog.h"

#include <QFormLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "gui/look/sentences.h"
#include "gui/look/words.h"
#include "gui/parts/pieces.h"

namespace walkdown::gui {

SignDialog::SignDialog(Session& session, Ask ask, Deed deed, QWidget* parent)
    : Dialog(34, parent),
      session_(session),
      ask_(std::move(ask)),
      deed_(std::move(deed)),
      who_(new QComboBox),
      reason_(new QLineEdit),
      passphrase_(new QLineEdit),
      trouble_(label({})),
      sign_(button(tr("Sign"), [this] { sign(); })) {
  setWindowTitle(ask_.title);
  setObjectName(QStringLiteral("sign"));
  QVBoxLayout* layout = body();
  layout->addWidget(label(ask_.title, 1.3, true));
  layout->addWidget(label(ask_.statement));
  if (!ask_.reason.isEmpty()) {
    layout->addWidget(quiet_label(ask_.reason));
    layout->addWidget(reason_);
  }
  layout->addWidget(quiet_label(tr("Who signs")));
  layout->addWidget(who_);
  layout->addWidget(quiet_label(tr("Passphrase of that person's key")));
  layout->addWidget(passphrase_);
  if (!session.passphrase_note().isEmpty()) {
    layout->addWidget(quiet_label(session.passphrase_note()));
  }
  layout->addWidget(trouble_);
  foot()->addWidget(button(tr("Cancel"), [this] { reject(); }));
  foot()->addWidget(sign_);
  reason_->setAccessibleName(ask_.reason);
  reason_->setObjectName(QStringLiteral("reason"));
  who_->setAccessibleName(tr("Who signs"));
  who_->setObjectName(QStringLiteral("who"));
  passphrase_->setAccessibleName(tr("Passphrase"));
  passphrase_->setObjectName(QStringLiteral("passphrase"));
  passphrase_->setEchoMode(QLineEdit::Password);
  connect(passphrase_, &QLineEdit::returnPressed, this, &SignDialog::sign);
  set_tone(trouble_, "bad");
  add_people();
  connect(&session_.members(), &Members::changed, this, &SignDialog::add_people);
  session_.members().look();
  (ask_.reason.isEmpty() ? passphrase_ : reason_)->setFocus();
}

bool SignDialog::may(const day::Enrolled& person) const {
  if (!ask_.person.empty() && person.name != ask_.person) return false;
  return ask_.roles.empty() || day::contains(ask_.roles, person.role);
}

void SignDialog::add_people() {
  if (!session_.now()) return;
  const QVariant chosen = who_->currentData();
  who_->clear();
  trouble_->clear();
  const auto& members = session_.members().list();
  for (const day::Enrolled& person : session_.now()->state.people) {
    if (!may(person)) continue;
    const bool here = std::any_of(members.begin(), members.end(), [&](const desk::Member& member) {
      return member.name == person.name && record::text(member.key) == person.vkey;
    });
    if (!here) continue;
    who_->addItem(QStringLiteral("%1 (%2)").arg(q(person.name), q(person.role)),
                  QStringList{q(person.name), q(person.role)});
  }
  if (const int again = who_->findData(chosen); again >= 0) who_->setCurrentIndex(again);
  sign_->setEnabled(who_->count() > 0);
  if (who_->count() == 0) {
    trouble_->setText(tr("Nobody who may sign this is enrolled with a key on this computer."));
  }
}

void SignDialog::sign() {
  if (who_->count() == 0 || !sign_->isEnabled()) return;
  const QStringList who = who_->currentData().toStringList();
  const std::string reason = reason_->text().trimmed().toStdString();
  if (!ask_.reason.isEmpty() && reason.empty()) {
    trouble_->setText(tr("A reason is needed."));
    return;
  }
  sign_->setEnabled(false);
  trouble_->setText(tr("Opening the key \u2026"));
  Pen pen{who[0].toStdString(), who[1].toStdString(), passphrase_->text().toStdString()};
  passphrase_->clear();
  session_.doer().sign(
      std::move(pen),
      [deed = deed_, reason](desk::Desk& desk, const desk::Signer& signer) {
        return deed(desk, signer, reason);
      },
      this, [this](const desk::Entry& entry) { signed_now(entry); });
}

void SignDialog::signed_now(const desk::Entry& entry) {
  sign_->setEnabled(true);
  if (!entry) {
    trouble_->setText(translated(entry.error()));
    passphrase_->setFocus();
    return;
  }
  Q_EMIT session_.said(tr("Signed and written as entry %1.").arg(*entry), QStringLiteral("good"));
  accept();
}

void ask_to_sign(Session& session, Ask ask, Deed deed, QWidget* parent) {
  auto* dialog = new SignDialog(session, std::move(ask), std::move(deed), parent);
  dialog->setAttribute(Qt::WA_DeleteOnClose);
  dialog->open();
}

}  // namespace walkdown::gui
