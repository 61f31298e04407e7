// SPDX-License-Identifier: Apache-2.0
// Signed notes, C2SP signed-note: a text that ends in LF, a blank line, and one line for each
// signature: em dash, space, key name, space, base64(4 bytes of key id || signature).
// The signature covers the text with its last LF.
//
//   This is an example message.
//
//   — example.com/foo Uw2QOkn8srV1yJGh2VYRlL1Tnagv1YEq6TfXppzi2ONncAlTgK7Ztg1ERYNZXsYjOBH3mFXmR...
//
// Nobody should act on the text of a Note before is_signed_by() said yes.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "checklist/record/signing_key.h"
#include "checklist/record/vkey.h"
#include "reader/result.h"

namespace walkdown::record {

struct NoteSignature {
  std::string name;
  std::uint32_t id = 0;
  Bytes bytes;

  friend bool operator==(const NoteSignature&, const NoteSignature&) = default;
};

struct Note {
  std::string text;  // with its last LF
  std::vector<NoteSignature> signatures;

  friend bool operator==(const Note&, const Note&) = default;
};

[[nodiscard]] std::string text(const Note& note);

// bad_input for anything that text() would not write byte for byte: control characters other than
// LF, no blank line, a signature line of another form, base64 that is not canonical.
[[nodiscard]] Result<Note> parse_note(std::string_view text);

// Precondition: `text` ends in LF and is printable UTF-8 but for its LFs.
[[nodiscard]] Note sign_note(std::string text, const SigningKey& key);

// Whether one of the signatures is by this key (name, id and signature all fit).
[[nodiscard]] bool is_signed_by(const Note& note, const VerifyKey& key);

}  // namespace walkdown::record
