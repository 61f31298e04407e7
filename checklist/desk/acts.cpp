// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/acts.h"

namespace walkdown::desk {
namespace {

using day::Fold;
using day::Now;

}  // namespace

Entry enrol(Desk& desk, const std::string& name, const std::string& role,
            const record::VerifyKey& key) {
  return desk.act("enrol", [&](const Fold& fold, Now now) {
    return propose_enrol(fold, now, name, role, record::text(key));
  });
}

Entry go_in(Desk& desk, const std::string& person, const std::vector<std::string>& positions) {
  return desk.act(
      "in", [&](const Fold& fold, Now now) { return propose_in(fold, now, person, positions); });
}

Entry hang_tag(Desk& desk, const std::string& person) {
  return desk.act("tag-hang",
                  [&](const Fold& fold, Now now) { return propose_tag_hang(fold, now, person); });
}

Entry hold(Desk& desk, const std::string& by, const std::string& reason) {
  return desk.act("hold",
                  [&](const Fold& fold, Now now) { return propose_hold(fold, now, by, reason); });
}

Entry withdraw(Desk& desk, const std::string& by, const std::string& reason) {
  return desk.act("withdraw", [&](const Fold& fold, Now now) {
    return propose_withdraw(fold, now, by, reason);
  });
}

Entry thunder(Desk& desk, std::optional<std::int64_t> flash_ms) {
  return desk.act("thunder",
                  [&](const Fold& fold, Now now) { return propose_thunder(fold, now, flash_ms); });
}

Entry instrument_wind(Desk& desk, const day::WindValue& wind) {
  return desk.act("wind", [&](const Fold& fold, Now now) {
    return propose_wind(fold, now, std::nullopt, wind);
  });
}

Entry rehook(Desk& desk, const audit::Rehook& rehook) {
  return desk.act("rehook", audit::rehook_body(rehook));
}

Entry note(Desk& desk, const std::string& text) { return desk.act("note", {{"text", text}}); }

Entry set_show_time(Desk& desk, const Signer& signer, std::int64_t show_at_ms,
                    std::int64_t utc_offset_min) {
  return desk.sign(signer, "show-time", [&](const Fold& fold, Now now) {
    return propose_show_time(fold, now, signer.who(), show_at_ms, utc_offset_min);
  });
}

Entry answer(Desk& desk, const Signer& signer, const std::string& item, const day::Said& said,
             std::int64_t asked_up_ms) {
  return desk.sign(signer, "answer", [&](const Fold& fold, Now now) {
    return propose_answer(fold, now, signer.who(), item, said, asked_up_ms);
  });
}

Entry second(Desk& desk, const Signer& signer, std::uint64_t of) {
  return desk.sign(signer, "second", [&](const Fold& fold, Now now) {
    return propose_second(fold, now, signer.who(), of);
  });
}

Entry close_pause(Desk& desk, const Signer& signer, const std::string& stage) {
  return desk.sign(signer, "pause", [&](const Fold& fold, Now now) {
    return propose_pause(fold, now, signer.who(), stage);
  });
}

Entry hand_wind(Desk& desk, const Signer& signer, const day::WindValue& wind) {
  return desk.sign(signer, "wind", [&](const Fold& fold, Now now) {
    return propose_wind(fold, now, signer.who(), wind);
  });
}

Entry come_out(Desk& desk, const Signer& signer, const std::string& person,
               const std::string& reason) {
  return desk.sign(signer, "out", [&](const Fold& fold, Now now) {
    return propose_out(fold, now, signer.who(), person, reason);
  });
}

Entry take_tag_back(Desk& desk, const Signer& signer, const std::string& person,
                    const std::string& reason) {
  return desk.sign(signer, "tag-back", [&](const Fold& fold, Now now) {
    return propose_tag_back(fold, now, signer.who(), person, reason);
  });
}

Entry offer_key(Desk& desk, const Signer& receiver, const std::string& key) {
  return desk.sign(receiver, "key-offer", [&](const Fold& fold, Now now) {
    return propose_key_offer(fold, now, receiver.who(), key);
  });
}

Entry give_key(Desk& desk, const Signer& giver, const std::string& key) {
  return desk.sign(giver, "key-give", [&](const Fold& fold, Now now) {
    return propose_key_give(fold, now, giver.who(), key);
  });
}

Entry put_key(Desk& desk, const Signer& signer, const std::string& key, const std::string& place) {
  return desk.sign(signer, "key-put", [&](const Fold& fold, Now now) {
    return propose_key_put(fold, now, signer.who(), key, place);
  });
}

Entry take_key(Desk& desk, const Signer& signer, const std::string& key) {
  return desk.sign(signer, "key-take", [&](const Fold& fold, Now now) {
    return propose_key_take(fold, now, signer.who(), key);
  });
}

Entry lift(Desk& desk, const Signer& signer, const std::string& reason,
           std::optional<std::uint64_t> of) {
  return desk.sign(signer, "lift", [&](const Fold& fold, Now now) {
    return propose_lift(fold, now, signer.who(), reason, of);
  });
}

Entry waive(Desk& desk, const Signer& signer, const std::string& item, const std::string& reason) {
  return desk.sign(signer, "waive", [&](const Fold& fold, Now now) {
    return propose_waive(fold, now, signer.who(), item, reason);
  });
}

Entry waive_pin(Desk& desk, const Signer& signer, const std::string& pin,
                const std::string& reason) {
  return desk.sign(signer, "waive-pin", [&](const Fold& fold, Now now) {
    return propose_waive_pin(fold, now, signer.who(), pin, reason);
  });
}

Entry release(Desk& desk, const Signer& signer) {
  return desk.sign(signer, "release", [&](const Fold& fold, Now now) {
    return propose_release(fold, now, signer.who());
  });
}

Entry state_as(Desk& desk, const Signer& signer, const std::string& statement) {
  return desk.sign(signer, "statement", Desk::Body{{"text", statement}});
}

}  // namespace walkdown::desk
