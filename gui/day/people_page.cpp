// SPDX-License-Identifier: Apache-2.0
#include "gui/day/people_page.h"

#include <algorithm>
#include <map>
#include <set>

#include "gui/day/enrol_dialog.h"
#include "gui/look/words.h"
#include "gui/parts/flow_layout.h"
#include "gui/parts/pieces.h"
#include "gui/parts/top_layout.h"

namespace walkdown::gui {
namespace {

bool has(const std::vector<std::string>& sorted, const std::string& name) {
  return std::binary_search(sorted.begin(), sorted.end(), name);
}

}  // namespace

PeoplePage::PeoplePage(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), people_(new QVBoxLayout), position_(new QComboBox) {
  auto* layout = new TopLayout(this);
  layout->addWidget(label(tr("People and tags"), 1.4, true));
  layout->addWidget(
      button(tr("Enrol a person \u2026"), [this] { (new EnrolDialog(session_, this))->open(); }));
  layout->addWidget(quiet_label(
      tr("Where the next person goes in; the pins there count as unread from then on")));
  position_->setAccessibleName(tr("Where somebody goes"));
  position_->addItem(tr("anywhere in the field"));
  std::set<std::string> names;
  for (const auto& pin : session.prepared().planned.plan.pins) {
    if (!pin.position.empty()) names.insert(pin.position);
  }
  for (const auto& name : names) position_->addItem(q(name), q(name));
  layout->addWidget(position_);
  layout->addLayout(people_);
}

void PeoplePage::see(const Snapshot& seen) {
  QByteArray key;
  for (const auto& person : seen.state.people) {
    key += QByteArray::fromStdString(person.name + '/' + person.role + '\n');
  }
  for (const auto& name : seen.state.in_field) key += QByteArray::fromStdString("+" + name);
  for (const auto& name : seen.state.tags) key += QByteArray::fromStdString("#" + name);
  if (key == filled_) return;
  filled_ = key;
  fill(seen.state);
}

void PeoplePage::fill(const day::State& state) {
  clear_layout(people_);
  std::map<std::string, QStringList> people;
  for (const day::Enrolled& each : state.people) people[each.name] << q(each.role);
  for (const auto& name : state.in_field) people[name];
  if (people.empty()) people_->addWidget(label(tr("Nobody is enrolled yet.")));
  for (const auto& [name, roles] : people) add_person(name, roles, state);
}

void PeoplePage::add_person(const std::string& name, const QStringList& roles,
                            const day::State& state) {
  const bool inside = has(state.in_field, name);
  const bool tag = has(state.tags, name);
  QFrame* frame = card();
  auto* layout = new QVBoxLayout(frame);
  layout->addWidget(
      label(q(name) + QStringLiteral(" (") + roles.join(QStringLiteral(", ")) + ')', 1.1, true));
  QStringList where;
  where << (inside ? tr("IN THE FIELD") : tr("outside"));
  if (tag) where << tr("tag out");
  QLabel* line = label(where.join(QStringLiteral(", ")));
  set_tone(line, inside || tag ? "warn" : "");
  layout->addWidget(line);
  auto* row = new QWidget;
  auto* buttons = new FlowLayout(row);
  if (inside) {
    buttons->addWidget(button(
        tr("Comes out \u2026"), [=, this] { come_out(name, false); },
        tr("%1 comes out of the field").arg(q(name))));
    buttons->addWidget(button(
        tr("Told by another \u2026"), [=, this] { come_out(name, true); },
        tr("Another person says that %1 is out").arg(q(name))));
  } else {
    buttons->addWidget(button(
        tr("Goes in"), [=, this] { go_in(name); }, tr("%1 goes into the field").arg(q(name))));
  }
  if (tag) {
    buttons->addWidget(button(
        tr("Tag back \u2026"), [=, this] { tag_back(name, false); },
        tr("%1 takes the tag back").arg(q(name))));
    buttons->addWidget(
        button(tr("Tag, told by another \u2026"), [=, this] { tag_back(name, true); }));
  } else {
    buttons->addWidget(button(
        tr("Hangs a tag"),
        [=, this] {
          session_.act([name](desk::Desk& desk) { return desk::hang_tag(desk, name); }, this);
        },
        tr("%1 hangs a tag").arg(q(name))));
  }
  layout->addWidget(row);
  people_->addWidget(frame);
}

void PeoplePage::go_in(const std::string& name) {
  std::vector<std::string> positions;
  const QString where = position_->currentData().toString();
  if (!where.isEmpty()) positions.push_back(where.toStdString());
  session_.act([name, positions](desk::Desk& desk) { return desk::go_in(desk, name, positions); },
               this);
}

void PeoplePage::come_out(const std::string& name, bool by_another) {
  ask_to_sign(
      session_,
      {tr("Out of the field"),
       tr("%1 is out of the field.").arg(q(name)),
       {},
       by_another ? std::string() : name,
       by_another ? tr("Reason") : QString()},
      [name](desk::Desk& desk, const desk::Signer& signer, const std::string& reason) {
        return desk::come_out(desk, signer, name, reason);
      },
      this);
}

void PeoplePage::tag_back(const std::string& name, bool by_another) {
  ask_to_sign(
      session_,
      {tr("Tag back"),
       tr("The tag of %1 is back.").arg(q(name)),
       {},
       by_another ? std::string() : name,
       by_another ? tr("Reason") : QString()},
      [name](desk::Desk& desk, const desk::Signer& signer, const std::string& reason) {
        return desk::take_tag_back(desk, signer, name, reason);
      },
      this);
}

}  // namespace walkdown::gui
