// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/body.h"

#include "checklist/record/base64.h"
#include "checklist/record/canonical.h"
#include "checklist/record/utf8.h"

namespace walkdown::record::body {

namespace {

using nlohmann::json;

void put_raw(json& body, std::string_view raw) {
  if (is_printable(raw)) {
    body["raw"] = raw;
  } else {
    body["raw_b64"] = base64(reinterpret_cast<const std::uint8_t*>(raw.data()), raw.size());
  }
}

// `,"raw":"..."` or `,"raw_b64":"..."`.
bool take_raw(Canonical& body, std::string& raw) {
  std::string_view inside;
  if (body.take(",\"raw\":")) {
    if (!body.take_string(&inside)) return false;
    raw = unescape(inside);
    return true;
  }
  if (!body.take(",\"raw_b64\":") || !body.take_string(&inside)) return false;
  const auto bytes = from_base64(inside);
  if (!bytes) return false;
  raw.assign(bytes->begin(), bytes->end());
  return true;
}

}  // namespace

Draft reading(const Reading& reading) {
  json body{{"pin", reading.pin}};
  put_raw(body, reading.raw);
  if (reading.micro_ohm) {
    body["uohm"] = *reading.micro_ohm;
  } else {
    body["over"] = true;
  }
  return {"reading", std::move(body)};
}

std::optional<Reading> reading_of(std::string_view text) {
  Canonical body(text);
  Reading reading;
  std::string_view pin;
  const bool over = body.take("{\"over\":true,");
  if (!over && !body.take("{")) return std::nullopt;
  if (!body.take("\"pin\":") || !body.take_string(&pin) || !take_raw(body, reading.raw)) {
    return std::nullopt;
  }
  reading.pin = unescape(pin);
  if (!over) {
    std::int64_t micro_ohm = 0;
    if (!body.take(",\"uohm\":") || !body.take_whole(&micro_ohm)) return std::nullopt;
    reading.micro_ohm = micro_ohm;
  }
  if (!body.take("}") || !body.at_end()) return std::nullopt;
  return reading;
}

Draft rejected(std::string_view raw, const std::string& why) {
  json body{{"why", why}};
  put_raw(body, raw);
  return {"rejected", std::move(body)};
}

Draft rehook(const std::vector<std::string>& pins, const std::string& by) {
  return {"rehook", {{"by", by}, {"pins", pins}}};
}

Draft rehook_rail(int module, int rail, const std::string& by) {
  json body{{"by", by}, {"module", module}};
  if (rail > 0) body["rail"] = rail;
  return {"rehook", std::move(body)};
}

Draft claim(const json& verdicts, const json& findings) {
  return {"claim", {{"findings", findings}, {"verdicts", verdicts}}};
}

Draft enrol(const Person& person) {
  return {"enrol", {{"name", person.name}, {"role", person.role}, {"vkey", text(person.key)}}};
}

Draft sign_off(const std::string& note) { return {"signoff", {{"signoff", note}}}; }

}  // namespace walkdown::record::body
