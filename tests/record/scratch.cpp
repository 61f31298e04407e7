// SPDX-License-Identifier: Apache-2.0
#include "tests/record/scratch.h"

#include <unistd.h>

#include <cstdlib>
#include <fstream>

#include "checklist/record/base64.h"

namespace walkdown::record::test {

namespace {

Seed seed_of(std::string_view hex) {
  Seed seed{};
  for (std::size_t i = 0; i < seed.size(); ++i) {
    seed[i] = static_cast<std::uint8_t>(std::stoi(std::string(hex.substr(i * 2, 2)), nullptr, 16));
  }
  return seed;
}

}  // namespace

Scratch::Scratch() {
  std::string name = (std::filesystem::temp_directory_path() / "record-XXXXXX").string();
  if (mkdtemp(name.data()) == nullptr) std::abort();
  folder_ = name;
}

Scratch::~Scratch() {
  std::error_code ignored;
  std::filesystem::remove_all(folder_, ignored);
}

SigningKey station() {
  return {"desk", seed_of("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60")};
}

SigningKey lead() {
  return {"mara", seed_of("4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb")};
}

SigningKey witness() {
  return {"office", seed_of("c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7")};
}

std::string read_file(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

void write_file(const std::string& path, const std::string& bytes) {
  std::ofstream(path, std::ios::binary) << bytes;
}

Draft some_reading(int pin) {
  std::string two = std::to_string(pin);
  if (two.size() < 2) two.insert(two.begin(), '0');
  return {"reading",
          {{"pin", "M01/R1/P" + two},
           {"raw", "M01,R1,P" + two + ",2.31,ohm"},
           {"uohm", 2'310'000 + pin}}};
}

Draft rejected_line(const std::string& raw, const std::string& why) {
  const auto* bytes = reinterpret_cast<const std::uint8_t*>(raw.data());
  return {"rejected", {{"raw_b64", base64(bytes, raw.size())}, {"why", why}}};
}

Draft enrol(const Person& person) {
  return {"enrol", {{"name", person.name}, {"role", person.role}, {"vkey", text(person.key)}}};
}

Draft sign_off(const std::string& note) { return {"signoff", {{"signoff", note}}}; }

}  // namespace walkdown::record::test
