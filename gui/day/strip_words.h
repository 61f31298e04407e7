// SPDX-License-Identifier: Apache-2.0
// What the strip says, from a snapshot and the checklist alone.
#pragma once

#include <QString>

#include "gui/live/listener.h"
#include "gui/live/snapshot.h"

namespace walkdown::gui {

struct Said {
  QString text;
  const char* tone = "";  // "", "good", "warn", "bad"
  QString more;           // the whole of it, for a tool tip and a screen reader
};

[[nodiscard]] Said show_words(const Snapshot& seen);
[[nodiscard]] Said day_word(const Snapshot& seen);
[[nodiscard]] Said release_words(const Snapshot& seen);
[[nodiscard]] Said key_words(const Snapshot& seen);
[[nodiscard]] Said field_words(const Snapshot& seen);
// What was measured, while the checklist takes it; else what is wrong with it.
[[nodiscard]] Said wind_words(const Snapshot& seen, const day::Checklist& list);
[[nodiscard]] Said link_words(LinkWord word, const QString& say);
[[nodiscard]] Said written_words(const Snapshot& seen);

// "hold by Ines Holm: a dog inside the line"
[[nodiscard]] QString hold_words(const day::HoldLog& hold);
// "3.2, gust 5.1 m/s"
[[nodiscard]] QString wind_text(const day::WindLog& wind);

}  // namespace walkdown::gui
