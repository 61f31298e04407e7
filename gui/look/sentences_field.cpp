// SPDX-License-Identifier: Apache-2.0
#include <QtGlobal>
#include <array>

#include "gui/look/sentence_lists.h"

namespace walkdown::gui {
namespace {

// What a finding says.
constexpr std::array kFindings{
    inside(QT_TRANSLATE_NOOP("Sentences", "pin %1 of rail %2, module %3")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "Check the plug, the lead and the igniter on %1: the circuit is open; "
                            "mend it, then read it again")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "Take the shunt off the lead on %1, or find where its two conductors "
                            "touch; then read it again")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "Count the igniters on %1: one fewer is connected than planned; add "
                            "it, then read it again")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "Count the igniters on %1: one more is connected than planned; take it "
                            "off, then read it again")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "Make the splices and the plug on %1 anew: a joint adds resistance; then read it again")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "Dry and insulate the splices on %1: current leaks past the igniter; then read it again")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "Re-seat the plug and tug each splice on %1: its readings jump; then "
                            "read it several times")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "See whose lead is on %1: nothing is planned there; move it to its own "
                            "pin, then read both again")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "Compare length and gauge of the lead on %1 with the plan; change the "
                            "one that is wrong, then read it again")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "Compare the type of igniter on %1 with the plan; change it, then read it again")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "Read %1 again: its readings cannot be believed or explained; if they "
                            "stay, trace its circuit by eye")),
    whole(QT_TRANSLATE_NOOP("Sentences", "Exchange the leads on %1 and %2; then read both again")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pin "
                            "too high: move each back to its own pin, then read the rail again")),
    whole(
        QT_TRANSLATE_NOOP("Sentences",
                          "On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pins "
                          "too high: move each back to its own pin, then read the rail again")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pin "
                            "too low: move each back to its own pin, then read the rail again")),
    whole(
        QT_TRANSLATE_NOOP("Sentences",
                          "On module %1, rail %2, the leads planned for pins %3 to %4 sit %5 pins "
                          "too low: move each back to its own pin, then read the rail again")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "Unplug rail %1 of module %2 and turn it round; then read it again")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "Exchange the plugs of rail %1 of module %2 and rail %3 of module %4; "
                            "then read both again")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences", "Exchange modules %1 and %2 (or their addresses); then read both again")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "Touch the tester's probe tips together, zero it, and read the field "
                            "again: every reading is off by the same ohms")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "Check gauge and material of the wire on the reels against the plan: all leads are off by "
        "one factor; correct the plan or the wire, then read again")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1; no reading tells this from %2: to decide, %3")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1; or it is, at %2 %, %3: to decide, %4")),
    whole(QT_TRANSLATE_NOOP("Sentences", "an open circuit")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a short")),
    whole(QT_TRANSLATE_NOOP("Sentences", "one igniter too few")),
    whole(QT_TRANSLATE_NOOP("Sentences", "one igniter too many")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a poor joint")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a leak")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a loose contact")),
    whole(QT_TRANSLATE_NOOP("Sentences", "somebody else's lead")),
    whole(QT_TRANSLATE_NOOP("Sentences", "a lead of another length or gauge")),
    whole(QT_TRANSLATE_NOOP("Sentences", "another type of igniter")),
    whole(QT_TRANSLATE_NOOP("Sentences", "test leads that were not zeroed")),
    whole(QT_TRANSLATE_NOOP("Sentences", "another wire throughout")),
    whole(QT_TRANSLATE_NOOP("Sentences", "something that no reading explains")),
    whole(QT_TRANSLATE_NOOP("Sentences", "see whether the shunt of %1 is still on")),
    whole(QT_TRANSLATE_NOOP("Sentences", "count the igniters on %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "tug each splice on %1 and read it again")),
    whole(QT_TRANSLATE_NOOP("Sentences", "see whether a splice on %1 is wet")),
    whole(QT_TRANSLATE_NOOP("Sentences", "tug the plug and the splices on %1 and read it again")),
    whole(QT_TRANSLATE_NOOP("Sentences", "compare the lead on %1 with the plan")),
    whole(QT_TRANSLATE_NOOP("Sentences", "read the label of the igniter on %1")),
    whole(QT_TRANSLATE_NOOP("Sentences", "touch the tester's probe tips together and read that")),
    whole(QT_TRANSLATE_NOOP("Sentences", "read gauge and material on the reels")),
    whole(QT_TRANSLATE_NOOP("Sentences", "unplug the lead on %1 and look at it")),
    whole(QT_TRANSLATE_NOOP("Sentences", "read the tags of the leads on %1 and %2")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "pull the lead on %1: if its tag is that of the pin %2 below, the row is shifted")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "pull the lead on %1: if its tag is that of the pin %2 above, the row is shifted")),
    whole(QT_TRANSLATE_NOOP("Sentences", "see which way round rail %1 of module %2 is plugged")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences", "read the tags on the plugs of rail %1, module %2 and rail %3, module %4")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "read the number plates and addresses of modules %1 and %2")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 and %2 exchanged")),
    whole(QT_TRANSLATE_NOOP("Sentences", "pins %1 to %2 of rail %3, module %4 shifted by %5")),
    whole(QT_TRANSLATE_NOOP("Sentences", "rail %1 of module %2 turned round")),
    whole(
        QT_TRANSLATE_NOOP("Sentences", "rail %1 of module %2 and rail %3 of module %4 exchanged")),
    whole(QT_TRANSLATE_NOOP("Sentences", "modules %1 and %2 exchanged")),
};

// Currents, of the tester and of the firing unit.
constexpr std::array kCurrent{
    inside(QT_TRANSLATE_NOOP("Sentences", "50 mA, WAC 212-17-317(6)")),
    inside(QT_TRANSLATE_NOOP("Sentences", "the maker's test_max_a of %1")),
    inside(QT_TRANSLATE_NOOP("Sentences", "%1 % of the no-fire current of %2")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "The tester's current cannot be judged: its profile gives no test_current_a; look at the "
        "meter's and the igniters' data sheets before you connect it")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "The tester's current cannot be judged: %1 has no no_fire_a; type it "
                            "in from the maker's data sheet before you connect the tester")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "The tester drives %1 mA into a short, the limit is %2 mA (%3)")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences", "The tester drives %1 mA into a short, not above the limit of %2 mA (%3)")),
    whole(QT_TRANSLATE_NOOP("Sentences", "reading with this tester is refused")),
    whole(QT_TRANSLATE_NOOP("Sentences", "use a tester that stays below it")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "The firing current of %1 cannot be judged: its igniter or its wire is "
                            "not in the igniter file; add it there and import the plan again")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences", "The firing current cannot be judged: the igniter file has no [supply]")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "The firing current cannot be judged: no all_fire_a is given for %1; "
                            "take it from the maker's sheet")),
    whole(QT_TRANSLATE_NOOP(
        "Sentences",
        "%1: %2 A at least through each igniter, %3 times its all-fire current of %4 A")),
    whole(QT_TRANSLATE_NOOP("Sentences", "%1; the loop may have %2 ohm, it has %3")),
    whole(QT_TRANSLATE_NOOP("Sentences",
                            "%1; in a series string the fastest bridge may part before the slowest "
                            "has started: use the maker's series current")),
};

}  // namespace

void add_field_sentences(std::vector<Sentence>& all) {
  all.insert(all.end(), kFindings.begin(), kFindings.end());
  all.insert(all.end(), kCurrent.begin(), kCurrent.end());
}

}  // namespace walkdown::gui
