// SPDX-License-Identifier: Apache-2.0
// What the record's tests share: a folder of their own, keys that never change, a clock that obeys.
#pragma once

#include <atomic>
#include <filesystem>
#include <string>

#include "checklist/record/clock.h"
#include "checklist/record/signing_key.h"
#include "checklist/record/signoff.h"
#include "checklist/record/writer.h"

namespace walkdown::record::test {

class Scratch {
 public:
  Scratch();
  Scratch(const Scratch&) = delete;
  Scratch& operator=(const Scratch&) = delete;
  ~Scratch();
  [[nodiscard]] std::string path(const std::string& name) const {
    return (folder_ / name).string();
  }

 private:
  std::filesystem::path folder_;
};

class ManualClock final : public Clock {
 public:
  [[nodiscard]] std::int64_t at_ms() const override { return at; }
  [[nodiscard]] std::int64_t up_ms() const override { return up; }
  void pass(std::int64_t ms) {
    at += ms;
    up += ms;
  }
  std::atomic<std::int64_t> at{1'783'191'731'123};  // 2026-07-04T19:02:11.123Z
  std::atomic<std::int64_t> up{81'234};
};

// The keys of RFC 8032 section 7.1, tests 1 to 3.
[[nodiscard]] SigningKey station();
[[nodiscard]] SigningKey lead();
[[nodiscard]] SigningKey witness();

[[nodiscard]] std::string read_file(const std::string& path);
void write_file(const std::string& path, const std::string& bytes);

[[nodiscard]] Draft some_reading(int pin);
[[nodiscard]] Draft rejected_line(const std::string& raw, const std::string& why);
[[nodiscard]] Draft enrol(const Person& person);
[[nodiscard]] Draft sign_off(const std::string& note);

}  // namespace walkdown::record::test
