// SPDX-License-Identifier: Apache-2.0
#include "tests/cli/program.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <csignal>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace walkdown::cli {
namespace {

int start(const std::vector<std::string>& arguments, const std::string& in, const std::string& out,
          const std::string& err) {
  std::vector<std::string> words = arguments;
  words.insert(words.begin(), WALKDOWN_PROGRAM);
  std::vector<char*> raw;
  raw.reserve(words.size() + 1);
  for (auto& word : words) raw.push_back(word.data());
  raw.push_back(nullptr);
  const int pid = fork();
  if (pid != 0) return pid;
  dup2(open(in.c_str(), O_RDONLY), STDIN_FILENO);
  dup2(open(out.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600), STDOUT_FILENO);
  dup2(open(err.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600), STDERR_FILENO);
  execv(WALKDOWN_PROGRAM, raw.data());
  _exit(127);
}

int status_of(int pid) {
  int status = 0;
  if (waitpid(pid, &status, 0) != pid) return -1;
  return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

}  // namespace

Folder::Folder() {
  std::string pattern = std::filesystem::temp_directory_path() / "walkdown-test-XXXXXX";
  if (mkdtemp(pattern.data()) == nullptr) throw std::runtime_error("no folder for the test");
  path_ = pattern;
}

Folder::~Folder() {
  std::error_code ignored;
  std::filesystem::remove_all(path_, ignored);
}

std::string Folder::put(std::string_view name, std::string_view text) const {
  const std::string path = *this / name;
  std::ofstream(path, std::ios::binary) << text;
  return path;
}

std::string whole_file(const std::string& path) {
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

Said run_walkdown(const std::vector<std::string>& arguments, const std::string& input) {
  const Folder folder;
  const std::string in = folder.put("in", input);
  const int pid = start(arguments, in, folder / "out", folder / "err");
  Said said;
  said.status = status_of(pid);
  said.out = whole_file(folder / "out");
  said.err = whole_file(folder / "err");
  return said;
}

Background::Background(const std::vector<std::string>& arguments, const std::string& out_path)
    : pid_(start(arguments, "/dev/null", out_path, out_path + ".err")) {}

Background::~Background() {
  if (pid_ <= 0) return;
  kill(pid_, SIGKILL);
  wait();
}

void Background::signal(int number) const { kill(pid_, number); }

int Background::wait() {
  const int status = status_of(pid_);
  pid_ = -1;
  return status;
}

}  // namespace walkdown::cli
