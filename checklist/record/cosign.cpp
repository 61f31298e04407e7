// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/cosign.h"

namespace walkdown::record {

namespace {

using nlohmann::json;

constexpr std::size_t kTimeBytes = 8;
constexpr std::size_t kSignatureBytes = 64;

Error not_one(const char* why) {
  return {Code::bad_input, std::string("the cosignature does not hold: ") + why, "", ""};
}

std::string message(std::uint64_t time_s, const std::string& checkpoint) {
  return "cosignature/v1\ntime " + std::to_string(time_s) + '\n' + checkpoint;
}

VerifyKey as_cosigner(VerifyKey key) {
  key.type = kCosigns;
  return key;
}

}  // namespace

Result<std::string> cosign(std::string_view checkpoint_note, const SigningKey& witness,
                           std::int64_t time_s) {
  const auto note = parse_note(checkpoint_note);
  if (!note) return note.error();
  if (const auto checkpoint = parse_checkpoint(note->text); !checkpoint) return checkpoint.error();
  if (time_s < 0) return not_one("its time is before 1970");
  const auto time = static_cast<std::uint64_t>(time_s);
  Bytes bytes;
  for (unsigned shift = 64; shift > 0; shift -= 8) {
    bytes.push_back(static_cast<std::uint8_t>(time >> (shift - 8)));
  }
  const Bytes signature = witness.sign(message(time, note->text));
  bytes.insert(bytes.end(), signature.begin(), signature.end());
  const VerifyKey by = as_cosigner(witness.verify_key());
  return text(Note{note->text, {{by.name, key_id(by), std::move(bytes)}}});
}

Result<Cosigned> parse_cosigned(std::string_view from) {
  auto note = parse_note(from);
  if (!note) return note.error();
  auto checkpoint = parse_checkpoint(note->text);
  if (!checkpoint) return checkpoint.error();
  const Bytes& bytes = note->signatures.front().bytes;
  if (note->signatures.size() != 1) return not_one("it has more than one signature");
  if (bytes.size() != kTimeBytes + kSignatureBytes) return not_one("it has another length");
  Cosigned cosigned{std::move(*note), std::move(*checkpoint), 0, {}};
  const Bytes& kept = cosigned.note.signatures.front().bytes;
  for (std::size_t i = 0; i < kTimeBytes; ++i) {
    cosigned.time_s = (cosigned.time_s << 8U) | kept[i];
  }
  if ((kept.front() & 0x80U) != 0) return not_one("its time is beyond 2^63 - 1");
  return cosigned;
}

Result<Cosigned> parse_cosign_body(const json& body) {
  const auto note = body.find("note");
  if (note == body.end() || !note->is_string()) return not_one("it has no note");
  auto proof = parse_head_proof(body);
  if (!proof) return not_one(proof.error().what.c_str());
  auto cosigned = parse_cosigned(note->get_ref<const std::string&>());
  if (cosigned) cosigned->proof = std::move(*proof);
  return cosigned;
}

json cosign_body(std::string_view note, std::uint64_t to, const std::vector<Hash>& path) {
  json body = {{"note", std::string(note)}};
  add_head_proof({to, path}, body);
  return body;
}

bool is_cosigned_by(const Cosigned& cosigned, const VerifyKey& key) {
  const VerifyKey by = as_cosigner(key);
  const NoteSignature& signature = cosigned.note.signatures.front();
  const Bytes only(signature.bytes.begin() + kTimeBytes, signature.bytes.end());
  return signature.name == by.name && signature.id == key_id(by) &&
         verify(by, message(cosigned.time_s, cosigned.note.text), only);
}

}  // namespace walkdown::record
