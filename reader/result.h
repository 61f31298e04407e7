// SPDX-License-Identifier: Apache-2.0
// Errors are values. A function that can fail returns Result<T> (or Done, when there is nothing to
// return but the fact); an Error carries one sentence for the person: what failed, where, what to
// do.
#pragma once

#include <string>
#include <utility>
#include <variant>

namespace walkdown {

enum class Code {
  usage,      // the call itself is wrong: an option, an expression. Not for the content of a file.
  bad_input,  // a file or a line has content that cannot be taken. Not for a file that is not
              // there.
  io,         // the system refused: no such file, no permission, disk full, device gone.
  busy,       // somebody else holds it: a port, a record. Trying later can help.
  refused,    // a rule of the day says no: wrong role, key not held. Trying again does not help.
  forged,     // a hash, a signature or a proof does not hold.
};

struct Error {
  Code code = Code::io;
  std::string what;    // "cannot open the plan"
  std::string where;   // "show.csv, row 12, column pin"; empty where there is no place
  std::string remedy;  // "write a whole number from 1 up"; empty where nobody can say

  // "what: where; remedy." as one line for standard error or a message box.
  [[nodiscard]] std::string sentence() const {
    std::string text = what;
    if (!where.empty()) text += ": " + where;
    if (!remedy.empty()) text += "; " + remedy;
    if (!text.empty() && text.back() != '.') text += '.';
    return text;
  }
};

template <typename T>
class [[nodiscard]] Result {
 public:
  // Implicit on purpose: `return value;` and `return Error{...};` both read as they should.
  Result(T value) : held_(std::in_place_index<0>, std::move(value)) {}      // NOLINT
  Result(Error error) : held_(std::in_place_index<1>, std::move(error)) {}  // NOLINT

  [[nodiscard]] bool ok() const { return held_.index() == 0; }
  explicit operator bool() const { return ok(); }

  // Precondition: ok().
  [[nodiscard]] T& value() & { return std::get<0>(held_); }
  [[nodiscard]] const T& value() const& { return std::get<0>(held_); }
  [[nodiscard]] T&& value() && { return std::get<0>(std::move(held_)); }
  T* operator->() { return &value(); }
  const T* operator->() const { return &value(); }
  T& operator*() & { return value(); }
  const T& operator*() const& { return value(); }
  T&& operator*() && { return std::move(*this).value(); }

  // Precondition: !ok().
  [[nodiscard]] const Error& error() const { return std::get<1>(held_); }

 private:
  std::variant<T, Error> held_;
};

using Done = Result<std::monostate>;
inline Done done() { return std::monostate{}; }

}  // namespace walkdown
