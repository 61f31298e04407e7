// SPDX-License-Identifier: Apache-2.0
// A time-stamp in the record, an entry `timestamp`:
//   note               the signed checkpoint that was stamped, whole
//   request, response  what the authority was asked and what it answered: DER in base64
//   to, path           that this record went through that checkpoint (head_proof.h)
#pragma once

#include <cstdint>
#include <nlohmann/json.hpp>
#include <string>
#include <string_view>

#include "checklist/record/base64.h"
#include "checklist/record/head_proof.h"
#include "checklist/record/note.h"
#include "checklist/record/timestamp.h"

namespace walkdown::record {

struct Stamped {
  std::string text;  // the note, as it was stamped
  Note note;
  Checkpoint checkpoint;
  Bytes request, response;
  HeadProof proof;

  // check_time_stamp() of it. Who signed the note, and whether the proof leads to this record's
  // head, are the record's own questions.
  [[nodiscard]] Result<TimeStamp> check() const {
    return check_time_stamp(text, &request, response);
  }
};

[[nodiscard]] Result<Stamped> parse_stamped_body(const nlohmann::json& body);
[[nodiscard]] nlohmann::json stamped_body(std::string_view note, const Bytes& request,
                                          const Bytes& response, const HeadProof& proof);

}  // namespace walkdown::record
