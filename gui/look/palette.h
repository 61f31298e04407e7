// SPDX-License-Identifier: Apache-2.0
// The three palettes: day, dusk, and night. Night is deep red on black, and nothing in it is
// brighter than its text, so that eyes used to the dark stay so.
//
// Hues are those of Okabe and Ito ("Color Universal Design", 2008), which people with any common
// colour vision tell apart. No colour stands alone for a meaning: a shape, a letter or a word says
// the same. Green is used for nothing that holds: nobody shall read it as "go".
#pragma once

#include <QColor>
#include <array>
#include <cstdint>
#include <span>

#include "checklist/day/standing.h"
#include "reader/match/words.h"

namespace walkdown::gui {

enum class Light : std::uint8_t { day, dusk, night };
inline constexpr std::size_t kLights = 3;

enum class Tone : std::uint8_t {
  ground,       // behind everything, and behind the field
  panel,        // cards, the strip
  raised,       // buttons
  text,         // on ground, panel and raised
  quiet,        // second text, on ground and panel
  rule,         // lines that only divide
  edge,         // of what can be pressed or filled in
  focus,        // round what has the keyboard
  picked,       // behind the chosen row or button
  picked_text,  // on it
  good,         // words and bars of what holds
  warn,         // of what wants somebody
  bad,          // of what does not hold
  alarm,        // behind the word of a hold
  alarm_text,   // on it
};
inline constexpr std::size_t kTones = 15;

// A mark's shape is filled with `fill`, its letter is `ink`, its outline `edge`. Where cells are
// too small for a shape they are bars in `edge`.
struct Mark {
  QColor fill;
  QColor ink;
  QColor edge;
};

struct Palette {
  Light light = Light::day;
  std::array<QColor, kTones> tones;
  std::array<Mark, match::kVerdicts> verdicts;

  [[nodiscard]] const QColor& operator[](Tone tone) const {
    return tones.at(static_cast<std::size_t>(tone));
  }
  [[nodiscard]] const Mark& of(match::Verdict verdict) const {
    return verdicts.at(static_cast<std::size_t>(verdict));
  }
};

[[nodiscard]] const Palette& palette(Light light);
// good, warn or bad.
[[nodiscard]] Tone tone_of(day::Standing standing);

// Every pair of tones that stands one on the other anywhere in the window, and what it must reach.
struct Pairing {
  Tone front;
  Tone back;
  double least;
};
[[nodiscard]] std::span<const Pairing> pairings();

}  // namespace walkdown::gui
