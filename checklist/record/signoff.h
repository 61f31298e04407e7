// SPDX-License-Identifier: Apache-2.0
// A person's signed statement. It is a signed note whose text has one sentence a line, so that a
// person can read it and a program can take it apart again without doubt:
//
//   This is a sign-off in a walkdown record.
//   I am Mara Linde.
//   My role is lead.
//   I state: nobody is left in the field.
//   The item is final/field-clear.
//   The value is 0.
//   The time is 2026-07-04T19:02:11.123Z.
//   The record is walkdown/desk/0123456789abcdef.
//   It has 123 entries.
//   Its root is 5dnad5oGWamtnKtwHe2W7QYdmigxV3cYMm3KyTKuZyg=.
//
// It names a head of the record, so it means nothing in another record or at another moment.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "checklist/record/head.h"
#include "checklist/record/note.h"
#include "checklist/record/signing_key.h"
#include "reader/result.h"

namespace walkdown::record {

struct SignOff {
  std::string person;     // printed name, as enrolled
  std::string role;       // as enrolled
  std::string statement;  // what is stated, in words, without the last full stop
  // "The <name> is <value>." in this order. Names of a-z, 0-9 and '-', each once, not `time`, not
  // `record`. Values may not be empty.
  std::vector<std::pair<std::string, std::string>> facts;
  std::int64_t at_ms = 0;
  Head head;  // its at_ms and up_ms are not part of the text

  // The value of a fact; empty where there is none.
  [[nodiscard]] std::string fact(std::string_view name) const;
};

// A sign-off may name a head at most this old, and its own time may be this far from the entry's.
inline constexpr std::int64_t kSignOffLifeMs = 600'000;  // our choice: time to read and type
// ... and of these the last so many checkpoints (some 2.5 MB).
inline constexpr std::size_t kHeadsKept = 32768;

// bad_input where a field cannot stand in its sentence: line break, empty, a space at an end.
[[nodiscard]] Result<std::string> text(const SignOff& sign_off);
[[nodiscard]] Result<SignOff> parse_sign_off(std::string_view text);

// The note, signed: what goes into an entry's body as `signoff` (one) or `signoffs` (several).
[[nodiscard]] Result<std::string> make_sign_off(const SignOff& sign_off, const SigningKey& person);

// A person as the record knows them.
struct Person {
  VerifyKey key;
  std::string name;
  std::string role;

  friend bool operator==(const Person&, const Person&) = default;
};

// Takes the note apart and checks form and signature: by one of `people` (same key, name, role),
// and by nobody else. Where it stands in a record is checked by verify(). forged, with the reason.
struct SignedSignOff {
  SignOff sign_off;
  Person person;
};
[[nodiscard]] Result<SignedSignOff> check_sign_off(std::string_view note,
                                                   const std::vector<Person>& people);

// The sign-offs of a body: `signoff` and `signoffs`. bad_input where they are no texts.
[[nodiscard]] Result<std::vector<std::string>> sign_offs_of(const nlohmann::json& body);

}  // namespace walkdown::record
