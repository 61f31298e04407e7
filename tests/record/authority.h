// SPDX-License-Identifier: Apache-2.0
// A time-stamp authority for tests: the stock `openssl ts` command, with certificates made on the
// spot. It shares no code path with what is tested but the library's.
#pragma once

#include <string>

#include "checklist/record/base64.h"
#include "tests/record/scratch.h"

namespace walkdown::record::test {

class Authority {
 public:
  Authority();

  [[nodiscard]] Bytes answer(const Bytes& request) { return reply(request, "stamps"); }
  // A policy of its own takes another hash than SHA-256 only, so it declines.
  [[nodiscard]] Bytes decline(const Bytes& request) { return reply(request, "declines"); }
  // The certificate that vouches for the authority's, PEM.
  [[nodiscard]] std::string certificate() const;
  // `openssl ts -query ARGUMENTS -data NOTE`: a request made by other hands.
  [[nodiscard]] Bytes request(const std::string& note, const std::string& arguments);
  // What `openssl ts -query -text` reads in a request.
  [[nodiscard]] std::string read(const Bytes& request);

 private:
  Bytes reply(const Bytes& request, const std::string& section);
  void openssl(const std::string& arguments) const;

  Scratch folder_;
};

}  // namespace walkdown::record::test
