// SPDX-License-Identifier: Apache-2.0
// Passphrases: from a file's first line, or typed at the terminal without echo. Never from the
// command line, where everybody on the machine could read it.
#pragma once

#include <string>

#include "reader/result.h"

namespace walkdown::cli {

// A passphrase in memory, wiped at the end.
class Passphrase {
 public:
  explicit Passphrase(std::string text) : text_(std::move(text)) {}
  Passphrase(const Passphrase&) = delete;
  Passphrase& operator=(const Passphrase&) = delete;
  Passphrase(Passphrase&& other) noexcept : text_(std::move(other.text_)) { other.wipe(); }
  Passphrase& operator=(Passphrase&&) = delete;
  ~Passphrase() { wipe(); }

  [[nodiscard]] const std::string& text() const { return text_; }

 private:
  void wipe();
  std::string text_;
};

enum class Ask { once, twice };  // twice: for a new key

// `file` empty: asks at the terminal, `who` in the question. usage: there is no terminal and no
// file; refused: the two that were typed differ; io.
Result<Passphrase> passphrase(const std::string& file, const std::string& who, Ask ask);

}  // namespace walkdown::cli
