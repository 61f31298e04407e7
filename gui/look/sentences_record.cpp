// SPDX-License-Identifier: Apache-2.0
#include <QtGlobal>
#include <array>

#include "gui/look/sentence_lists.h"

namespace walkdown::gui {
namespace {

// Entries of the record.
constexpr std::array kRecord{
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 over range")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 %2 ohm")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 answered %2: %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 is enrolled as %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 looked and confirms: %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 closed the pause after \"%2\"")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 set the show for %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "wind: mean %1 m/s, gusts %2 m/s over %3, by %4")),
    inside(QT_TRANSLATE_NOOP("Sentences", "the instrument")),
    inside(QT_TRANSLATE_NOOP("Sentences", "instrument")),
    inside(QT_TRANSLATE_NOOP("Sentences", "somebody")),
    whole(QT_TRANSLATE_NOOP("Sentences", "thunder was heard, %1 s after its flash")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 is out of the field")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 hung a tag")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 has the tag back")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 says that %2 is out of the field")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 says that %2 is out of the field: %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 says that %2 has the tag back")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 says that %2 has the tag back: %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 says that %2 hung a tag")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 signed for the %2 that %3 holds")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 gave the %2 to %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 put the %2 into the %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 took the %2 out of the %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 lifted the hold")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 lifted the hold: %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 waives %2, which reads %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 waives %2, which reads %3: %4")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 waives %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 waives %2: %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 signed the release")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 withdrew the release")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 withdrew the release: %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "hooked up anew: %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "hooked up anew: %1 (%2)")),
    inside(QT_TRANSLATE_NOOP("Sentences", "the whole field")),
    inside(QT_TRANSLATE_NOOP("Sentences", "module %1 rail %2")),
    inside(QT_TRANSLATE_NOOP("Sentences", "module %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a line was not taken: %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the field reads: %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1 states: %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the record was opened, with the checklist \"%1\"")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the program was started anew")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the machine slept for %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the wall clock stepped back by %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the wall clock stepped on by %1")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences", "a crash left lines that were never acknowledged; they are kept in %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a witness's signature that cannot be read")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "%1 signed as a witness that the first %2 entries stood at %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a time-stamp that does not hold")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences", "%1 signed that the first %2 entries stood at %3 (RFC 3161 time-stamp)")),
};

// Lines of a tester that were not taken.
constexpr std::array kLinesOfATester{
    whole(QT_TRANSLATE_NOOP("Sentences", "the checksum is missing")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the checksum is %1, the line itself gives %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the unit %1 is not one of resistance")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the tester says that it has no number")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "the value %1 is neither a number nor a word for above range")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the value %1 is outside -1000 ohm .. 1e9 ohm")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the line is longer than 4096 bytes")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the line is blank")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "the line has a NUL byte inside: a byte was damaged on the way")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "the line is not in the form that the tester profile describes")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the line number %1 is not a whole number")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the %1 is not a number from 1 to 9999")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the line was cut off when the port went away")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "the first line after the port was opened may lack its beginning")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "the checksum is missing, and most lines of this tester carry one")),
};

// Why a record does not verify.
constexpr std::array kBroken{
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "the line is not as a record writes it: a checkpoint holds one text and nothing else")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the line is not as a record writes it: no entry number")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the line is not as a record writes it: no time")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "the line is not as a record writes it: the time is not one, in UTC with three decimals")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the line is not as a record writes it: no boot clock")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the line is not as a record writes it: no kind")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the line is not as a record writes it: no body")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "the line is not as a record writes it: the body has another spelling at byte %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the line is longer than a record allows")),
    whole(QT_TRANSLATE_NOOP("Sentences", "entry %1 should stand here, and it is entry %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "no checkpoint comes for too long")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a checkpoint stands here with no entry before it")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a checkpoint has one signature")),
    whole(
        QT_TRANSLATE_NOOP("Sentences", "the checkpoint is not signed by a station of this record")),
    whole(
        QT_TRANSLATE_NOOP("Sentences", "the checkpoint seals %1 entries, and %2 stand before it")),
    whole(QT_TRANSLATE_NOOP("Sentences", "line %1 was changed after it was sealed")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "one of the lines %1 to %2 was changed after it was sealed")),
    inside(QT_TRANSLATE_NOOP("Sentences", "line %1")),
    inside(QT_TRANSLATE_NOOP("Sentences", "one of the lines %1 to %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the checkpoint is of another record: %1")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "the file ends in the middle of this line: its end was cut, or never written")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "no checkpoint follows %1: the end was cut, or never acknowledged")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the file is empty")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the opening does not hold: %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the record was closed, and this entry comes after it")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the sign-off belongs to another record")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences", "the sign-off names a state that this record was not in shortly before")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the sign-off is too old for this entry")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the sign-off is of another time than its entry")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the sign-off was used before")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the cosignature is for another record")),
    whole(
        QT_TRANSLATE_NOOP("Sentences", "the cosignature is by nobody who is enrolled as witness")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the cosigned state is not one that this record was in")),
    whole(QT_TRANSLATE_NOOP("Sentences", "the entry %1 does not hold: %2")),
    whole(QT_TRANSLATE_NOOP("Sentences", "it has to be signed, and is not")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences", "the entry %1 does not hold: %2 signed something else than the entry says")),
    whole(QT_TRANSLATE_NOOP("Sentences", "it is signed by %1 as %2, and says %3 as %4")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "the release was signed and not possible at that moment; %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "this is no checkpoint")),
};

}  // namespace

void add_record_sentences(std::vector<Sentence>& all) {
  all.insert(all.end(), kBroken.begin(), kBroken.end());
  all.insert(all.end(), kRecord.begin(), kRecord.end());
  all.insert(all.end(), kLinesOfATester.begin(), kLinesOfATester.end());
}

}  // namespace walkdown::gui
