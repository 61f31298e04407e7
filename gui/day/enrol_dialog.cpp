// SPDX-License-Identifier: Apache-2.0
#include "gui/day/enrol_dialog.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <set>

#include "gui/look/sentences.h"
#include "gui/look/words.h"
#include "gui/parts/pieces.h"

namespace walkdown::gui {
namespace {

// Every role that the checklist names; crew and witness besides.
std::set<std::string> roles_of(const day::Checklist& list) {
  std::set<std::string> roles{"crew", "witness"};
  for (const auto* more : {&list.lead, &list.release_by, &list.release_second}) {
    roles.insert(more->begin(), more->end());
  }
  for (const day::Item& item : list.items) {
    roles.insert(item.by.begin(), item.by.end());
    roles.insert(item.second.begin(), item.second.end());
  }
  return roles;
}

}  // namespace

EnrolDialog::EnrolDialog(Session& session, QWidget* parent)
    : Dialog(34, parent),
      session_(session),
      name_(new QComboBox),
      role_(new QComboBox),
      passphrase_(new QLineEdit),
      trouble_(label({})),
      press_(button(tr("Enrol"), [this] { enrol(); })) {
  setWindowTitle(tr("Enrol a person"));
  setAttribute(Qt::WA_DeleteOnClose);
  QVBoxLayout* layout = body();
  layout->addWidget(label(tr("Enrol a person"), 1.3, true));
  layout->addWidget(quiet_label(tr("Name: somebody with a key here, or a new name")));
  layout->addWidget(name_);
  layout->addWidget(quiet_label(tr("Role")));
  layout->addWidget(role_);
  layout->addWidget(quiet_label(
      tr("Passphrase for a new key, at least 8 characters; empty where the person has a key")));
  layout->addWidget(passphrase_);
  layout->addWidget(trouble_);
  foot()->addWidget(button(tr("Cancel"), [this] { reject(); }));
  foot()->addWidget(press_);
  name_->setEditable(true);
  name_->setAccessibleName(tr("Name"));
  role_->setAccessibleName(tr("Role"));
  passphrase_->setAccessibleName(tr("Passphrase for a new key"));
  passphrase_->setEchoMode(QLineEdit::Password);
  set_tone(trouble_, "bad");
  add_names();
  connect(&session.members(), &Members::changed, this, &EnrolDialog::add_names);
  session.members().look();
  for (const auto& role : roles_of(session.checklist())) role_->addItem(q(role));
}

void EnrolDialog::add_names() {
  const QString typed = name_->currentText();
  name_->clear();
  for (const auto& member : session_.members().list()) name_->addItem(q(member.name));
  name_->setCurrentText(typed);
}

void EnrolDialog::enrol() {
  const std::string name = name_->currentText().trimmed().toStdString();
  const std::string role = role_->currentText().toStdString();
  std::string passphrase = passphrase_->text().toStdString();
  passphrase_->clear();
  press_->setEnabled(false);
  const desk::Crew crew = session_.doer().crew();
  session_.doer().act(
      [=](desk::Desk& desk) -> desk::Entry {
        auto member = passphrase.empty() ? crew.find(name) : crew.add(name, passphrase);
        if (!member) return member.error();
        return desk::enrol(desk, name, role, member->key);
      },
      this,
      [this](const desk::Entry& entry) {
        press_->setEnabled(true);
        if (!entry) return trouble_->setText(translated(entry.error()));
        session_.members().look();
        Q_EMIT session_.said(tr("Enrolled as entry %1.").arg(*entry), QStringLiteral("good"));
        accept();
      });
}

}  // namespace walkdown::gui
