// SPDX-License-Identifier: Apache-2.0
// Signatures from outside under the record's head. The head goes out as a file or a QR code; a
// witness signs it on a machine of their own, or a time-stamp authority says when it was shown it;
// what comes back becomes an entry. record/cosign.h and record/stamped.h have the forms.
#pragma once

#include <string>
#include <string_view>

#include "checklist/desk/acts.h"
#include "checklist/record/base64.h"
#include "reader/result.h"

namespace walkdown::desk {

// The last checkpoint of a record that holds, as a signed note. forged: it does not hold.
Result<std::string> head_note(const std::string& record_path);

// Puts the witness's note in, with the proof that leads from the head it is under to the head of
// now. refused: the witness is not enrolled with the role `witness`, or the head is not one of this
// record; bad_input: it is no such note.
Entry add_cosignature(Desk& desk, std::string_view note);

// Puts an authority's answer in, with the question and the same kind of proof. refused: the head is
// not one of this record, or the authority declined; otherwise as record::check_time_stamp().
Entry add_time_stamp(Desk& desk, std::string_view note, const record::Bytes& request,
                     const record::Bytes& response);

}  // namespace walkdown::desk
