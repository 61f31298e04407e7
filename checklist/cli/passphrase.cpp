// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/passphrase.h"

#include <fcntl.h>
#include <sodium.h>
#include <termios.h>
#include <unistd.h>

#include "checklist/cli/files.h"

namespace walkdown::cli {
namespace {

// The terminal itself, with its echo off while this lives: standard input may be something else.
class Silent {
 public:
  Silent() : file_(::open("/dev/tty", O_RDWR | O_CLOEXEC | O_NOCTTY)) {
    if (file_ < 0 || tcgetattr(file_, &before_) != 0) return;
    termios quiet = before_;
    quiet.c_lflag &= ~static_cast<tcflag_t>(ECHO);
    changed_ = tcsetattr(file_, TCSAFLUSH, &quiet) == 0;
  }
  Silent(const Silent&) = delete;
  Silent& operator=(const Silent&) = delete;
  Silent(Silent&&) = delete;
  Silent& operator=(Silent&&) = delete;
  ~Silent() {
    if (changed_) tcsetattr(file_, TCSAFLUSH, &before_);
    if (file_ >= 0) ::close(file_);
  }

  [[nodiscard]] bool ready() const { return changed_; }
  void say(const std::string& text) const {
    [[maybe_unused]] const auto written = ::write(file_, text.data(), text.size());
  }
  [[nodiscard]] Passphrase line() const {
    std::string typed;
    for (char c = 0; ::read(file_, &c, 1) == 1 && c != '\n';) typed += c;
    say("\n");
    return Passphrase(std::move(typed));
  }

 private:
  int file_;
  termios before_{};
  bool changed_ = false;
};

Result<Passphrase> typed(const std::string& who, Ask ask) {
  const Silent terminal;
  if (!terminal.ready()) {
    return Error{Code::usage, "there is no terminal to type a passphrase at", "",
                 "name a file with --passphrase-file"};
  }
  terminal.say("Passphrase of " + who + ": ");
  Passphrase first = terminal.line();
  if (ask == Ask::once) return first;
  terminal.say("Once more: ");
  if (terminal.line().text() != first.text()) {
    return Error{Code::refused, "the two passphrases differ", "", "begin again"};
  }
  return first;
}

}  // namespace

void Passphrase::wipe() {
  if (!text_.empty()) sodium_memzero(text_.data(), text_.size());
}

Result<Passphrase> passphrase(const std::string& file, const std::string& who, Ask ask) {
  if (file.empty()) return typed(who, ask);
  auto text = read_file(file);
  if (!text) return text.error();
  const Passphrase whole(std::move(text).value());
  std::string first = whole.text().substr(0, whole.text().find('\n'));
  if (!first.empty() && first.back() == '\r') first.pop_back();
  return Passphrase(std::move(first));
}

}  // namespace walkdown::cli
