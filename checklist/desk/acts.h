// SPDX-License-Identifier: Apache-2.0
// What people do on a day, by name: each asks the rule, writes, waits, and gives the entry's number
// or the sentence that refuses it. day/FORMAT.md has the rules, day/propose.h the values.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "checklist/desk/desk.h"

namespace walkdown::desk {

using Entry = Result<std::uint64_t>;

// Anyone, unsigned: whatever makes the day worse or only tells what happened.
Entry enrol(Desk& desk, const std::string& name, const std::string& role,
            const record::VerifyKey& key);
Entry go_in(Desk& desk, const std::string& person, const std::vector<std::string>& positions);
Entry hang_tag(Desk& desk, const std::string& person);
Entry hold(Desk& desk, const std::string& by, const std::string& reason);
Entry withdraw(Desk& desk, const std::string& by, const std::string& reason);
Entry thunder(Desk& desk, std::optional<std::int64_t> flash_ms);
Entry instrument_wind(Desk& desk, const day::WindValue& wind);
Entry rehook(Desk& desk, const audit::Rehook& rehook);
// A line of free text that stands in the record and changes nothing.
Entry note(Desk& desk, const std::string& text);

// Signed.
// `utc_offset_min`: of the clock on the wall there, for the times in sentences.
Entry set_show_time(Desk& desk, const Signer& signer, std::int64_t show_at_ms,
                    std::int64_t utc_offset_min = 0);
// `asked_up_ms`: boot clock (desk.now().up_ms) when the question came up on the screen.
Entry answer(Desk& desk, const Signer& signer, const std::string& item, const day::Said& said,
             std::int64_t asked_up_ms);
// The second signature under entry `of`: State::waiting lists those that wait.
Entry second(Desk& desk, const Signer& signer, std::uint64_t of);
Entry close_pause(Desk& desk, const Signer& signer, const std::string& stage);
Entry hand_wind(Desk& desk, const Signer& signer, const day::WindValue& wind);
// `person` is somebody else than the signer only with a reason, and then waits for a second.
Entry come_out(Desk& desk, const Signer& signer, const std::string& person,
               const std::string& reason = {});
Entry take_tag_back(Desk& desk, const Signer& signer, const std::string& person,
                    const std::string& reason = {});
Entry offer_key(Desk& desk, const Signer& receiver, const std::string& key);
Entry give_key(Desk& desk, const Signer& giver, const std::string& key);
Entry put_key(Desk& desk, const Signer& signer, const std::string& key, const std::string& place);
Entry take_key(Desk& desk, const Signer& signer, const std::string& key);
// `of`: the last hold that the signer knew of (State::holds); a later one refuses the lift.
Entry lift(Desk& desk, const Signer& signer, const std::string& reason,
           std::optional<std::uint64_t> of = std::nullopt);
Entry waive(Desk& desk, const Signer& signer, const std::string& item, const std::string& reason);
Entry waive_pin(Desk& desk, const Signer& signer, const std::string& pin,
                const std::string& reason);
Entry release(Desk& desk, const Signer& signer);

// A statement of one's own, by anyone enrolled, also a witness: it changes nothing in the day and
// stands in the record, over its head of this moment.
Entry state_as(Desk& desk, const Signer& signer, const std::string& statement);

}  // namespace walkdown::desk
