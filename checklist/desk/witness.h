// SPDX-License-Identifier: Apache-2.0
// A witness's signature under the record's head: the head goes out (a file, a QR code), the
// witness signs it on a machine of their own, and the signature comes back as an entry.
// record/cosign.h has the form.
#pragma once

#include <string>
#include <string_view>

#include "checklist/desk/acts.h"
#include "reader/result.h"

namespace walkdown::desk {

// The last checkpoint of a record that holds, as a signed note. forged: it does not hold.
Result<std::string> head_note(const std::string& record_path);

// Puts the witness's note in, with the proof that leads from the head it is under to the head of
// now. refused: the witness is not enrolled with the role `witness`, or the head is not one of this
// record; bad_input: it is no such note.
Entry add_cosignature(Desk& desk, std::string_view note);

}  // namespace walkdown::desk
