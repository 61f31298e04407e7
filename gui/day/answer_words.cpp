// SPDX-License-Identifier: Apache-2.0
#include "gui/day/answer_words.h"

#include <QCoreApplication>

#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

struct Item {
  Q_DECLARE_TR_FUNCTIONS(Item)
};

QString milli(std::int64_t value) {
  return QString::number(static_cast<double>(value) / 1000, 'g', 12);
}

QString event_words(day::Event event) {
  switch (event) {
    case day::Event::entered:
      return Item::tr("somebody enters the field");
    case day::Event::rehook:
      return Item::tr("a pin is hooked up anew");
    case day::Event::hold:
      return Item::tr("a hold is called");
    case day::Event::clock:
      return Item::tr("the clock steps");
    case day::Event::suspend:
      return Item::tr("the computer sleeps");
    case day::Event::restart:
      return Item::tr("the computer starts anew");
    case day::Event::show_time:
      return Item::tr("the show time moves");
    case day::Event::thunder:
      return Item::tr("thunder is heard");
    case day::Event::custody:
      return Item::tr("a key changes hands");
  }
  return {};
}

}  // namespace

QString roles_words(const day::Roles& roles) {
  QStringList list;
  for (const auto& role : roles) list << q(role);
  return list.join(Item::tr(" or "));
}

QString limits_words(const day::Item& item) {
  if (item.mean_max_mm_per_s && item.gust_max_mm_per_s) {
    return Item::tr("mean at most %1 m/s, gust at most %2 m/s")
        .arg(milli(*item.mean_max_mm_per_s), milli(*item.gust_max_mm_per_s));
  }
  const QString unit = item.unit.empty() ? QString() : QChar(' ') + q(item.unit);
  if (item.min_milli && item.max_milli) {
    return Item::tr("%1 to %2").arg(milli(*item.min_milli), milli(*item.max_milli)) + unit;
  }
  if (item.min_milli) return Item::tr("at least %1").arg(milli(*item.min_milli)) + unit;
  if (item.max_milli) return Item::tr("at most %1").arg(milli(*item.max_milli)) + unit;
  return {};
}

QStringList item_facts(const day::Checklist& list, const day::Item& item) {
  QStringList facts;
  if (item.asked()) facts << Item::tr("Answered by: %1").arg(roles_words(item.by));
  if (!item.asked()) facts << Item::tr("Follows from the record; nobody answers it.");
  if (!item.second.empty()) {
    facts << Item::tr("Second signature: %1").arg(roles_words(item.second));
  }
  if (const QString limits = limits_words(item); !limits.isEmpty()) {
    facts << Item::tr("Holds for: %1").arg(limits);
  }
  if (item.valid_for_ms) facts << Item::tr("Valid for: %1").arg(span_words(*item.valid_for_ms));
  for (const std::size_t need : item.needs) {
    facts << Item::tr("Needs first: %1").arg(q(list.items[need].question));
  }
  QStringList breaks;
  for (std::size_t e = 0; e < day::kEvents; ++e) {
    const auto event = static_cast<day::Event>(e);
    if (item.breaks(event)) breaks << event_words(event);
  }
  if (!breaks.isEmpty())
    facts << Item::tr("Broken when: %1").arg(breaks.join(QStringLiteral("; ")));
  if (!item.source.empty()) facts << Item::tr("Source: %1").arg(q(item.source));
  return facts;
}

}  // namespace walkdown::gui
