// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/note.h"

#include <algorithm>
#include <optional>
#include <utility>

#include "checklist/record/utf8.h"

namespace walkdown::record {

namespace {

constexpr std::string_view kDash = "\xE2\x80\x94 ";  // em dash, space
constexpr std::size_t kMostSignatures = 16;

Error not_a_note(const char* why) {
  return {Code::bad_input, std::string("this is no signed note: ") + why, "",
          "a signed note is a text, a blank line, and a line for each signature"};
}

bool is_note_text(std::string_view text) {
  if (text.empty() || text.back() != '\n') return false;
  return is_utf8(text) && std::none_of(text.begin(), text.end(), [](char c) {
           return (static_cast<unsigned char>(c) < 0x20 && c != '\n') || c == 0x7f;
         });
}

std::string line(const NoteSignature& signature) {
  Bytes bytes{static_cast<std::uint8_t>(signature.id >> 24U),
              static_cast<std::uint8_t>(signature.id >> 16U),
              static_cast<std::uint8_t>(signature.id >> 8U),
              static_cast<std::uint8_t>(signature.id)};
  bytes.insert(bytes.end(), signature.bytes.begin(), signature.bytes.end());
  return std::string(kDash) + signature.name + ' ' + base64(bytes) + '\n';
}

std::optional<NoteSignature> parse_signature(std::string_view from) {
  if (!from.starts_with(kDash)) return std::nullopt;
  from.remove_prefix(kDash.size());
  const std::size_t space = from.find(' ');
  if (space == std::string_view::npos || !is_key_name(from.substr(0, space))) return std::nullopt;
  const auto bytes = from_base64(from.substr(space + 1));
  if (!bytes || bytes->size() <= 4) return std::nullopt;
  NoteSignature signature;
  signature.name = from.substr(0, space);
  for (std::size_t i = 0; i < 4; ++i) signature.id = (signature.id << 8U) | (*bytes)[i];
  signature.bytes.assign(bytes->begin() + 4, bytes->end());
  return signature;
}

}  // namespace

std::string text(const Note& note) {
  std::string all = note.text + '\n';
  for (const NoteSignature& signature : note.signatures) all += line(signature);
  return all;
}

Result<Note> parse_note(std::string_view from) {
  if (!is_note_text(from)) return not_a_note("it is not plain text that ends with a line end");
  const std::size_t blank = from.rfind("\n\n");
  if (blank == std::string_view::npos) return not_a_note("it has no blank line before signatures");
  Note note{std::string(from.substr(0, blank + 1)), {}};
  for (std::string_view rest = from.substr(blank + 2); !rest.empty();) {
    const std::size_t end = rest.find('\n');
    auto signature = parse_signature(rest.substr(0, end));
    if (!signature) return not_a_note("a signature line was cut or changed");
    note.signatures.push_back(std::move(*signature));
    rest.remove_prefix(end + 1);
  }
  if (note.signatures.empty() || note.signatures.size() > kMostSignatures) {
    return not_a_note("it has no signature, or too many");
  }
  return note;
}

Note sign_note(std::string text, const SigningKey& key) {
  const VerifyKey& by = key.verify_key();
  NoteSignature signature{by.name, key_id(by), key.sign(text)};
  return {std::move(text), {std::move(signature)}};
}

bool is_signed_by(const Note& note, const VerifyKey& key) {
  const std::uint32_t id = key_id(key);
  return std::any_of(note.signatures.begin(), note.signatures.end(), [&](const NoteSignature& by) {
    return by.id == id && by.name == key.name && verify(key, note.text, by.bytes);
  });
}

}  // namespace walkdown::record
