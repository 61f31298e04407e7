// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/hold_box.h"

#include <fcntl.h>
#include <sodium.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdio>
#include <nlohmann/json.hpp>
#include <string_view>
#include <system_error>
#include <utility>
#include <variant>

#include "checklist/record/json_text.h"
#include "checklist/record/line.h"
#include "checklist/record/line_source.h"
#include "checklist/record/sha256.h"

namespace walkdown::desk {
namespace {

using nlohmann::json;

Error cannot_lay(const std::string& path, int number) {
  return {Code::io,
          "the call for a hold cannot be laid beside the record (" +
              std::generic_category().message(number) + ")",
          path, "shout, and call the hold in the program that has the record open"};
}

// Empty where it cannot be read: then it is a hold without a name.
std::string read_call(int file) {
  std::array<char, kMostCall> bytes{};
  const ssize_t got = ::read(file, bytes.data(), bytes.size());
  return got > 0 ? std::string(bytes.data(), static_cast<std::size_t>(got)) : std::string();
}

HoldCall parse_call(const std::string& text) {
  const json body = json::parse(text, nullptr, false);
  if (!body.is_object()) return {};
  const auto text_of = [&](const char* name) {
    const auto found = body.find(name);
    const bool there = found != body.end() && found->is_string();
    return there ? found->get<std::string>() : std::string();
  };
  return {text_of("request"), text_of("by"), text_of("reason")};
}

std::string random_request() {
  std::array<std::uint8_t, 16> bytes{};
  if (sodium_init() >= 0) randombytes_buf(bytes.data(), bytes.size());
  return record::hex(bytes.data(), bytes.size());
}

}  // namespace

std::string hold_box_path(const std::string& record_path) { return record_path + ".hold"; }

Result<HoldCall> new_hold_call(const std::string& by, const std::string& reason) {
  HoldCall call{random_request(), by, reason};
  try {
    const json body = {{"request", call.request}, {"by", by}, {"reason", reason}};
    if (body.dump().size() <= kMostCall) return call;
  } catch (const json::exception&) {  // the one way in which it says that a text is no UTF-8
    return Error{Code::bad_input, "the name or the reason is no UTF-8", "", "leave it out"};
  }
  return Error{Code::bad_input, "the name or the reason is too long", "", "say it in one line"};
}

Done put_hold_call(const std::string& record_path, const HoldCall& call) {
  const std::string path = hold_box_path(record_path);
  const std::string beside = path + '-' + call.request;
  const std::string text =
      json{{"request", call.request}, {"by", call.by}, {"reason", call.reason}}.dump();
  // Readable by all: the program that has the record open may be another person's.
  const int file = ::open(beside.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_CLOEXEC | O_NOFOLLOW,
                          S_IRUSR | S_IWUSR | S_IRGRP | S_IROTH);
  if (file < 0) return cannot_lay(path, errno);
  const bool whole = ::write(file, text.data(), text.size()) == static_cast<ssize_t>(text.size());
  const int why = errno;
  ::close(file);
  if (whole && ::rename(beside.c_str(), path.c_str()) == 0) return done();
  const int number = whole ? errno : why;
  ::unlink(beside.c_str());
  return cannot_lay(path, number);
}

std::optional<HoldCall> lying_hold_call(const std::string& record_path) {
  const std::string path = hold_box_path(record_path);
  struct stat found {};
  if (::lstat(path.c_str(), &found) != 0 || !S_ISREG(found.st_mode)) return std::nullopt;
  const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK);
  if (file < 0) return errno == ENOENT ? std::nullopt : std::optional(HoldCall{});
  const std::string text = read_call(file);
  ::close(file);
  return parse_call(text);
}

bool take_hold_call_away(const std::string& record_path) {
  return ::unlink(hold_box_path(record_path).c_str()) == 0 || errno == ENOENT;
}

Result<std::optional<std::uint64_t>> hold_entry(const std::string& record_path,
                                                const std::string& request) {
  const std::string mark = "\"request\":\"" + request + '"';
  std::optional<std::uint64_t> found;
  bool sealed = false;
  const auto look = [&](std::string_view line) {
    if (found && line.starts_with("{\"checkpoint\":")) sealed = true;
    if (found || line.find(mark) == std::string_view::npos) return !sealed;
    const auto parsed = record::parse_line(line);
    const auto* entry = parsed ? std::get_if<record::EntryView>(&*parsed) : nullptr;
    if (entry != nullptr && entry->kind == "hold") found = entry->n;
    return true;
  };
  const auto rest =
      record::read_lines(record_path, {look, [] { return record::kLongestOpen; }, [] {}});
  if (!rest) return rest.error();
  return sealed ? found : std::nullopt;
}

}  // namespace walkdown::desk
