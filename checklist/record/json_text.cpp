// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/json_text.h"

#include <array>
#include <charconv>

#include "checklist/record/canonical.h"
#include "checklist/record/plain_run.h"
#include "checklist/record/utf8.h"

namespace walkdown::record {

namespace {

using nlohmann::json;

Error cannot_keep(const char* why, const char* remedy) {
  return {Code::bad_input, std::string("a record cannot keep this value: ") + why, "", remedy};
}

// "\n" -> n; zero where there is no short form.
char letter_of(char c) {
  switch (c) {
    case '"':
      return '"';
    case '\\':
      return '\\';
    case '\b':
      return 'b';
    case '\f':
      return 'f';
    case '\n':
      return 'n';
    case '\r':
      return 'r';
    case '\t':
      return 't';
    default:
      return '\0';
  }
}

Done append_value(const json& value, std::string& out, std::size_t depth);

Done append_text(const std::string& text, std::string& out) {
  if (!is_utf8(text)) return cannot_keep("a text is not UTF-8", "keep the bytes in base64");
  append_string(text, out);
  return done();
}

Done append_whole(std::int64_t whole, std::string& out) {
  if (whole > kMaxWhole || whole < -kMaxWhole) {
    return cannot_keep("a number is beyond 2^53 - 1", "keep it as text");
  }
  std::array<char, 24> digits{};
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), whole).ptr;
  out.append(digits.data(), end);
  return done();
}

Done append_object(const json& value, std::string& out, std::size_t depth) {
  out += '{';
  bool first = true;
  for (const auto& [key, member] : value.get_ref<const json::object_t&>()) {
    if (!first) out += ',';
    first = false;
    if (Done put = append_text(key, out); !put) return put;
    out += ':';
    if (Done put = append_value(member, out, depth); !put) {
      Error error = put.error();
      error.where = error.where.empty() ? key : key + '.' + error.where;
      return error;
    }
  }
  out += '}';
  return done();
}

Done append_array(const json& value, std::string& out, std::size_t depth) {
  out += '[';
  bool first = true;
  for (const json& member : value.get_ref<const json::array_t&>()) {
    if (!first) out += ',';
    first = false;
    if (Done put = append_value(member, out, depth); !put) return put;
  }
  out += ']';
  return done();
}

Done append_nested(const json& value, std::string& out, std::size_t depth) {
  if (depth >= kMaxDepth) return cannot_keep("it is nested too deep", "");
  return value.is_object() ? append_object(value, out, depth + 1)
                           : append_array(value, out, depth + 1);
}

Done append_value(const json& value, std::string& out, std::size_t depth) {
  switch (value.type()) {
    case json::value_t::object:
    case json::value_t::array:
      return append_nested(value, out, depth);
    case json::value_t::string:
      return append_text(value.get_ref<const std::string&>(), out);
    case json::value_t::number_integer:
      return append_whole(value.get<std::int64_t>(), out);
    case json::value_t::number_unsigned:
      if (value.get<std::uint64_t>() > std::uint64_t{kMaxWhole})
        return append_whole(kMaxWhole + 1, out);
      return append_whole(value.get<std::int64_t>(), out);
    case json::value_t::boolean:
      out += value.get<bool>() ? "true" : "false";
      return done();
    case json::value_t::null:
      out += "null";
      return done();
    case json::value_t::number_float:
      return cannot_keep("it is a floating-point number", "keep whole micro- or milli-units");
    default:
      return cannot_keep("it is binary", "keep the bytes in base64");
  }
}

}  // namespace

void append_string(std::string_view text, std::string& out) {
  constexpr std::string_view kDigits = "0123456789abcdef";
  out += '"';
  std::size_t begin = 0;
  for (std::size_t i = plain_run(text, 0); i < text.size(); i = plain_run(text, i + 1)) {
    const char c = text[i];
    const char letter = letter_of(c);
    out.append(text, begin, i - begin);
    begin = i + 1;
    if (letter != '\0') {
      out += '\\';
      out += letter;
    } else {
      out += "\\u00";
      out += c >= 0x10 ? '1' : '0';
      out += kDigits[static_cast<unsigned char>(c) & 15U];
    }
  }
  out.append(text, begin);
  out += '"';
}

Done append_json(const json& value, std::string& out) { return append_value(value, out, 0); }

json parse_canonical(std::string_view text) {
  return json::parse(text.begin(), text.end(), nullptr, /*allow_exceptions=*/false);
}

}  // namespace walkdown::record
