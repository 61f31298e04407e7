// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/answer_value.h"

#include <fmt/format.h>

#include <algorithm>

#include "checklist/day/body.h"
#include "checklist/day/scene.h"

namespace walkdown::day {
namespace {

constexpr std::int64_t kLargest_milli = 1'000'000'000'000;
constexpr std::size_t kLongestText = 500;

std::string one_of(const std::vector<std::string>& choices) {
  std::string list;
  for (const std::string& each : choices) list += (list.empty() ? "" : ", ") + each;
  return list;
}

Result<Value> chosen(const View& view, const Item& item, const nlohmann::json& body) {
  const std::string value = text_in(body, "value");
  if (!contains(item.choices, value)) {
    return refusal(fmt::format("\"{}\" is none of the states that {} can be in", value, item.id),
                   "choose what was seen: " + one_of(item.choices));
  }
  Value found{value, contains(item.good, value), {}};
  if (!found.good) found.why = "was found: " + value;
  if (!item.alike) return found;
  const auto groups = whole_in(body, "groups");
  const std::int64_t known =
      view.outside.source == nullptr ? -1 : view.outside.source->alike_groups();
  if (!groups || *groups != known) {
    return refusal("the number of groups looked at is not the number there are",
                   "walk the whole list of pins that read alike");
  }
  return found;
}

Result<Value> measured(const Item& item, const nlohmann::json& body) {
  const auto milli = whole_in(body, "milli");
  if (!milli || std::abs(*milli) > kLargest_milli) {
    return refusal(item.id + " is answered by a number", "give it in " + item.unit);
  }
  Value found{say_milli(*milli, item.unit), true, {}};
  if (item.min_milli && *milli < *item.min_milli) {
    found.why = fmt::format("{} is below {}", found.said, say_milli(*item.min_milli, item.unit));
  } else if (item.max_milli && *milli > *item.max_milli) {
    found.why = fmt::format("{} is above {}", found.said, say_milli(*item.max_milli, item.unit));
  }
  found.good = found.why.empty();
  return found;
}

Result<Value> written(const Item& item, const nlohmann::json& body) {
  const std::string value = text_in(body, "value");
  const bool plain = std::none_of(value.begin(), value.end(),
                                  [](char c) { return static_cast<unsigned char>(c) < ' '; });
  if (says_nothing(value) || !plain || value.size() > kLongestText) {
    return refusal(item.id + " is answered by what was seen or heard",
                   "write it in one line, in your own words");
  }
  return Value{value, true, {}};
}

Result<Value> filed(const Item& item, const nlohmann::json& body) {
  const std::string hash = text_in(body, "sha256");
  const bool hex =
      hash.size() == 64 && hash.find_first_not_of("0123456789abcdef") == std::string::npos;
  if (!hex) return refusal(item.id + " needs a file's SHA-256", "choose the file");
  return written(item, body);
}

}  // namespace

Result<Value> answer_value(const View& view, const Item& item, const nlohmann::json& body) {
  switch (item.kind) {
    case Kind::number:
      return measured(item, body);
    case Kind::text:
      return written(item, body);
    case Kind::file:
      return filed(item, body);
    default:
      return chosen(view, item, body);
  }
}

std::string say_milli(std::int64_t milli, const std::string& unit) {
  const auto bits = static_cast<std::uint64_t>(milli);
  const std::uint64_t size = milli < 0 ? 0 - bits : bits;  // the least number has no negative
  std::string text = fmt::format("{}{}", milli < 0 ? "-" : "", size / 1000);
  if (size % 1000 != 0) {
    text += fmt::format(".{:03}", size % 1000);
    while (text.back() == '0') text.pop_back();
  }
  return unit.empty() ? text : text + " " + unit;
}

}  // namespace walkdown::day
