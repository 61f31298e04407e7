// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/extract.h"

#include <algorithm>

#include "checklist/record/canonical.h"
#include "checklist/record/json_text.h"
#include "checklist/record/utf8.h"

namespace walkdown::record {

namespace {

Error not_a_line(const char* why) {
  return {Code::bad_input, std::string("the line is not as an extract writes it: ") + why, "", ""};
}

void append_hash(const Hash& hash, std::string& out) {
  out += '"';
  out += base64(hash.data(), hash.size());
  out += '"';
}

bool take_hash(Canonical& json, Hash& hash) {
  std::string_view inside;
  if (!json.take_string(&inside)) return false;
  const auto bytes = from_base64(inside);
  if (!bytes || bytes->size() != hash.size()) return false;
  std::copy(bytes->begin(), bytes->end(), hash.begin());
  return true;
}

}  // namespace

std::string extract_head_line(const ExtractHead& head) {
  std::string line = "{\"extract\":1,\"checkpoint\":";
  append_string(head.checkpoint, line);
  line += ",\"station\":";
  append_string(text(head.station), line);
  return line + '}';
}

std::string proof_line(const ProofLine& proof) {
  std::string line = "{\"path\":[";
  for (std::size_t i = 0; i < proof.path.size(); ++i) {
    if (i > 0) line += ',';
    append_hash(proof.path[i], line);
  }
  return line + "]}";
}

std::string withheld_line(const WithheldLine& withheld) {
  std::string line = "{\"withheld\":" + std::to_string(withheld.n) + ",\"leaf\":";
  append_hash(withheld.leaf, line);
  return line + '}';
}

Result<ExtractHead> parse_extract_head(std::string_view line) {
  if (!is_utf8(line)) return not_a_line("it is not UTF-8");
  Canonical json(line);
  std::string_view note, vkey;
  if (!json.take("{\"extract\":1,\"checkpoint\":") || !json.take_string(&note) ||
      !json.take(",\"station\":") || !json.take_string(&vkey) || !json.take('}') ||
      !json.at_end()) {
    return not_a_line("no head of form 1");
  }
  auto station = parse_vkey(unescape(vkey));
  if (!station) return station.error();
  ExtractHead head{unescape(note), std::move(*station)};
  if (extract_head_line(head) != line) return not_a_line("another spelling than its own");
  return head;
}

Result<ProofLine> parse_proof_line(std::string_view line) {
  Canonical json(line);
  ProofLine proof;
  if (!json.take("{\"path\":[")) return not_a_line("no proof");
  while (!json.take(']')) {
    if (!proof.path.empty() && !json.take(',')) return not_a_line("no list of hashes");
    if (proof.path.size() > 64) return not_a_line("the proof is too long");
    if (!take_hash(json, proof.path.emplace_back())) return not_a_line("no list of hashes");
  }
  if (!json.take('}') || !json.at_end()) return not_a_line("there is something behind the proof");
  return proof;
}

Result<WithheldLine> parse_withheld_line(std::string_view line) {
  Canonical json(line);
  WithheldLine withheld;
  std::int64_t n = 0;
  if (!json.take("{\"withheld\":") || !json.take_whole(&n) || n < 0 || !json.take(",\"leaf\":") ||
      !take_hash(json, withheld.leaf) || !json.take('}') || !json.at_end()) {
    return not_a_line("no withheld entry");
  }
  withheld.n = static_cast<std::uint64_t>(n);
  return withheld;
}

std::string extract_text(const ExtractHead& head, const WholeTree& tree, const Chosen& chosen) {
  std::string out = extract_head_line(head) + '\n';
  for (const auto& [n, line] : chosen) {
    out += proof_line({tree.inclusion_path(n)});
    out += '\n';
    out += line ? *line : withheld_line({n, tree.leaf(n)});
    out += '\n';
  }
  return out;
}

}  // namespace walkdown::record
