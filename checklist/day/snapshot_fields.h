// SPDX-License-Identifier: Apache-2.0
// Every member of Day in one order, for a snapshot in either direction. Internal to this folder.
#pragma once

#include "checklist/day/day.h"

namespace walkdown::day {

template <typename Archive>
void fields(Archive& archive, Moment& each) {
  archive(each.aged_ms, each.sure_ms);
}
template <typename Archive>
void fields(Archive& archive, Timeline& each) {
  each.fields(archive);
}
template <typename Archive>
void fields(Archive& archive, Enrolled& each) {
  archive(each.name, each.role, each.vkey);
}
template <typename Archive>
void fields(Archive& archive, Claim& each) {
  archive(each.n, each.moment, each.by, each.what, each.second, each.second_n);
}
template <typename Archive>
void fields(Archive& archive, Answer& each) {
  archive(each.claim, each.value, each.good, each.fast, each.why);
}
template <typename Archive>
void fields(Archive& archive, Broken& each) {
  archive(each.n, each.why);
}
template <typename Archive>
void fields(Archive& archive, Failure& each) {
  archive(each.standing, each.n, each.what);
}
template <typename Archive>
void fields(Archive& archive, Waiver& each) {
  archive(each.claim, each.reason, each.failure);
}
template <typename Archive>
void fields(Archive& archive, ItemLog& each) {
  archive(each.answer, each.broken, each.waiver);
}
template <typename Archive>
void fields(Archive& archive, KeyLog& each) {
  archive(each.holder, each.person, each.offered_to, each.offer_n, each.since_n);
}
template <typename Archive>
void fields(Archive& archive, Return& each) {
  archive(each.claim, each.person, each.tag);
}
template <typename Archive>
void fields(Archive& archive, PinLog& each) {
  archive(each.read_n, each.read_aged_ms, each.undone_n);
}
template <typename Archive>
void fields(Archive& archive, PinWaiver& each) {
  archive(each.claim, each.reason, each.verdict, each.undone_n);
}
template <typename Archive>
void fields(Archive& archive, WindLog& each) {
  archive(each.n, each.aged_ms, each.mean_mm_per_s, each.gust_mm_per_s, each.by, each.role);
}
template <typename Archive>
void fields(Archive& archive, HoldLog& each) {
  archive(each.n, each.by, each.reason);
}
template <typename Archive>
void fields(Archive& archive, ReleaseLog& each) {
  archive(each.word, each.claim, each.until_aged_ms, each.why);
}
template <typename Archive>
void fields(Archive& archive, ThunderLog& each) {
  archive(each.n, each.sure_ms, each.flash_ms);
}
template <typename Archive>
void fields(Archive& archive, Ignored& each) {
  archive(each.n, each.why);
}
template <typename Archive>
void fields(Archive& archive, Day& each) {
  archive(each.time, each.entries, each.people, each.show_at_ms, each.utc_offset_min, each.items,
          each.pauses, each.keys, each.in_field, each.tags, each.returns, each.pins,
          each.pin_waivers, each.winds, each.thunder, each.holds, each.release, each.released_once,
          each.last_answered, each.last_answer_sure_ms, each.readings, each.ignored,
          each.ignored_count);
}

}  // namespace walkdown::day
