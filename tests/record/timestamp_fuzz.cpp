// SPDX-License-Identifier: Apache-2.0
// Any bytes as the request and the answer of an authority: an answer or an error, never a fall.
// The first byte says how long the request is.
#include <cstdlib>

#include "checklist/record/timestamp.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace walkdown::record;
  if (size == 0) return 0;
  const std::size_t end = std::min(size, std::size_t{1} + data[0]);
  const Bytes request(data + 1, data + end), response(data + end, data + size);
  const std::string_view note = "a note\n";
  const auto asked = check_time_stamp(note, &request, response);
  const auto alone = check_time_stamp(note, nullptr, response);
  // What answers the request is a stamp over the note all the more without it.
  if (asked && !alone) std::abort();
  if (alone) (void)not_vouched(response, "");
  (void)stamped_hash(response);
  (void)count_certificates(std::string(reinterpret_cast<const char*>(data), size));
  return 0;
}
