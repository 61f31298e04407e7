// SPDX-License-Identifier: Apache-2.0
#include <algorithm>

#include "checklist/record/utf8.h"
#include "checklist/show/archive.h"

namespace walkdown::show {
namespace {

constexpr std::size_t kMaxName = 255;
constexpr std::int32_t kMaxMilliDegC = 100'000;

Error refused(std::string what, Role role, std::string remedy) {
  return Error{Code::bad_input, std::move(what), std::string(word(role)), std::move(remedy)};
}

// A name that is written into a folder must stay in it, on any system.
bool bare(std::string_view name) {
  if (name.empty() || name.size() > kMaxName || name == "." || name == "..") return false;
  return std::none_of(name.begin(), name.end(), [](char c) {
    const auto byte = static_cast<unsigned char>(c);
    return c == '/' || c == '\\' || c == ':' || byte < 0x20 || byte == 0x7F;
  });
}

Done check_file(const File& file) {
  if (!bare(file.name) || !record::is_utf8(file.name)) {
    return refused("a file of the show has a name that cannot be kept", file.role,
                   "give it a plain name without folders, colons and control characters");
  }
  if (!record::is_utf8(file.text)) {
    return refused("a file of the show is not UTF-8 text", file.role, "save it as UTF-8");
  }
  return done();
}

}  // namespace

Done check(const Show& show) {
  std::size_t size = 0;
  for (const File& file : show.files) {
    if (auto good = check_file(file); !good) return good;
    size += file.text.size();
  }
  const auto later_first = [](const File& a, const File& b) { return a.role >= b.role; };
  if (std::adjacent_find(show.files.begin(), show.files.end(), later_first) != show.files.end()) {
    return Error{Code::bad_input, "the files of the show are not in order, or one is there twice",
                 "", "pack the show again"};
  }
  if (const auto temp = show.temp_milli_degc; temp && std::abs(*temp) > kMaxMilliDegC) {
    return Error{Code::bad_input, "the wire temperature of the show is beyond anything", "",
                 "state it in degrees Celsius, from -100 to 100"};
  }
  if (size > kMaxShowBytes / 2) {
    return Error{Code::bad_input, "the files of the show are too large for one file", "",
                 "keep them under 64 MiB together"};
  }
  return done();
}

}  // namespace walkdown::show
