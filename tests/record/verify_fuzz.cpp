// SPDX-License-Identifier: Apache-2.0
// Any bytes as a record, and as an extract: the checkers answer, and never fall. What holds must be
// told alike by the quick look, which shares only part of the way.
#include <cstdlib>

#include "checklist/record/extract_check.h"
#include "checklist/record/verify.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  using namespace walkdown::record;
  const std::string_view bytes(reinterpret_cast<const char*>(data), size);
  if (bytes.starts_with("{\"extract\"")) {
    const ExtractReport report = verify_extract_bytes(bytes);
    if (report.holds != report.why.empty()) std::abort();
    return 0;
  }
  const Report full = verify_bytes(bytes);
  if (full.holds != full.why.empty()) std::abort();
  VerifyOptions quick;
  quick.hash_only = true;
  const Report hashed = verify_bytes(bytes, quick);
  if (full.holds && (!hashed.holds || hashed.mark != full.mark)) std::abort();
  return 0;
}
