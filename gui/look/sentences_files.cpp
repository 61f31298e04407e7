// SPDX-License-Identifier: Apache-2.0
#include <QtGlobal>
#include <array>

#include "gui/look/sentence_lists.h"

namespace walkdown::gui {
namespace {

// What is wrong with a plan or another file of the show.
constexpr std::array kThePlanAndItsFiles{
    whole(QT_TRANSLATE_NOOP("Sentences", "%1, row %2, column %3: %4")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1, row %2: %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1, column %2: %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "line %1, %2: %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "this is UTF-16; save the table as CSV in UTF-8")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "this is a spreadsheet file; save the table as CSV in UTF-8")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "row %1 uses this pin already; give one of the two another pin")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the file is empty; the first row names the columns")),
    whole(QT_TRANSLATE_NOOP("Sentences", "this is no column of a plan")),
    whole(QT_TRANSLATE_NOOP("Sentences", "write a text in quotes")),
    whole(QT_TRANSLATE_NOOP("Sentences", "name the header that stands in the table")),
    whole(QT_TRANSLATE_NOOP("Sentences", "this column has a header and a constant; keep one")),
    whole(QT_TRANSLATE_NOOP("Sentences", "cannot take the column map")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences", "a quote stands inside a field; put the whole field in quotes and double it")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a quoted field is not closed; add the missing quote")),
    whole(QT_TRANSLATE_NOOP("Sentences", "save the table as UTF-8")),
    whole(
        QT_TRANSLATE_NOOP("Sentences", "this header stands there twice; keep one of the columns")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "the table has no column '%1'; add it, or map another header onto it with a column map")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the igniter file has none")),
    whole(QT_TRANSLATE_NOOP("Sentences", "name one of the igniter file: %1")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "this field is beyond the last header; a separator is too many")),
    whole(QT_TRANSLATE_NOOP("Sentences", "write a whole number from 1 to 9999, as 7 or %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "name the cue that this pin fires")),
    whole(QT_TRANSLATE_NOOP("Sentences", "write how many igniters, a whole number from 0 to 999")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "write AWG24, 0.5mm2, or the name of a [wire] of the igniter file")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "the plan has more wire sizes than can be told apart; use fewer")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "write the one-way length in metres, from 0 to 10000, as 12.5")),
    whole(QT_TRANSLATE_NOOP("Sentences", "write series or parallel")),
    whole(
        QT_TRANSLATE_NOOP("Sentences", "write the calibre in millimetres, above 0 and up to 1000")),
    whole(QT_TRANSLATE_NOOP("Sentences", "no igniter is planned here, so this pin must read open")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a lead without a wire counts as 0 ohm; name its wire")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a wire without a length counts as 0 ohm; give lead_m")),
    whole(
        QT_TRANSLATE_NOOP("Sentences", "no cue has a position, so no walking order can be given")),
    whole(QT_TRANSLATE_NOOP("Sentences", "cue %1 has no position")),
    whole(QT_TRANSLATE_NOOP("Sentences", "module %1 has %2 rails by %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "this rail has %1 pins by %2")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "the modules have more rails or pins than a field can; state their "
                            "sizes with a module file, or correct the numbers")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences", "give rails = [pins on rail 1, pins on rail 2, ...], each from 1 to 9999")),
    whole(QT_TRANSLATE_NOOP("Sentences", "write a table [%1]")),
    whole(QT_TRANSLATE_NOOP("Sentences", "name a module from 1 to 9999, as [module.7]")),
    whole(QT_TRANSLATE_NOOP("Sentences", "this module is there twice")),
    whole(QT_TRANSLATE_NOOP("Sentences", "cannot take the module sizes")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "no_fire_a is above all_fire_a; look at the data sheet again")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "test_max_a is above no_fire_a; look at the data sheet again")),
    whole(QT_TRANSLATE_NOOP("Sentences", "give bridge_ohm = [least, most] in ohm")),
    whole(QT_TRANSLATE_NOOP("Sentences", "give ohm_per_km = [least, most] of one conductor")),
    whole(QT_TRANSLATE_NOOP("Sentences", "give volt = [least, most] under load")),
    whole(QT_TRANSLATE_NOOP("Sentences", "give source_ohm of the source and its cable; 0 if none")),
    whole(QT_TRANSLATE_NOOP("Sentences", "cannot take the igniter file")),
    whole(QT_TRANSLATE_NOOP("Sentences", "write a number from %1 to %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "write a whole number from %1 to %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "write [least, most], least first, from %1 to %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "this is no key; did you mean %1?")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the site is over 100 km across")),
    whole(QT_TRANSLATE_NOOP("Sentences", "check longitude and latitude of each place")),
    whole(QT_TRANSLATE_NOOP("Sentences", "not a GeoJSON FeatureCollection")),
    whole(QT_TRANSLATE_NOOP("Sentences", "export the site as GeoJSON (RFC 7946)")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a position has no name")),
    whole(QT_TRANSLATE_NOOP("Sentences", "name it as the plan does")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a ring is not closed")),
    whole(QT_TRANSLATE_NOOP("Sentences", "end it with the place it began with")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a feature has no role")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "write position, audience, structure, control or exclusion")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the show has mistakes")),
    whole(QT_TRANSLATE_NOOP("Sentences", "mend them first")),
    whole(QT_TRANSLATE_NOOP("Sentences", "Choose a plan first")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 pins on %2 modules, %3 positions")),
};

}  // namespace

void add_files_sentences(std::vector<Sentence>& all) {
  all.insert(all.end(), kThePlanAndItsFiles.begin(), kThePlanAndItsFiles.end());
}

}  // namespace walkdown::gui
