// SPDX-License-Identifier: Apache-2.0
#include "gui/look/palette.h"

#include "gui/look/contrast.h"

namespace walkdown::gui {

Tone tone_of(day::Standing standing) {
  switch (standing) {
    case day::Standing::holds:
      return Tone::good;
    case day::Standing::open:
    case day::Standing::waived:
    case day::Standing::due:
      return Tone::warn;
    default:
      return Tone::bad;
  }
}

std::span<const Pairing> pairings() {
  static constexpr std::array kPairings{
      Pairing{Tone::text, Tone::ground, kTextContrast},
      Pairing{Tone::text, Tone::panel, kTextContrast},
      Pairing{Tone::text, Tone::raised, kTextContrast},
      Pairing{Tone::quiet, Tone::ground, kTextContrast},
      Pairing{Tone::quiet, Tone::panel, kTextContrast},
      Pairing{Tone::good, Tone::ground, kTextContrast},
      Pairing{Tone::good, Tone::panel, kTextContrast},
      Pairing{Tone::warn, Tone::ground, kTextContrast},
      Pairing{Tone::warn, Tone::panel, kTextContrast},
      Pairing{Tone::bad, Tone::ground, kTextContrast},
      Pairing{Tone::bad, Tone::panel, kTextContrast},
      Pairing{Tone::picked_text, Tone::picked, kTextContrast},
      Pairing{Tone::alarm_text, Tone::alarm, kTextContrast},
      Pairing{Tone::edge, Tone::ground, kShapeContrast},
      Pairing{Tone::edge, Tone::panel, kShapeContrast},
      Pairing{Tone::edge, Tone::raised, kShapeContrast},
      Pairing{Tone::focus, Tone::ground, kShapeContrast},
      Pairing{Tone::focus, Tone::panel, kShapeContrast},
      Pairing{Tone::focus, Tone::raised, kShapeContrast},
      Pairing{Tone::picked, Tone::ground, kShapeContrast},
      Pairing{Tone::picked, Tone::panel, kShapeContrast},
      Pairing{Tone::alarm, Tone::panel, kShapeContrast},
  };
  return kPairings;
}

}  // namespace walkdown::gui
