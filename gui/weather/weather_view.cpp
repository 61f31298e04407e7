// SPDX-License-Identifier: Apache-2.0
#include "gui/weather/weather_view.h"

#include "gui/look/sentences.h"
#include "gui/look/words.h"
#include "gui/parts/top_layout.h"

namespace walkdown::gui {

WeatherView::WeatherView(Session& session, QWidget* parent)
    : QWidget(parent),
      session_(session),
      plot_(new WindPlot),
      wind_now_(label({}, 1.3, true)),
      wait_(label({}, 1.3, true)),
      flash_(new QLineEdit),
      heard_(new QVBoxLayout) {
  const day::Checklist& list = session.checklist();
  for (std::size_t i = 0; i < list.items.size(); ++i) {
    if (list.items[i].kind == day::Kind::wind) wind_item_ = i;
    if (list.items[i].kind == day::Kind::thunder) thunder_item_ = i;
  }
  auto* inner = new QWidget;
  auto* layout = new TopLayout(inner);
  layout->addWidget(label(tr("Wind"), 1.4, true));
  layout->addWidget(wind_now_);
  layout->addWidget(plot_);
  layout->addWidget(quiet_label(tr("Solid line and discs: mean. Broken line and crosses: gust.")));
  if (wind_item_ != day::Checklist::npos) {
    const day::Item& item = list.items[wind_item_];
    const auto metres = [](std::int64_t mm) { return static_cast<double>(mm) / 1000; };
    plot_->set_limits(
        item.mean_max_mm_per_s ? std::optional(metres(*item.mean_max_mm_per_s)) : std::nullopt,
        item.gust_max_mm_per_s ? std::optional(metres(*item.gust_max_mm_per_s)) : std::nullopt);
    layout->addWidget(quiet_label(q(item.source)));
    layout->addWidget(
        button(tr("Enter wind read by hand \u2026"), [this] { Q_EMIT item_wanted(wind_item_); }));
  }
  add_thunder(layout);
  auto* outer = new QVBoxLayout(this);
  outer->setContentsMargins(0, 0, 0, 0);
  outer->addWidget(scrolled(inner));
}

void WeatherView::add_thunder(QVBoxLayout* layout) {
  layout->addWidget(label(tr("Thunder"), 1.4, true));
  layout->addWidget(wait_);
  layout->addWidget(quiet_label(tr("Seconds from flash to thunder; empty where nobody counted")));
  flash_->setAccessibleName(tr("Seconds from flash to thunder"));
  layout->addWidget(flash_);
  layout->addWidget(button(tr("Thunder was heard now"), [this] { hear(); }));
  layout->addLayout(heard_);
}

void WeatherView::hear() {
  std::optional<std::int64_t> flash_ms;
  if (!flash_->text().trimmed().isEmpty()) {
    flash_ms = milli_from(flash_->text());
    if (!flash_ms || *flash_ms < 0) {
      Q_EMIT session_.said(tr("'%1' is not a number of seconds.").arg(flash_->text()),
                           QStringLiteral("bad"));
      return;
    }
  }
  flash_->clear();
  session_.act([flash_ms](desk::Desk& desk) { return desk::thunder(desk, flash_ms); }, this);
}

void WeatherView::see(const Seen& seen) {
  take_winds();
  plot_->see(winds_, seen->now.at_ms);
  const auto say = [&](QLabel* line, std::size_t item) {
    if (item == day::Checklist::npos)
      return line->setText(tr("The checklist does not ask for it."));
    const day::ItemState& state = seen->state.items[item];
    line->setText(words(state.standing) + QStringLiteral(": ") + translated(state.why));
    const Tone tone = tone_of(state.standing);
    set_tone(line, tone == Tone::good ? "good" : tone == Tone::warn ? "warn" : "bad");
  };
  say(wind_now_, wind_item_);
  say(wait_, thunder_item_);
  fill_thunder(*seen);
}

// An instrument may have written thousands: each entry is looked into once.
void WeatherView::take_winds() {
  const auto& rows = session_.ledger().of_kind("wind");
  while (winds_.size() < rows.size()) {
    const auto entry = record::entry_of(session_.ledger().rows()[rows[winds_.size()]]);
    winds_.push_back(
        {entry.at_ms,
         static_cast<double>(entry.body.value("mean_mm_per_s", std::int64_t{0})) / 1000,
         static_cast<double>(entry.body.value("gust_mm_per_s", std::int64_t{0})) / 1000});
  }
}

void WeatherView::fill_thunder(const Snapshot&) {
  const auto& rows = session_.ledger().of_kind("thunder");
  if (rows.size() == filled_) return;
  filled_ = rows.size();
  clear_layout(heard_);
  if (rows.empty()) heard_->addWidget(quiet_label(tr("No thunder is in the record.")));
  for (auto it = rows.rbegin(); it != rows.rend(); ++it) {
    const auto entry = record::entry_of(session_.ledger().rows()[*it]);
    const auto flash = entry.body.find("flash_ms");
    heard_->addWidget(label(
        flash == entry.body.end() || !flash->is_number_integer()
            ? tr("%1: thunder").arg(clock_words_s(entry.at_ms))
            : tr("%1: thunder, %2 s after its flash")
                  .arg(clock_words_s(entry.at_ms),
                       number_words(static_cast<double>(flash->get<std::int64_t>()) / 1000, 1))));
  }
}

void WeatherView::dress(const Look& look) { plot_->dress(look); }

}  // namespace walkdown::gui
