// SPDX-License-Identifier: Apache-2.0
#include "gui/day/keys_page.h"

#include "gui/look/words.h"
#include "gui/parts/flow_layout.h"
#include "gui/parts/pieces.h"
#include "gui/parts/top_layout.h"

namespace walkdown::gui {

KeysPage::KeysPage(Session& session, QWidget* parent)
    : QWidget(parent), session_(session), keys_(new QVBoxLayout) {
  auto* layout = new TopLayout(this);
  layout->addWidget(label(tr("Keys"), 1.4, true));
  layout->addLayout(keys_);
  layout->addWidget(quiet_label(
      tr("A hand-over is signed by both, the receiver first. Until the giver has signed too, the "
         "giver holds the key.")));
}

void KeysPage::see(const Snapshot& seen) {
  QByteArray key;
  for (const auto& each : seen.state.keys) {
    key += QByteArray::fromStdString(each.holder + '/' + each.offered_to + '\n');
  }
  if (key == filled_ && !key.isEmpty()) return;
  filled_ = key;
  fill(seen.state);
}

void KeysPage::fill(const day::State& state) {
  clear_layout(keys_);
  if (state.keys.empty()) keys_->addWidget(label(tr("The checklist has no key.")));
  for (std::size_t i = 0; i < state.keys.size(); ++i) add_key(i, state.keys[i]);
}

void KeysPage::add_key(std::size_t index, const day::KeyState& key) {
  const day::Key& planned = session_.checklist().keys[index];
  QFrame* frame = card();
  auto* layout = new QVBoxLayout(frame);
  layout->addWidget(label(q(key.name), 1.1, true));
  layout->addWidget(label(key.person ? tr("In the hands of %1").arg(q(key.holder))
                                     : tr("In its place: %1").arg(q(key.holder))));
  if (!key.offered_to.empty()) {
    QLabel* offered =
        label(tr("%1 has signed for it; %2 still holds it.").arg(q(key.offered_to), q(key.holder)));
    set_tone(offered, "warn");
    layout->addWidget(offered);
  }
  auto* row = new QWidget;
  add_buttons(new FlowLayout(row), planned, key);
  layout->addWidget(row);
  keys_->addWidget(frame);
}

void KeysPage::add_buttons(QLayout* buttons, const day::Key& key, const day::KeyState& now) {
  const std::string name = key.name;
  const auto ask = [this](const QString& title, const QString& what, day::Roles roles,
                          std::string person, Deed deed) {
    ask_to_sign(session_, {title, what, std::move(roles), std::move(person), {}}, std::move(deed),
                this);
  };
  if (!now.person) {
    buttons->addWidget(button(tr("Take it \u2026"), [=] {
      ask(tr("Take the key"), tr("I take the %1.").arg(q(name)), key.takers, {},
          [name](desk::Desk& desk, const desk::Signer& signer, const std::string&) {
            return desk::take_key(desk, signer, name);
          });
    }));
    return;
  }
  buttons->addWidget(button(tr("Receive it \u2026"), [=] {
    ask(tr("Receive the key"), tr("I receive the %1 from %2.").arg(q(name), q(now.holder)), {}, {},
        [name](desk::Desk& desk, const desk::Signer& signer, const std::string&) {
          return desk::offer_key(desk, signer, name);
        });
  }));
  if (!now.offered_to.empty()) {
    buttons->addWidget(button(tr("Give it to %1 \u2026").arg(q(now.offered_to)), [=] {
      ask(tr("Give the key"), tr("I give the %1 to %2.").arg(q(name), q(now.offered_to)), {},
          now.holder, [name](desk::Desk& desk, const desk::Signer& signer, const std::string&) {
            return desk::give_key(desk, signer, name);
          });
    }));
  }
  for (const std::string& place : key.places) {
    buttons->addWidget(button(tr("Put it: %1 \u2026").arg(q(place)), [=] {
      ask(tr("Put the key down"), tr("I put the %1 here: %2.").arg(q(name), q(place)), {},
          now.holder,
          [name, place](desk::Desk& desk, const desk::Signer& signer, const std::string&) {
            return desk::put_key(desk, signer, name, place);
          });
    }));
  }
}

}  // namespace walkdown::gui
