// SPDX-License-Identifier: Apache-2.0
#include "tests/record/authority.h"

#include <gtest/gtest.h>

#include <cstdlib>

namespace walkdown::record::test {

namespace {

constexpr const char* kConfig = R"([stamps]
serial = serial
signer_cert = stamps.pem
signer_key = stamps.key
signer_digest = sha256
default_policy = 1.2.3.4.1
digests = sha256
ess_cert_id_alg = sha256
[declines]
serial = serial
signer_cert = stamps.pem
signer_key = stamps.key
signer_digest = sha256
default_policy = 1.2.3.4.1
digests = sha512
ess_cert_id_alg = sha256
)";

Bytes bytes_of(const std::string& text) { return {text.begin(), text.end()}; }
std::string text_of(const Bytes& bytes) { return {bytes.begin(), bytes.end()}; }

}  // namespace

Authority::Authority() {
  write_file(folder_.path("config"), kConfig);
  write_file(folder_.path("serial"), "01\n");
  write_file(folder_.path("use"),
             "extendedKeyUsage=critical,timeStamping\nkeyUsage=digitalSignature\n");
  const std::string key = " -newkey ec -pkeyopt ec_paramgen_curve:prime256v1 -nodes ";
  openssl("req -x509 -days 30" + key + "-keyout root.key -out root.pem -subj '/CN=Root of a test'");
  openssl("req" + key + "-keyout stamps.key -out stamps.csr -subj '/O=A test/CN=Time-stamps'");
  openssl(
      "x509 -req -days 30 -in stamps.csr -CA root.pem -CAkey root.key -set_serial 2 -extfile use "
      "-out stamps.pem");
}

void Authority::openssl(const std::string& arguments) const {
  const std::string command =
      "cd '" + folder_.path("") + "' && openssl " + arguments + " >out 2>err";
  const int status = std::system(command.c_str());
  EXPECT_EQ(status, 0) << command << '\n' << read_file(folder_.path("err"));
}

std::string Authority::certificate() const { return read_file(folder_.path("root.pem")); }

Bytes Authority::reply(const Bytes& request, const std::string& section) {
  write_file(folder_.path("tsq"), text_of(request));
  openssl("ts -reply -config config -section " + section + " -queryfile tsq -out tsr");
  return bytes_of(read_file(folder_.path("tsr")));
}

Bytes Authority::request(const std::string& note, const std::string& arguments) {
  write_file(folder_.path("note"), note);
  openssl("ts -query -data note " + arguments + " -out made");
  return bytes_of(read_file(folder_.path("made")));
}

std::string Authority::read(const Bytes& request) {
  write_file(folder_.path("tsq"), text_of(request));
  openssl("ts -query -in tsq -text");
  return read_file(folder_.path("out"));
}

}  // namespace walkdown::record::test
