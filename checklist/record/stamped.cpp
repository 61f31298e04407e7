// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/stamped.h"

#include <utility>

namespace walkdown::record {

namespace {

using nlohmann::json;

Error not_one(const std::string& why) {
  return {Code::bad_input, "the time-stamp does not hold: " + why, "", ""};
}

std::optional<Bytes> der_in(const json& body, const char* name) {
  const auto found = body.find(name);
  if (found == body.end() || !found->is_string()) return std::nullopt;
  return from_base64(found->get_ref<const std::string&>());
}

}  // namespace

Result<Stamped> parse_stamped_body(const json& body) {
  const auto text = body.find("note");
  if (text == body.end() || !text->is_string()) return not_one("it has no note");
  auto note = parse_note(text->get_ref<const std::string&>());
  if (!note) return not_one(note.error().what);
  auto checkpoint = parse_checkpoint(note->text);
  if (!checkpoint) return not_one(checkpoint.error().what);
  auto request = der_in(body, "request"), response = der_in(body, "response");
  if (!request) return not_one("it has no request");
  if (!response) return not_one("it has no response");
  auto proof = parse_head_proof(body);
  if (!proof) return not_one(proof.error().what);
  return Stamped{text->get<std::string>(), std::move(*note),     std::move(*checkpoint),
                 std::move(*request),      std::move(*response), std::move(*proof)};
}

json stamped_body(std::string_view note, const Bytes& request, const Bytes& response,
                  const HeadProof& proof) {
  json body = {
      {"note", std::string(note)}, {"request", base64(request)}, {"response", base64(response)}};
  add_head_proof(proof, body);
  return body;
}

}  // namespace walkdown::record
