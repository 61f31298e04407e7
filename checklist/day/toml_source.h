// SPDX-License-Identifier: Apache-2.0
// Typed values out of a TOML table, with every mistake kept and placed. Internal to this folder.
#pragma once

#include <toml++/toml.h>

#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "reader/result.h"

namespace walkdown::day {

class TomlSource {
 public:
  explicit TomlSource(std::string_view file_name) : file_name_(file_name) {}

  void say(const toml::source_region& at, std::string what, std::string remedy);
  [[nodiscard]] std::vector<Error>& mistakes() { return mistakes_; }

  // Each of these is empty where the key is missing, and says a mistake where its value is wrong.
  std::string text(const toml::table& table, std::string_view key);
  std::vector<std::string> list(const toml::table& table, std::string_view key);
  std::optional<std::int64_t> duration(const toml::table& table, std::string_view key,
                                       bool negative = false);
  std::optional<std::int64_t> milli(const toml::table& table, std::string_view key);
  bool flag(const toml::table& table, std::string_view key, bool otherwise);

  std::string needed(const toml::table& table, std::string_view key);
  void only(const toml::table& table, std::initializer_list<std::string_view> known);
  // The tables under [[key]].
  std::vector<const toml::table*> tables(const toml::table& table, std::string_view key);

 private:
  std::string file_name_;
  std::vector<Error> mistakes_;
};

}  // namespace walkdown::day
