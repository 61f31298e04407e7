// SPDX-License-Identifier: Apache-2.0
// Bytes -> lines. LF, CRLF and CR alone end a line; memory stays below 4 KiB whatever comes in.
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <string>
#include <string_view>

namespace walkdown::tester {

enum class Ending : std::uint8_t {
  terminated,   // by LF, CRLF or CR
  too_long,     // more than kMaxLineBytes: the text is the first kMaxLineBytes, the rest is dropped
  end_of_file,  // the last line had no line end, as files often have not
  hang_up,      // the port went away within the line: the rest of it is lost
};

// How the stream began: a file at its first byte, a port most likely inside a line.
enum class Beginning : std::uint8_t { whole, unknown };

// `text` points into the framer or into the bytes that were fed: valid during the call only.
struct Line {
  std::string_view text;     // as received, without its line end
  std::uint64_t number = 0;  // 1-based, counting blank lines too, as an editor counts
  Ending ending = Ending::terminated;
  Beginning beginning = Beginning::whole;  // unknown for the first line of a port
};

inline constexpr std::size_t kMaxLineBytes = 4096;

class Framer {
 public:
  using Sink = std::function<void(const Line&)>;

  explicit Framer(Beginning beginning = Beginning::whole) : beginning_(beginning) {}

  // Calls `sink` once for each line that ends in `bytes`. A line of blanks, NULs and nothing else
  // is counted and not handed on: it carries nothing. A line that is too long is handed on once,
  // when it ends.
  void feed(std::string_view bytes, const Sink& sink);

  // The stream is over: hands on what is left, and is as new afterwards, with the line count kept.
  // `why` is Ending::end_of_file or Ending::hang_up; after a hang-up the next line's beginning is
  // unknown.
  void finish(Ending why, const Sink& sink);

  [[nodiscard]] std::uint64_t lines() const { return number_; }

 private:
  void keep(std::string_view part);
  void end(std::string_view tail, Ending ending, const Sink& sink);

  std::string held_;  // the line so far, never more than kMaxLineBytes
  bool overflowed_ = false;
  bool swallow_lf_ = false;  // the last byte was a CR that ended a line
  std::uint64_t number_ = 0;
  Beginning beginning_;
};

}  // namespace walkdown::tester
