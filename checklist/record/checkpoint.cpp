// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/checkpoint.h"

#include <algorithm>
#include <charconv>

namespace walkdown::record {

namespace {

Error not_a_checkpoint() {
  return {Code::bad_input, "this is no checkpoint", "",
          "a checkpoint has three lines: origin, number of entries, root in base64"};
}

}  // namespace

std::string text(const Checkpoint& checkpoint) {
  return checkpoint.origin + '\n' + std::to_string(checkpoint.size) + '\n' +
         base64(checkpoint.root.data(), checkpoint.root.size()) + '\n';
}

Result<Checkpoint> parse_checkpoint(std::string_view from) {
  const std::size_t first = from.find('\n');
  if (first == std::string_view::npos) return not_a_checkpoint();
  const std::size_t second = from.find('\n', first + 1);
  if (second == std::string_view::npos || from.back() != '\n') return not_a_checkpoint();
  Checkpoint checkpoint;
  checkpoint.origin = from.substr(0, first);
  const auto [end, error] =
      std::from_chars(from.data() + first + 1, from.data() + second, checkpoint.size);
  if (error != std::errc{} || !is_key_name(checkpoint.origin)) return not_a_checkpoint();
  const auto root = from_base64(from.substr(second + 1, from.size() - second - 2));
  if (!root || root->size() != checkpoint.root.size()) return not_a_checkpoint();
  std::copy(root->begin(), root->end(), checkpoint.root.begin());
  if (text(checkpoint) != from) return not_a_checkpoint();
  return checkpoint;
}

}  // namespace walkdown::record
