// SPDX-License-Identifier: Apache-2.0
#include "gui/field/pin_page.h"

#include <QLabel>
#include <algorithm>

#include "checklist/desk/tell.h"
#include "gui/field/pin_current.h"
#include "gui/look/sentences.h"
#include "gui/look/words.h"
#include "gui/parts/flow_layout.h"
#include "gui/parts/pieces.h"
#include "gui/parts/top_layout.h"
#include "reader/match/alike.h"

namespace walkdown::gui {
namespace {

constexpr std::size_t kMostHistory = 40;
constexpr qsizetype kMostAlike = 8;

const match::PinVerdict* verdict_of(const match::Outcome& outcome, plan::PinId pin) {
  const auto found = std::lower_bound(
      outcome.pins.begin(), outcome.pins.end(), pin,
      [](const match::PinVerdict& each, plan::PinId wanted) { return each.pin < wanted; });
  return found == outcome.pins.end() || found->pin != pin ? nullptr : &*found;
}

}  // namespace

PinPage::PinPage(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      alike_(match::alike(session.prepared().planned.plan)),
      layout_(new TopLayout(this)),
      top_(new QVBoxLayout),
      below_(new QVBoxLayout),
      plot_(new BandPlot) {
  layout_->addLayout(top_);
  layout_->addWidget(plot_);
  layout_->addLayout(below_);
  plot_->hide();
  top_->addWidget(
      label(tr("Choose a pin: by pointer, or with the arrow keys. N goes to the next "
               "that does not fit.")));
}

void PinPage::dress(const Look& look) { plot_->dress(look); }

void PinPage::show_pin(plan::PinId pin) {
  pin_ = pin;
  filled_.clear();
  if (session_.now()) see(*session_.now());
}

void PinPage::see(const Snapshot& seen) {
  if (!pin_) return;
  QByteArray now = key(seen);
  if (now == filled_) return;
  filled_ = std::move(now);
  fill(seen);
}

// All that the page shows, short: thousands of readings of other pins leave it as it is.
QByteArray PinPage::key(const Snapshot& seen) const {
  const plan::Plan& plan = session_.prepared().planned.plan;
  const plan::PlannedPin* pin = plan.find(*pin_);
  QByteArray key =
      QByteArray::number(session_.ledger().of(*pin_, pin == nullptr ? "" : pin->position).size());
  if (const auto* verdict = verdict_of(*seen.outcome, *pin_)) {
    key += ' ' + QByteArray::number(static_cast<int>(verdict->verdict));
    key += ' ' + QByteArray::number(verdict->ohm.value_or(-1));
  }
  for (const match::Finding& finding : seen.outcome->findings) {
    if (!std::binary_search(finding.pins.begin(), finding.pins.end(), *pin_)) continue;
    key += QByteArray::fromStdString(finding.say);
    key += QByteArray::number(match::stated_pct(finding.confidence));
  }
  if (const auto current = current_of(plan, *seen.outcome, *pin_)) {
    key += QByteArray::fromStdString(current->say);
  }
  return key;
}

void PinPage::fill(const Snapshot& seen) {
  const audit::Planned& planned = session_.prepared().planned;
  const plan::PlannedPin* pin = planned.plan.find(*pin_);
  const match::PinVerdict* verdict = verdict_of(*seen.outcome, *pin_);
  clear_layout(top_);
  clear_layout(below_);
  fill_head(verdict);
  const auto events = session_.ledger().of(*pin_, pin == nullptr ? "" : pin->position);
  std::optional<match::Band> band;
  if (pin != nullptr && pin->load.count > 0) {
    band = match::shown_band(pin->load, planned.plan.catalogue, planned.tester.model);
  }
  plot_->show_readings(band, events, planned.tester.model.zero_ohm);
  plot_->show();
  fill_current(*seen.outcome);
  fill_findings(*seen.outcome);
  fill_buttons(verdict);
  fill_history(events);
}

void PinPage::fill_head(const match::PinVerdict* verdict) {
  top_->addWidget(label(q(plan::text(*pin_)), 1.6, true));
  const plan::PlannedPin* pin = session_.prepared().planned.plan.find(*pin_);
  QString word = verdict == nullptr ? tr("free: nothing is planned here") : words(verdict->verdict);
  if (verdict != nullptr && verdict->ohm) {
    word += tr(", %1 ohm").arg(number_words(*verdict->ohm, 2));
  }
  QLabel* said = label(word, 1.3, true);
  if (verdict != nullptr) {
    const bool fits = verdict->verdict == match::Verdict::fits;
    const bool open =
        verdict->verdict == match::Verdict::unread || verdict->verdict == match::Verdict::stale;
    set_tone(said, fits ? "good" : open ? "warn" : "bad");
  }
  top_->addWidget(said);
  if (pin == nullptr) return;
  const auto& igniters = session_.prepared().planned.plan.catalogue.igniters;
  QString load = tr("%n igniter(s)", nullptr, pin->load.count);
  if (pin->load.igniter < igniters.size()) {
    load += QStringLiteral(" ") + q(igniters[pin->load.igniter].name);
  }
  if (pin->load.count > 1) {
    load += pin->load.join == plan::Join::series ? tr(", in series") : tr(", in parallel");
  }
  load += tr(", lead %1 m").arg(number_words(pin->load.lead_m, 1));
  // No line begins with a unit alone.
  if (load.endsWith(QStringLiteral(" m"))) load[load.size() - 2] = QChar(QChar::Nbsp);
  top_->addWidget(label(tr("Cue %1, %2").arg(q(pin->cue), q(pin->position))));
  top_->addWidget(label(load));
  if (!pin->device.empty()) top_->addWidget(quiet_label(q(pin->device)));
  if (!pin->note.empty()) top_->addWidget(quiet_label(q(pin->note)));
}

void PinPage::fill_findings(const match::Outcome& outcome) {
  for (const match::Finding& finding : outcome.findings) {
    if (!std::binary_search(finding.pins.begin(), finding.pins.end(), *pin_)) continue;
    below_->addWidget(label(tr("%1 (%2 %)")
                                .arg(words(finding.kind, finding.by))
                                .arg(match::stated_pct(finding.confidence)),
                            1.1, true));
    below_->addWidget(label(translated(finding.say)));
    if (finding.runner_up) {
      below_->addWidget(quiet_label(tr("Or else: %1 (%2 %)")
                                        .arg(words(finding.runner_up->kind, finding.runner_up->by))
                                        .arg(match::stated_pct(finding.runner_up->share))));
    }
    for (const match::Alternative& same : finding.same) {
      below_->addWidget(quiet_label(translated(same.look)));
    }
  }
}

void PinPage::fill_buttons(const match::PinVerdict* verdict) {
  auto* row = new QWidget;
  auto* buttons = new FlowLayout(row);
  const plan::PinId pin = *pin_;
  if (verdict != nullptr) {
    buttons->addWidget(button(tr("Re-hooked"), [this, pin] {
      audit::Rehook rehook;
      rehook.pins = {pin};
      session_.act([rehook](desk::Desk& desk) { return desk::rehook(desk, rehook); }, this);
    }));
  }
  fill_alike(buttons);
  below_->addWidget(row);
}

void PinPage::fill_alike(QLayout* buttons) {
  for (const auto& group : alike_) {
    if (!std::binary_search(group.begin(), group.end(), *pin_)) continue;
    below_->addWidget(
        quiet_label(tr("%n pin(s) read alike: a swap among them cannot be seen by the tester.",
                       nullptr, static_cast<int>(group.size()))));
    QStringList names;
    for (const plan::PinId each : group) {
      if (each == *pin_) continue;
      if (names.size() == kMostAlike) {
        names << QStringLiteral("\u2026");
        break;
      }
      names << q(plan::text(each));
    }
    below_->addWidget(quiet_label(names.join(QStringLiteral(", "))));
    buttons->addWidget(
        button(tr("Show the pins that read alike"), [this, group] { Q_EMIT group_wanted(group); }));
  }
}

// From the supply at its least, through this loop as it was measured. It says nothing about firing.
void PinPage::fill_current(const match::Outcome& outcome) {
  const auto current = current_of(session_.prepared().planned.plan, outcome, *pin_);
  if (!current) return;
  below_->addWidget(label(current->measured ? tr("Current, by the measured loop")
                                            : tr("Current, by the planned loop at its worst"),
                          1.1, true));
  QLabel* said = label(translated(current->say));
  set_tone(said, current->word == match::FiringWord::ok        ? "good"
                 : current->word == match::FiringWord::starved ? "bad"
                                                               : "warn");
  below_->addWidget(said);
}

QString PinPage::event_words(const PinEvent& event) const {
  const record::EntryView row = session_.ledger().rows()[event.row];
  QString text = clock_words_s(row.at_ms) + QStringLiteral("  ");
  if (event.rehook) {
    text += translated(desk::tell(session_.checklist(), record::entry_of(row)));
  } else {
    text += event.ohm ? tr("%1 ohm").arg(number_words(*event.ohm, 3)) : tr("above range");
    if (!event.counts) text += tr(" (before the re-hook)");
  }
  return text;
}

void PinPage::fill_history(const std::vector<PinEvent>& events) {
  if (events.empty()) return;
  below_->addWidget(label(tr("History, the newest first"), 1.1, true));
  const std::size_t count = std::min(events.size(), kMostHistory);
  for (std::size_t i = 0; i < count; ++i) {
    below_->addWidget(label(event_words(events[events.size() - 1 - i])));
  }
  if (events.size() > count) {
    below_->addWidget(quiet_label(
        tr("and %1 more: see the record").arg(static_cast<qulonglong>(events.size() - count))));
  }
}

}  // namespace walkdown::gui
