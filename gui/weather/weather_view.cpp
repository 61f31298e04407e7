// SPDX-License-Identifier: Apache-2.0
#include "gui/weather/weather_view.h"

#include "gui/look/words.h"
#include "gui/parts/top_layout.h"
namespace walkdown::gui {
#include "gui/parts/top_layout.h"
WeatherView::WeatherView(Session& session, QWidget* parent)
#include "gui/parts/top_layout.h"
    : QWidget(parent),
#include "gui/parts/top_layout.h"
      session_(session),
#include "gui/parts/top_layout.h"
      plot_(new WindPlot),
#include "gui/parts/top_layout.h"
      wind_now_(label({}, 1.3, true)),
#include "gui/parts/top_layout.h"
      wait_(label({}, 1.3, true)),
#include "gui/parts/top_layout.h"
      flash_(new QLineEdit),
#include "gui/parts/top_layout.h"
      heard_(new QVBoxLayout) {
#include "gui/parts/top_layout.h"
  const day::Checklist& list = session.checklist();
#include "gui/parts/top_layout.h"
  for (std::size_t i = 0; i < list.items.size(); ++i) {
#include "gui/parts/top_layout.h"
    if (list.items[i].kind == day::Kind::wind) wind_item_ = i;
#include "gui/parts/top_layout.h"
    if (list.items[i].kind == day::Kind::thunder) thunder_item_ = i;
#include "gui/parts/top_layout.h"
  }
#include "gui/parts/top_layout.h"
  auto* inner = new QWidget;
#include "gui/parts/top_layout.h"
  auto* layout = new TopLayout(inner);
#include "gui/parts/top_layout.h"
  layout->addWidget(label(tr("Wind"), 1.4, true));
#include "gui/parts/top_layout.h"
  layout->addWidget(wind_now_);
#include "gui/parts/top_layout.h"
  layout->addWidget(plot_);
#include "gui/parts/top_layout.h"
  layout->addWidget(quiet_label(tr("Solid line and discs: mean. Broken line and crosses: gust.")));
#include "gui/parts/top_layout.h"
  if (wind_item_ != day::Checklist::npos) {
#include "gui/parts/top_layout.h"
    const day::Item& item = list.items[wind_item_];
#include "gui/parts/top_layout.h"
    const auto metres = [](std::int64_t mm) { return static_cast<double>(mm) / 1000; };
#include "gui/parts/top_layout.h"
    plot_->set_limits(
#include "gui/parts/top_layout.h"
        item.mean_max_mm_per_s ? std::optional(metres(*item.mean_max_mm_per_s)) : std::nullopt,
#include "gui/parts/top_layout.h"
        item.gust_max_mm_per_s ? std::optional(metres(*item.gust_max_mm_per_s)) : std::nullopt);
#include "gui/parts/top_layout.h"
    layout->addWidget(quiet_label(q(item.source)));
#include "gui/parts/top_layout.h"
    layout->addWidget(
#include "gui/parts/top_layout.h"
        button(tr("Enter wind read by hand \u2026"), [this] { Q_EMIT item_wanted(wind_item_); }));
#include "gui/parts/top_layout.h"
  }
#include "gui/parts/top_layout.h"
  add_thunder(layout);
#include "gui/parts/top_layout.h"
  auto* outer = new QVBoxLayout(this);
#include "gui/parts/top_layout.h"
  outer->setContentsMargins(0, 0, 0, 0);
#include "gui/parts/top_layout.h"
  outer->addWidget(scrolled(inner));
#include "gui/parts/top_layout.h"
}
#include "gui/parts/top_layout.h"
void WeatherView::add_thunder(QVBoxLayout* layout) {
#include "gui/parts/top_layout.h"
  layout->addWidget(label(tr("Thunder"), 1.4, true));
#include "gui/parts/top_layout.h"
  layout->addWidget(wait_);
#include "gui/parts/top_layout.h"
  layout->addWidget(quiet_label(tr("Seconds from flash to thunder; empty where nobody counted")));
#include "gui/parts/top_layout.h"
  flash_->setAccessibleName(tr("Seconds from flash to thunder"));
#include "gui/parts/top_layout.h"
  layout->addWidget(flash_);
#include "gui/parts/top_layout.h"
  layout->addWidget(button(tr("Thunder was heard now"), [this] { hear(); }));
#include "gui/parts/top_layout.h"
  layout->addLayout(heard_);
#include "gui/parts/top_layout.h"
}
#include "gui/parts/top_layout.h"
void WeatherView::hear() {
#include "gui/parts/top_layout.h"
  std::optional<std::int64_t> flash_ms;
#include "gui/parts/top_layout.h"
  if (!flash_->text().trimmed().isEmpty()) {
#include "gui/parts/top_layout.h"
    flash_ms = milli_from(flash_->text());
#include "gui/parts/top_layout.h"
    if (!flash_ms || *flash_ms < 0) {
#include "gui/parts/top_layout.h"
      Q_EMIT session_.said(tr("'%1' is not a number of seconds.").arg(flash_->text()),
#include "gui/parts/top_layout.h"
                           QStringLiteral("bad"));
#include "gui/parts/top_layout.h"
      return;
#include "gui/parts/top_layout.h"
    }
#include "gui/parts/top_layout.h"
  }
#include "gui/parts/top_layout.h"
  flash_->clear();
#include "gui/parts/top_layout.h"
  session_.act([flash_ms](desk::Desk& desk) { return desk::thunder(desk, flash_ms); }, this);
#include "gui/parts/top_layout.h"
}
#include "gui/parts/top_layout.h"
void WeatherView::see(const Seen& seen) {
#include "gui/parts/top_layout.h"
  take_winds();
#include "gui/parts/top_layout.h"
  plot_->see(winds_, seen->now.at_ms);
#include "gui/parts/top_layout.h"
  const auto say = [&](QLabel* line, std::size_t item) {
#include "gui/parts/top_layout.h"
    if (item == day::Checklist::npos)
#include "gui/parts/top_layout.h"
      return line->setText(tr("The checklist does not ask for it."));
#include "gui/parts/top_layout.h"
    const day::ItemState& state = seen->state.items[item];
#include "gui/parts/top_layout.h"
    line->setText(words(state.standing) + QStringLiteral(": ") + q(state.why));
#include "gui/parts/top_layout.h"
    const Tone tone = tone_of(state.standing);
#include "gui/parts/top_layout.h"
    set_tone(line, tone == Tone::good ? "good" : tone == Tone::warn ? "warn" : "bad");
#include "gui/parts/top_layout.h"
  };
#include "gui/parts/top_layout.h"
  say(wind_now_, wind_item_);
#include "gui/parts/top_layout.h"
  say(wait_, thunder_item_);
#include "gui/parts/top_layout.h"
  fill_thunder(*seen);
#include "gui/parts/top_layout.h"
}
#include "gui/parts/top_layout.h"
// An instrument may have written thousands: each entry is looked into once.
#include "gui/parts/top_layout.h"
void WeatherView::take_winds() {
#include "gui/parts/top_layout.h"
  const auto& rows = session_.ledger().of_kind("wind");
#include "gui/parts/top_layout.h"
  while (winds_.size() < rows.size()) {
#include "gui/parts/top_layout.h"
    const auto entry = record::entry_of(session_.ledger().rows()[rows[winds_.size()]]);
#include "gui/parts/top_layout.h"
    winds_.push_back(
#include "gui/parts/top_layout.h"
        {entry.at_ms,
#include "gui/parts/top_layout.h"
         static_cast<double>(entry.body.value("mean_mm_per_s", std::int64_t{0})) / 1000,
#include "gui/parts/top_layout.h"
         static_cast<double>(entry.body.value("gust_mm_per_s", std::int64_t{0})) / 1000});
#include "gui/parts/top_layout.h"
  }
#include "gui/parts/top_layout.h"
}
#include "gui/parts/top_layout.h"
void WeatherView::fill_thunder(const Snapshot&) {
#include "gui/parts/top_layout.h"
  const auto& rows = session_.ledger().of_kind("thunder");
#include "gui/parts/top_layout.h"
  if (rows.size() == filled_) return;
#include "gui/parts/top_layout.h"
  filled_ = rows.size();
#include "gui/parts/top_layout.h"
  clear_layout(heard_);
#include "gui/parts/top_layout.h"
  if (rows.empty()) heard_->addWidget(quiet_label(tr("No thunder is in the record.")));
#include "gui/parts/top_layout.h"
  for (auto it = rows.rbegin(); it != rows.rend(); ++it) {
#include "gui/parts/top_layout.h"
    const auto entry = record::entry_of(session_.ledger().rows()[*it]);
#include "gui/parts/top_layout.h"
    const auto flash = entry.body.find("flash_ms");
#include "gui/parts/top_layout.h"
    heard_->addWidget(label(
#include "gui/parts/top_layout.h"
        flash == entry.body.end() || !flash->is_number_integer()
#include "gui/parts/top_layout.h"
            ? tr("%1: thunder").arg(clock_words_s(entry.at_ms))
#include "gui/parts/top_layout.h"
            : tr("%1: thunder, %2 s after its flash")
#include "gui/parts/top_layout.h"
                  .arg(clock_words_s(entry.at_ms),
#include "gui/parts/top_layout.h"
                       number_words(static_cast<double>(flash->get<std::int64_t>()) / 1000, 1))));
#include "gui/parts/top_layout.h"
  }
#include "gui/parts/top_layout.h"
}
#include "gui/parts/top_layout.h"
void WeatherView::dress(const Look& look) { plot_->dress(look); }
#include "gui/parts/top_layout.h"
}  // namespace walkdown::gui
#include "gui/parts/top_layout.h"
