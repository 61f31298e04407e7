// SPDX-License-Identifier: Apache-2.0
// key-offer, key-give, key-put, key-take: a key is in one place or hand at every moment. A
// hand-over is signed by the receiver first, and until the giver has signed too the giver holds it,
// also through a crash. (29 CFR 1910.147(f)(4): orderly transfer.)
#include <fmt/format.h>

#include <algorithm>
#include <array>

#include "checklist/day/body.h"
#include "checklist/day/rules.h"

namespace walkdown::day {
namespace {

std::size_t key_of(const Scene& scene) { return scene.view.list.key(scene.text("key")); }

Done check_known(const Scene& scene) {
  if (key_of(scene) == Checklist::npos) {
    std::string keys;
    for (const Key& each : scene.view.list.keys) keys += (keys.empty() ? "" : ", ") + each.name;
    return refusal("there is no such key: " + scene.text("key"),
                   keys.empty() ? "begin a record with a checklist that has one"
                                : "choose one of these: " + keys);
  }
  return done();
}

Error tag_is_out(const Day& day) {
  return refusal(fmt::format("the tag of {} is not back", day.tags.begin()->first),
                 "let its owner take it back first");
}

Error not_the_holder(const Scene& scene, const KeyLog& key) {
  return refusal(fmt::format("{} does not hold this key, {} does", scene.by(),
                             key.person ? key.holder : "the " + key.holder),
                 key.person ? "let the holder do it" : "take it from there first");
}

// The place that any key arms from: a second key is no way round the rule of the first.
bool arms(const Checklist& list, const std::string& place) {
  return std::any_of(list.keys.begin(), list.keys.end(),
                     [&](const Key& key) { return key.firing == place; });
}

// Where nobody must be that the key could hurt: the group lock box of 29 CFR 1910.147(f)(3).
Done check_clear(const Scene& scene) {
  const Day& day = scene.day();
  if (!day.tags.empty()) {
    return tag_is_out(day);
  }
  if (!day.in_field.empty()) {
    return refusal(fmt::format("{} is in the field", day.in_field.begin()->first),
                   "let them come out and sign out first");
  }
  if (!day.holds.empty()) {
    return refusal("a hold is on: " + said(day.holds.front()), "let the lead lift it first");
  }
  return done();
}

Done check_offer(const Scene& scene) {
  if (const Done known = check_known(scene); !known) return known;
  const KeyLog& key = scene.day().keys[key_of(scene)];
  if (!key.person) {
    return refusal(fmt::format("{} is in the {}, in nobody's hand", scene.text("key"), key.holder),
                   "take it from there");
  }
  if (key.holder == scene.by()) {
    return refusal(scene.by() + " holds this key already", "let somebody else sign for it");
  }
  if (scene.text("from") != key.holder) {
    return refusal(key.holder + " holds this key", "sign for it from them");
  }
  return signed_by(scene, {});
}

void apply_offer(const Scene& scene, Day& day, PinBook& /*book*/) {
  KeyLog& key = day.keys[key_of(scene)];
  key.offered_to = scene.by();
  key.offer_n = scene.entry.n;
}

Done check_give(const Scene& scene) {
  if (const Done known = check_known(scene); !known) return known;
  const KeyLog& key = scene.day().keys[key_of(scene)];
  if (!key.person || key.holder != scene.by()) {
    return not_the_holder(scene, key);
  }
  const auto of = whole_in(scene.body(), "of");
  const bool offered =
      !key.offered_to.empty() && of && *of >= 0 && static_cast<std::uint64_t>(*of) == key.offer_n;
  if (!offered || key.offered_to != scene.text("to")) {
    return refusal("the receiver has not signed for it", "let the receiver sign first");
  }
  return signed_by(scene, {});
}

void move(const Scene& scene, Day& day, PinBook& book, std::string holder, bool person) {
  KeyLog& key = day.keys[key_of(scene)];
  key = {std::move(holder), person, {}, 0, scene.entry.n};
  break_items(scene.view.list, day, book, Event::custody, scene.entry.n,
              fmt::format("{} went to {}", scene.text("key"), key.holder));
}

void apply_give(const Scene& scene, Day& day, PinBook& book) {
  move(scene, day, book, scene.text("to"), true);
}

Done check_put(const Scene& scene) {
  if (const Done known = check_known(scene); !known) return known;
  const Key& key = scene.view.list.keys[key_of(scene)];
  const KeyLog& log = scene.day().keys[key_of(scene)];
  if (!log.person || log.holder != scene.by()) {
    return not_the_holder(scene, log);
  }
  if (!contains(key.places, scene.text("place"))) {
    std::string places;
    for (const std::string& each : key.places) places += (places.empty() ? "" : ", ") + each;
    return refusal("the key has no such place: " + scene.text("place"),
                   "choose one of these: " + places);
  }
  if (arms(scene.view.list, scene.text("place"))) {
    if (const Done clear = check_clear(scene); !clear) return clear;
  }
  return signed_by(scene, {});
}

void apply_put(const Scene& scene, Day& day, PinBook& book) {
  move(scene, day, book, scene.text("place"), false);
}

Done check_take(const Scene& scene) {
  if (const Done known = check_known(scene); !known) return known;
  const Key& key = scene.view.list.keys[key_of(scene)];
  const KeyLog& log = scene.day().keys[key_of(scene)];
  if (log.person) return refusal(log.holder + " holds this key", "let them hand it over");
  if (scene.text("place") != log.holder) {
    return refusal("the key is in the " + log.holder, "take it from there");
  }
  // Out of the lock box only when every tag is back; out of the firing position always.
  if (log.holder != key.firing && !scene.day().tags.empty()) {
    return tag_is_out(scene.day());
  }
  return signed_by(scene, key.takers);
}

void apply_take(const Scene& scene, Day& day, PinBook& book) {
  move(scene, day, book, scene.by(), true);
}

constexpr std::array<Rule, 4> kRules = {{{"key-offer", check_offer, apply_offer},
                                         {"key-give", check_give, apply_give},
                                         {"key-put", check_put, apply_put},
                                         {"key-take", check_take, apply_take}}};

}  // namespace

std::span<const Rule> key_rules() { return kRules; }

}  // namespace walkdown::day
