// SPDX-License-Identifier: Apache-2.0
// Values out of a TOML file, with every mistake kept and placed. Internal to this folder.
#pragma once

#include <toml++/toml.h>

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "reader/plan/catalogue.h"
#include "reader/result.h"

namespace walkdown::plan {

class TomlFile {
 public:
  TomlFile(std::string_view text, std::string_view file_name);

  // Empty when the text is no TOML; a mistake then says so.
  [[nodiscard]] const toml::table& root() const { return root_; }

  void wrong(const toml::node& at, std::string_view key, std::string_view remedy);
  // Missing keys give nothing; wrong ones say a mistake and give nothing.
  std::optional<double> number(const toml::table& table, std::string_view key, double lo,
                               double hi);
  std::optional<Interval> interval(const toml::table& table, std::string_view key, double lo,
                                   double hi);
  std::optional<std::string> text(const toml::table& table, std::string_view key);
  // The tables under [name.X], each with its X.
  std::vector<std::pair<std::string, const toml::table*>> named(std::string_view name);
  // An unknown key is passed over, unless it is nearly a known one: a mistyped limit must not pass
  // as 'no limit given'.
  void near_misses(const toml::table& table, std::initializer_list<std::string_view> known);

  [[nodiscard]] bool good() const { return mistakes_.empty(); }
  // All mistakes in one error. Precondition: !good().
  [[nodiscard]] Error error(std::string_view what) const;

 private:
  std::string file_name_;
  toml::table root_;
  std::vector<std::string> mistakes_;
};

}  // namespace walkdown::plan
