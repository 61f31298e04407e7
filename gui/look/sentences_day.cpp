// SPDX-License-Identifier: Apache-2.0
#include <QtGlobal>
#include <array>

#include "gui/look/sentence_lists.h"

namespace walkdown::gui {
namespace {

// Why an item stands as it does.
constexpr std::array kDayWhy{
    whole(QT_TRANSLATE_NOOP("Sentences", "not answered yet")),
    whole(QT_TRANSLATE_NOOP("Sentences", "due at %1, not answered yet")),
    whole(QT_TRANSLATE_NOOP("Sentences", "waits for its second signature")),
    whole(QT_TRANSLATE_NOOP("Sentences", "was answered more than %1 ago")),
    whole(QT_TRANSLATE_NOOP("Sentences", "was read more than %1 ago")),
    whole(QT_TRANSLATE_NOOP("Sentences", "waived by %1 and %2: %3 (%4)")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the show has no site to measure on")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the wait after the last thunder is over")),
    whole(QT_TRANSLATE_NOOP("Sentences", "no thunder near enough was told")),
    whole(QT_TRANSLATE_NOOP("Sentences", "thunder: wait until %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "wait until %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the wait is over")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the wait begins with %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 has the %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 has the %2, in the field")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the %1 is in the %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the tag of %1 is not back")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 while %2 is in the field")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1; it has to be %2")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 or %2")),
    inside(QT_TRANSLATE_NOOP("Sentences", "with the %1")),
    inside(QT_TRANSLATE_NOOP("Sentences", "in the %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "nobody is in the field")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 is in the field")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 are in the field: %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "gusts of %1 are above %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a mean wind of %1 is above %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "gusts of %1 are above %2, over %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a mean wind of %1 is above %2, over %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the last wind was read by somebody who may not")),
    whole(QT_TRANSLATE_NOOP("Sentences", "mean %1, gusts %2, by %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "no wind over %1 was read yet")),
    whole(QT_TRANSLATE_NOOP("Sentences", "nothing is known")),
    whole(QT_TRANSLATE_NOOP("Sentences", "no pin is planned, so there is nothing that could fit")),
    whole(QT_TRANSLATE_NOOP("Sentences", "all %1 planned pins fit")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 of %2 planned pins fit, %3 is waived by name")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 of %2 planned pins fit, %3 are waived by name")),
    whole(QT_TRANSLATE_NOOP("Sentences", "of %1 planned pins %2")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 is unread")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 are unread")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 was read too long ago")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 were read too long ago")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 are unread, %2")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 is unread, %2")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 was read too long ago, %2")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 were read too long ago, %2")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 does not fit (%2)")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 do not fit (%2)")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 fits")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 doubtful")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 low")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 high")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 open")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 short")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 unsteady")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 stray")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 unread")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 stale")),
    whole(QT_TRANSLATE_NOOP("Sentences", "was found: %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 is below %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 is above %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1; %2")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "the clock went back over a restart, so its age is not known")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the wall clock stepped")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the machine was started anew")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the machine slept")),
    whole(QT_TRANSLATE_NOOP("Sentences", "comes up again after the restart")),
    whole(QT_TRANSLATE_NOOP("Sentences", "comes up again after a break")),
    whole(QT_TRANSLATE_NOOP("Sentences", "comes up again after the hold")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a pin was read after the release")),
    whole(QT_TRANSLATE_NOOP("Sentences", "thunder was heard")),
    whole(QT_TRANSLATE_NOOP("Sentences", "pins were hooked up anew")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the show was moved to %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a hold was called")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 called a hold")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 called a hold: %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 went into the field")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 went into the field: %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 went to %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 withdrew it")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 withdrew it: %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the record was closed")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the record was closed: %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "every item holds")),
    whole(QT_TRANSLATE_NOOP("Sentences", "stands until %1 expires")),
    whole(QT_TRANSLATE_NOOP("Sentences", "no stage is part of the release")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the pause after \"%1\" is not closed")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 is open: %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 is due: %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 is expired: %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 is broken: %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 is refused: %2")),
};

// Planning from the show time.
constexpr std::array kSchedule{
    whole(QT_TRANSLATE_NOOP("Sentences", "every item holds to the end of the show at %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a release for %1 is possible: begin %2 by %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "no show time is set")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences", "the show of %1 was released; nothing has to begin before it any more")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "%1 lasts only %2: answered by %3 it would not hold to the end of the show at %4")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "%1 cannot be done before %2, and had to be by %3: move the show by %4 or more")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "as planned, %1 expires %2 before the show: answer it again between %3 and %4")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "as planned, %1 expires %2 before the end of the show: answer it again between %3 and %4")),
};

// Distances.
constexpr std::array kZone{
    whole(QT_TRANSLATE_NOOP("Sentences", "%1: all %2 distances are kept")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1: %2, and %3 more")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 lies inside %2, or too near its edge to tell")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 does not say how far %2 must be from %3: %4")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 is %2 from %3; %4 asks for %5")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 lies outside the ground that is kept clear")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the site does not show where %1 is")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the site shows no audience to measure to")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 mm is above its largest calibre, %2 mm")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "it has cues without a calibre, and the table no distance for those")),
};

}  // namespace

void add_day_sentences(std::vector<Sentence>& all) {
  all.insert(all.end(), kDayWhy.begin(), kDayWhy.end());
  all.insert(all.end(), kSchedule.begin(), kSchedule.end());
  all.insert(all.end(), kZone.begin(), kZone.end());
}

}  // namespace walkdown::gui
