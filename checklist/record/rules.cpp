// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/rules.h"

#include <algorithm>
#include <cstdlib>

#include "checklist/record/cosign.h"
#include "checklist/record/json_text.h"
#include "checklist/record/utf8.h"

namespace walkdown::record {

namespace {

using nlohmann::json;

constexpr std::size_t kLongestPersonName = 200;

std::string string_of(const json& body, const char* name) {
  const auto found = body.find(name);
  return found != body.end() && found->is_string() ? found->get<std::string>() : std::string{};
}

Error bad_opening(const char* why) {
  return {Code::bad_input, std::string("the opening does not hold: ") + why, "", ""};
}

bool is_sign_off_of(const EntryView& entry) {
  return entry.body.find("\"signoff") != std::string_view::npos;
}

}  // namespace

Result<OpenFacts> open_facts(const EntryView& entry) {
  if (entry.n != 0 || entry.kind != "open") return bad_opening("the first entry is no `open`");
  const json body = parse_canonical(entry.body);
  const auto format = body.find("format");
  if (format == body.end() || *format != 1) return bad_opening("the format is not 1");
  OpenFacts facts;
  facts.origin = string_of(body, "origin");
  if (!is_key_name(facts.origin)) return bad_opening("the origin is no name without spaces");
  if (!body.contains("show")) return bad_opening("there is no show");
  auto station = parse_vkey(string_of(body, "station"));
  if (!station) return bad_opening("the station is no public key");
  if (station->type != kSignsNotes) return bad_opening("the station's key is not for notes");
  facts.station = std::move(*station);
  return facts;
}

Result<Person> person_of(const json& enrolment) {
  const auto lacks = [](std::string what) {
    return Error{Code::bad_input, std::move(what), "", ""};
  };
  auto key = parse_vkey(string_of(enrolment, "vkey"));
  if (!key) return lacks("the enrolment has no public key: " + key.error().what);
  Person person{std::move(*key), string_of(enrolment, "name"), string_of(enrolment, "role")};
  if (!is_plain_line(person.name, kLongestPersonName)) return lacks("the enrolment has no name");
  if (!is_kind(person.role)) return lacks("the enrolment has no role of a-z, 0-9 and '-'");
  return person;
}

void Heads::push(const Head& head) {
  heads_.push_back(head);
  if (heads_.size() > kHeadsKept) heads_.pop_front();
}

const Head* Heads::find(std::uint64_t size) const {
  const auto found =
      std::lower_bound(heads_.begin(), heads_.end(), size,
                       [](const Head& head, std::uint64_t wanted) { return head.size < wanted; });
  return found != heads_.end() && found->size == size ? &*found : nullptr;
}

std::optional<std::string> Rules::accept(const EntryView& entry, const Heads& heads) {
  if (closed_) return "the record was closed, and this entry comes after it";
  if ((entry.n == 0) != (entry.kind == "open")) return "only the first entry is an `open`";
  if (auto why = times_.accept(entry)) return why;
  if (entry.n == 0) return open(entry);
  if (entry.kind == "close") closed_ = true;
  const bool enrols = entry.kind == "enrol", cosigns = deep_ && entry.kind == "cosign";
  const bool signs = deep_ && is_sign_off_of(entry);
  const bool stamps = deep_ && entry.kind == "timestamp";
  if (!enrols && !cosigns && !stamps && !signs) return std::nullopt;
  const json body = parse_canonical(entry.body);
  if (enrols) {
    if (auto why = enrol(body)) return why;
  }
  if (cosigns) {
    if (auto why = cosignature(body, heads)) return why;
  }
  if (stamps) {
    if (auto why = time_stamp(entry, body, heads)) return why;
  }
  return signs ? sign_offs(entry, body, heads) : std::nullopt;
}

Rules::Why Rules::open(const EntryView& entry) {
  auto facts = open_facts(entry);
  if (!facts) return facts.error().what;
  origin_ = std::move(facts->origin);
  stations_.push_back(std::move(facts->station));
  return std::nullopt;
}

Rules::Why Rules::enrol(const json& body) {
  auto enrolled = person_of(body);
  if (!enrolled) return enrolled.error().what;
  Person& person = *enrolled;
  for (const Person& other : people_) {
    const bool same_key = other.key.key == person.key.key;
    if (other == person) return person.name + " is enrolled as " + person.role + " already";
    if (same_key && other.name != person.name) return "this key is already that of " + other.name;
    if (!same_key && other.key.name == person.key.name) {
      return "another key has the name " + person.key.name + " already";
    }
  }
  if (person.role == "station") stations_.push_back(person.key);
  people_.push_back(std::move(person));
  return std::nullopt;
}

Rules::Why Rules::sign_offs(const EntryView& entry, const json& body, const Heads& heads) {
  const auto notes = sign_offs_of(body);
  if (!notes) return notes.error().what;
  // A sign-off older than the heads kept fails by that, so it need not be remembered.
  used_.erase(used_.begin(), used_.lower_bound({heads.oldest(), Hash{}}));
  for (const std::string& note : *notes) {
    if (auto why = sign_off(entry, note, heads)) return why;
  }
  return std::nullopt;
}

Rules::Why Rules::sign_off(const EntryView& entry, const std::string& note, const Heads& heads) {
  const auto checked = check_sign_off(note, people_);
  if (!checked) return checked.error().what;
  const SignOff& sign_off = checked->sign_off;
  if (sign_off.head.origin != origin_) return "the sign-off belongs to another record";
  const Head* head = heads.find(sign_off.head.size);
  if (head == nullptr || head->root != sign_off.head.root) {
    return "the sign-off names a state that this record was not in shortly before";
  }
  if (entry.up_ms - head->up_ms > kSignOffLifeMs) return "the sign-off is too old for this entry";
  const std::int64_t age = entry.at_ms - sign_off.at_ms;
  if (age > kSignOffLifeMs || age < -kPaceMs)
    return "the sign-off is of another time than its entry";
  if (!used_.emplace(sign_off.head.size, sha256(note)).second)
    return "the sign-off was used before";
  return std::nullopt;
}

Rules::Why Rules::cosignature(const json& body, const Heads& heads) const {
  const auto cosigned = parse_cosign_body(body);
  if (!cosigned) return cosigned.error().what;
  if (cosigned->checkpoint.origin != origin_) return "the cosignature is for another record";
  const bool by_witness = std::any_of(people_.begin(), people_.end(), [&](const Person& person) {
    return person.role == "witness" && is_cosigned_by(*cosigned, person.key);
  });
  if (!by_witness) return "the cosignature is by nobody who is enrolled as witness";
  const Head* head = heads.find(cosigned->proof.to);
  if (head == nullptr || !leads_to(cosigned->checkpoint, cosigned->proof, *head)) {
    return "the cosigned state is not one that this record was in";
  }
  return std::nullopt;
}

Rules::Why Rules::time_stamp(const EntryView& entry, const json& body, const Heads& heads) {
  auto stamped = parse_stamped_body(body);
  if (!stamped) return stamped.error().what;
  if (stamped->checkpoint.origin != origin_) return "the time-stamp is for another record";
  const bool by_station =
      std::any_of(stations_.begin(), stations_.end(),
                  [&](const VerifyKey& key) { return is_signed_by(stamped->note, key); });
  if (!by_station) return "the time-stamp is over a head that no station of this record signed";
  const Head* head = heads.find(stamped->proof.to);
  if (head == nullptr || !leads_to(stamped->checkpoint, stamped->proof, *head)) {
    return "the stamped state is not one that this record was in";
  }
  auto stamp = stamped->check();
  if (!stamp) return stamp.error().what;
  const auto same = [&](const StampAt& each) { return each.response == stamped->response; };
  if (std::any_of(stamps_.begin(), stamps_.end(), same)) {
    return "the same time-stamp stands in this record already";
  }
  const Head* of = heads.find(stamped->checkpoint.size);
  stamps_.push_back({entry.n, entry.at_ms, stamped->checkpoint.size,
                     of == nullptr ? std::nullopt : std::optional(of->at_ms), std::move(*stamp),
                     std::move(stamped->response)});
  return std::nullopt;
}

}  // namespace walkdown::record
