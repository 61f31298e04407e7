// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/propose.h"

#include <utility>

#include "checklist/day/scene.h"
#include "checklist/day/seconds.h"

namespace walkdown::day {
namespace {

Body by(const Who& who) { return {{"by", who.name}, {"role", who.role}}; }

Body by(const Who& who, Body more) {
  more.update(by(who));
  return more;
}

// An empty text says nothing and is left out.
void put(Body& body, const char* name, std::string value) {
  if (!value.empty()) body[name] = std::move(value);
}

const KeyLog* key_log(const Fold& fold, const std::string& key) {
  const std::size_t index = fold.checklist().key(key);
  return index == Checklist::npos ? nullptr : &fold.day().keys[index];
}

Result<Body> for_person(const Fold& fold, Now now, std::string_view kind, Body body,
                        std::string person, std::string reason) {
  body["person"] = std::move(person);
  put(body, "reason", std::move(reason));
  return propose(fold, now, kind, std::move(body));
}

}  // namespace

Result<Body> propose(const Fold& fold, Now now, std::string_view kind, Body body) {
  if (const Done fine = fold.would_take(kind, body, now); !fine) return fine.error();
  return body;
}

Result<Body> propose_enrol(const Fold& fold, Now now, std::string name, std::string role,
                           std::string vkey) {
  return propose(fold, now, "enrol",
                 {{"name", std::move(name)}, {"role", std::move(role)}, {"vkey", std::move(vkey)}});
}

Result<Body> propose_show_time(const Fold& fold, Now now, const Who& who, std::int64_t show_at_ms,
                               std::int64_t utc_offset_min) {
  return propose(fold, now, "show-time",
                 by(who, {{"show_at_ms", show_at_ms}, {"utc_offset_min", utc_offset_min}}));
}

Result<Body> propose_answer(const Fold& fold, Now now, const Who& who, std::string item,
                            const Said& said, std::int64_t asked_up_ms) {
  Body body = by(who, {{"asked_up_ms", asked_up_ms}});
  const std::size_t index = fold.checklist().item(item);
  const auto* const source = fold.outside().source;
  if (index != Checklist::npos && fold.checklist().items[index].alike && source != nullptr) {
    body["groups"] = source->alike_groups();
  }
  body["item"] = std::move(item);
  if (said.value) body["value"] = *said.value;
  if (said.milli) body["milli"] = *said.milli;
  put(body, "sha256", said.sha256);
  return propose(fold, now, "answer", std::move(body));
}

Result<Body> propose_second(const Fold& fold, Now now, const Who& who, std::uint64_t n) {
  const auto open = open_claim(fold.view(), n);
  return propose(fold, now, "second",
                 by(who, {{"of", n}, {"what", open ? open->claim.what : std::string()}}));
}

Result<Body> propose_pause(const Fold& fold, Now now, const Who& who, std::string stage) {
  return propose(fold, now, "pause", by(who, {{"stage", std::move(stage)}}));
}

Result<Body> propose_wind(const Fold& fold, Now now, const std::optional<Who>& who,
                          const WindValue& wind) {
  Body body = {{"mean_mm_per_s", wind.mean_mm_per_s},
               {"gust_mm_per_s", wind.gust_mm_per_s},
               {"period_ms", wind.period_ms},
               {"from", who ? "hand" : "instrument"}};
  return propose(fold, now, "wind", who ? by(*who, std::move(body)) : std::move(body));
}

Result<Body> propose_thunder(const Fold& fold, Now now, std::optional<std::int64_t> flash_ms) {
  Body body = Body::object();
  if (flash_ms) body["flash_ms"] = *flash_ms;
  return propose(fold, now, "thunder", std::move(body));
}

Result<Body> propose_in(const Fold& fold, Now now, std::string person,
                        std::vector<std::string> positions) {
  return propose(fold, now, "in",
                 {{"person", std::move(person)}, {"positions", std::move(positions)}});
}

Result<Body> propose_out(const Fold& fold, Now now, const Who& who, std::string person,
                         std::string reason) {
  return for_person(fold, now, "out", by(who), std::move(person), std::move(reason));
}

Result<Body> propose_tag_hang(const Fold& fold, Now now, std::string person) {
  return for_person(fold, now, "tag-hang", Body::object(), std::move(person), {});
}

Result<Body> propose_tag_back(const Fold& fold, Now now, const Who& who, std::string person,
                              std::string reason) {
  return for_person(fold, now, "tag-back", by(who), std::move(person), std::move(reason));
}

Result<Body> propose_key_offer(const Fold& fold, Now now, const Who& receiver, std::string key) {
  const KeyLog* const log = key_log(fold, key);
  return propose(
      fold, now, "key-offer",
      by(receiver, {{"key", std::move(key)}, {"from", log != nullptr ? log->holder : ""}}));
}

Result<Body> propose_key_give(const Fold& fold, Now now, const Who& giver, std::string key) {
  const KeyLog* const log = key_log(fold, key);
  Body body = by(giver, {{"key", std::move(key)}});
  if (log != nullptr) {
    body["of"] = log->offer_n;
    body["to"] = log->offered_to;
  }
  return propose(fold, now, "key-give", std::move(body));
}

Result<Body> propose_key_put(const Fold& fold, Now now, const Who& who, std::string key,
                             std::string place) {
  return propose(fold, now, "key-put",
                 by(who, {{"key", std::move(key)}, {"place", std::move(place)}}));
}

Result<Body> propose_key_take(const Fold& fold, Now now, const Who& who, std::string key) {
  const KeyLog* const log = key_log(fold, key);
  return propose(fold, now, "key-take",
                 by(who, {{"key", std::move(key)}, {"place", log != nullptr ? log->holder : ""}}));
}

Result<Body> propose_hold(const Fold& fold, Now now, std::string by_whom, std::string reason) {
  Body body = Body::object();
  put(body, "by", std::move(by_whom));
  put(body, "reason", std::move(reason));
  return propose(fold, now, "hold", std::move(body));
}

Result<Body> propose_lift(const Fold& fold, Now now, const Who& who, std::string reason,
                          std::optional<std::uint64_t> of) {
  const auto& holds = fold.day().holds;
  if (!of && !holds.empty()) of = holds.back().n;
  Body body = by(who, {{"reason", std::move(reason)}});
  if (of) body["of"] = *of;
  return propose(fold, now, "lift", std::move(body));
}

Result<Body> propose_waive(const Fold& fold, Now now, const Who& who, std::string item,
                           std::string reason) {
  return propose(fold, now, "waive",
                 by(who, {{"item", std::move(item)}, {"reason", std::move(reason)}}));
}

Result<Body> propose_waive_pin(const Fold& fold, Now now, const Who& who, std::string pin,
                               std::string reason) {
  Body body = by(who, {{"pin", pin}, {"reason", std::move(reason)}});
  const View view = fold.view();
  const std::size_t index = view.book.find(pin);
  if (index != PinBook::npos) body["verdict"] = view.book.verdict(view.outside, view.day, index);
  return propose(fold, now, "waive-pin", std::move(body));
}

Result<Body> propose_release(const Fold& fold, Now now, const Who& who) {
  return propose(fold, now, "release", by(who));
}

Result<Body> propose_withdraw(const Fold& fold, Now now, std::string by_whom, std::string reason) {
  Body body = Body::object();
  put(body, "by", std::move(by_whom));
  put(body, "reason", std::move(reason));
  return propose(fold, now, "withdraw", std::move(body));
}

Result<Body> propose_rehook(const Fold& fold, Now now, std::vector<std::string> pins,
                            std::vector<std::string> positions) {
  return propose(fold, now, "rehook",
                 {{"pins", std::move(pins)}, {"positions", std::move(positions)}});
}

}  // namespace walkdown::day
