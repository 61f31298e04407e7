// SPDX-License-Identifier: Apache-2.0
// Runs the program `walkdown` as its user would, and keeps all that it said.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

namespace walkdown::cli {

struct Said {
  int status = -1;  // of the exit; -1 where it was killed
  std::string out;
  std::string err;
};

// Waits for its end. `input` is its standard input.
Said run_walkdown(const std::vector<std::string>& arguments, const std::string& input = "");

// A folder of its own, removed at the end.
class Folder {
 public:
  Folder();
  ~Folder();
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;

  [[nodiscard]] std::string operator/(std::string_view name) const { return path_ / name; }
  // Writes a file and gives back its path.
  std::string put(std::string_view name, std::string_view text) const;
  [[nodiscard]] const std::filesystem::path& path() const { return path_; }

 private:
  std::filesystem::path path_;
};

[[nodiscard]] std::string whole_file(const std::string& path);

// A program in the background, killed at the end where it still runs.
class Background {
 public:
  Background(const std::vector<std::string>& arguments, const std::string& out_path);
  ~Background();
  Background(const Background&) = delete;
  Background& operator=(const Background&) = delete;
  void signal(int number) const;
  int wait();  // its exit status, -1 where it was killed

 private:
  int pid_ = -1;
};

}  // namespace walkdown::cli
