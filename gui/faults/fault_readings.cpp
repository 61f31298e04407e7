// SPDX-License-Identifier: Apache-2.0
#include "gui/faults/fault_readings.h"

#include <QCoreApplication>
#include <algorithm>

#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

struct FaultReadings {
  Q_DECLARE_TR_FUNCTIONS(FaultReadings)
};

QString band_words(const match::PinVerdict& pin) {
  if (!pin.low || !pin.high) return FaultReadings::tr("nothing planned");
  return FaultReadings::tr("planned %1 to %2 ohm")
      .arg(number_words(*pin.low, 2), number_words(*pin.high, 2));
}

QString line(const match::PinVerdict& pin) {
  QString read = words(pin.verdict);
  if (pin.ohm) read = FaultReadings::tr("%1, %2 ohm").arg(read, number_words(*pin.ohm, 2));
  return QStringLiteral("%1: %2 (%3)").arg(q(plan::text(pin.pin)), read, band_words(pin));
}

}  // namespace

QStringList readings_words(const match::Outcome& outcome, const std::vector<plan::PinId>& pins,
                           std::size_t most) {
  std::vector<const match::PinVerdict*> found;
  for (const plan::PinId pin : pins) {
    const auto at = std::lower_bound(
        outcome.pins.begin(), outcome.pins.end(), pin,
        [](const match::PinVerdict& each, plan::PinId wanted) { return each.pin < wanted; });
    if (at != outcome.pins.end() && at->pin == pin) found.push_back(&*at);
  }
  std::stable_partition(found.begin(), found.end(), [](const match::PinVerdict* pin) {
    return pin->verdict != match::Verdict::fits;
  });
  QStringList out;
  for (std::size_t i = 0; i < std::min(most, found.size()); ++i) out << line(*found[i]);
  if (found.size() > most) {
    out << FaultReadings::tr("and %n more", nullptr, static_cast<int>(found.size() - most));
  }
  return out;
}

}  // namespace walkdown::gui
