// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/head_proof.h"

#include <algorithm>
#include <optional>

#include "checklist/record/base64.h"

namespace walkdown::record {

namespace {

using nlohmann::json;

Error lacks(const char* what) { return {Code::bad_input, what, "", ""}; }

std::optional<Hash> hash_of(const json& text) {
  if (!text.is_string()) return std::nullopt;
  const auto bytes = from_base64(text.get_ref<const std::string&>());
  Hash hash{};
  if (!bytes || bytes->size() != hash.size()) return std::nullopt;
  std::copy(bytes->begin(), bytes->end(), hash.begin());
  return hash;
}

}  // namespace

Result<HeadProof> parse_head_proof(const json& body) {
  const auto to = body.find("to"), path = body.find("path");
  if (to == body.end() || !to->is_number_unsigned()) return lacks("it has no `to`");
  if (path == body.end() || !path->is_array()) return lacks("it has no `path`");
  HeadProof proof{to->get<std::uint64_t>(), {}};
  for (const json& each : *path) {
    const auto hash = hash_of(each);
    if (!hash) return lacks("its path is not of hashes");
    proof.path.push_back(*hash);
  }
  return proof;
}

void add_head_proof(const HeadProof& proof, json& body) {
  json texts = json::array();
  for (const Hash& hash : proof.path) texts.push_back(base64(hash.data(), hash.size()));
  body["path"] = std::move(texts);
  body["to"] = proof.to;
}

bool leads_to(const Checkpoint& checkpoint, const HeadProof& proof, const Head& head) {
  return head.size == proof.to &&
         holds_consistency(checkpoint.size, checkpoint.root, head.size, head.root, proof.path);
}

}  // namespace walkdown::record
