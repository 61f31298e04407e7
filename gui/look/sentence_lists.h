// SPDX-License-Identifier: Apache-2.0
// The known sentences, one list a subject. A sentence that is in none of them is shown as it is, in
// English.
#pragma once

#include <vector>

#include "gui/look/sentences.h"

namespace walkdown::gui {

constexpr Sentence whole(const char* text) { return {text, false}; }
constexpr Sentence inside(const char* text) { return {text, true}; }

void add_field_sentences(std::vector<Sentence>& all);   // findings and currents
void add_day_sentences(std::vector<Sentence>& all);     // why items stand as they do; the schedule
void add_record_sentences(std::vector<Sentence>& all);  // entries, and lines that were not taken
void add_files_sentences(std::vector<Sentence>& all);   // what is wrong with a plan
void add_rules_sentences(std::vector<Sentence>& all);   // what is refused, and what to do

}  // namespace walkdown::gui
