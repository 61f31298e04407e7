// SPDX-License-Identifier: Apache-2.0
#include "checklist/audit/drafts.h"

#include <algorithm>

#include "checklist/record/base64.h"
#include "checklist/record/canonical.h"
#include "checklist/record/utf8.h"

namespace walkdown::audit {
namespace {

void put_raw(nlohmann::json& body, std::string_view raw) {
  if (record::is_printable(raw)) {
    body["raw"] = raw;
  } else {
    body["raw_b64"] = record::base64(reinterpret_cast<const std::uint8_t*>(raw.data()), raw.size());
  }
}

Error wrong(std::string what) {
  return Error{Code::bad_input, std::move(what), "", "the entry was not written by walkdown"};
}

Result<std::string> raw_of(const nlohmann::json& body) {
  if (body.contains("raw") && body["raw"].is_string()) return body["raw"].get<std::string>();
  if (body.contains("raw_b64") && body["raw_b64"].is_string()) {
    auto bytes = record::from_base64(body["raw_b64"].get<std::string>());
    if (bytes) return std::string(bytes->begin(), bytes->end());
  }
  return wrong("a reading keeps no raw line");
}

Result<plan::PinId> pin_of(const nlohmann::json& json) {
  if (json.is_string()) {
    if (const auto pin = plan::parse_pin(json.get_ref<const std::string&>())) return *pin;
  }
  return wrong("an entry names no pin such as M01/R1/P05");
}

Result<std::uint16_t> part_of(const nlohmann::json& body, const char* name) {
  if (!body.contains(name)) return std::uint16_t{0};
  const auto& json = body[name];
  if (!json.is_number_unsigned() || json.get<std::uint64_t>() < 1 ||
      json.get<std::uint64_t>() > 9999) {
    return wrong(std::string("a re-hook names no ") + name + " from 1 to 9999");
  }
  return static_cast<std::uint16_t>(json.get<std::uint64_t>());
}

std::string text_of(const nlohmann::json& body, const char* name) {
  return body.contains(name) && body[name].is_string() ? body[name].get<std::string>() : "";
}

// A list of texts; none where the member is missing.
Result<std::vector<std::string>> texts_of(const nlohmann::json& body, const char* name) {
  std::vector<std::string> all;
  const auto found = body.find(name);
  if (found == body.end()) return all;
  if (!found->is_array()) return wrong(std::string("a re-hook's ") + name + " are no list");
  for (const auto& each : *found) {
    if (!each.is_string()) return wrong(std::string("a re-hook's ") + name + " are no texts");
    all.push_back(each.get<std::string>());
  }
  return all;
}

}  // namespace

nlohmann::json reading_body(const tester::Reading& reading, std::string_view raw, bool walked) {
  nlohmann::json body = {{"pin", plan::text(reading.pin)}};
  if (reading.over) {
    body["over"] = true;
  } else {
    body["uohm"] = reading.micro_ohm;
  }
  if (reading.seq) body["seq"] = *reading.seq;
  if (walked) body["walked"] = true;
  put_raw(body, raw);
  return body;
}

nlohmann::json rejected_body(std::string_view raw, std::string_view why) {
  nlohmann::json body = {{"why", why}};
  put_raw(body, raw);
  return body;
}

bool Rehook::covers(plan::PinId pin, std::string_view position) const {
  if (module != 0 && pin.module == module && (rail == 0 || pin.rail == rail)) return true;
  return std::find(pins.begin(), pins.end(), pin) != pins.end() ||
         (!position.empty() &&
          std::find(positions.begin(), positions.end(), position) != positions.end());
}

nlohmann::json rehook_body(const Rehook& rehook) {
  nlohmann::json body = nlohmann::json::object();
  if (rehook.module != 0) body["module"] = rehook.module;
  if (rehook.module != 0 && rehook.rail != 0) body["rail"] = rehook.rail;
  for (const plan::PinId pin : rehook.pins) body["pins"].push_back(plan::text(pin));
  if (!rehook.positions.empty()) body["positions"] = rehook.positions;
  if (!rehook.by.empty()) body["by"] = rehook.by;
  if (!rehook.why.empty()) body["why"] = rehook.why;
  return body;
}

namespace {

// `"raw":"..."` or `"raw_b64":"..."`.
bool take_raw(record::Canonical& body, std::string& raw) {
  std::string_view inside;
  if (body.take("\"raw\":")) {
    if (!body.take_string(&inside)) return false;
    raw = record::unescape(inside);
    return true;
  }
  if (!body.take("\"raw_b64\":") || !body.take_string(&inside)) return false;
  const auto bytes = record::from_base64(inside);
  if (bytes) raw.assign(bytes->begin(), bytes->end());
  return bytes.has_value();
}

// Behind the raw line: `,"seq":7` and `,"uohm":2310000` and `,"walked":true`, each or none.
bool take_rest(record::Canonical& body, RecordedReading& out) {
  std::int64_t whole = 0;
  if (body.take(",\"seq\":")) {
    if (!body.take_whole(&whole) || whole < 0) return false;
    out.reading.seq = static_cast<std::uint64_t>(whole);
  }
  const bool value = body.take(",\"uohm\":");
  if (value && !body.take_whole(&out.reading.micro_ohm)) return false;
  out.walked = body.take(",\"walked\":true");
  return value != out.reading.over && body.take('}') && body.at_end();
}

}  // namespace

std::optional<RecordedReading> quick_reading_of(std::string_view text) {
  record::Canonical body(text);
  RecordedReading out;
  std::string_view pin;
  out.reading.over = body.take("{\"over\":true,");
  if (!out.reading.over && !body.take('{')) return std::nullopt;
  if (!body.take("\"pin\":") || !body.take_string(&pin) || !body.take(',')) return std::nullopt;
  const auto id = plan::parse_pin(pin);
  if (!id || !take_raw(body, out.raw) || !take_rest(body, out)) return std::nullopt;
  out.reading.pin = *id;
  return out;
}

Result<RecordedReading> reading_of(const nlohmann::json& body) {
  if (!body.contains("pin")) return wrong("a reading names no pin");
  const auto pin = pin_of(body["pin"]);
  if (!pin) return pin.error();
  auto raw = raw_of(body);
  if (!raw) return raw.error();
  RecordedReading out;
  out.reading.pin = *pin;
  out.raw = std::move(raw).value();
  out.walked = body.contains("walked") && body["walked"] == true;
  if (body.contains("seq") && body["seq"].is_number_unsigned()) {
    out.reading.seq = body["seq"].get<std::uint64_t>();
  }
  out.reading.over = body.contains("over") && body["over"] == true;
  if (out.reading.over == body.contains("uohm")) {
    return wrong("a reading must have a value in whole micro-ohm or be over, not both");
  }
  if (!out.reading.over) {
    if (!body["uohm"].is_number_integer()) return wrong("a reading's micro-ohm is no whole number");
    out.reading.micro_ohm = body["uohm"].get<std::int64_t>();
  }
  return out;
}

Result<Rehook> rehook_of(const nlohmann::json& body) {
  Rehook out;
  out.by = text_of(body, "by");
  out.why = text_of(body, "why");
  const auto module = part_of(body, "module");
  if (!module) return module.error();
  const auto rail = part_of(body, "rail");
  if (!rail) return rail.error();
  out.module = *module;
  out.rail = *rail;
  if (out.rail != 0 && out.module == 0) return wrong("a re-hook names a rail of no module");
  auto positions = texts_of(body, "positions");
  if (!positions) return positions.error();
  out.positions = std::move(positions).value();
  const auto pins = texts_of(body, "pins");
  if (!pins) return pins.error();
  for (const std::string& text : *pins) {
    const auto pin = pin_of(text);
    if (!pin) return pin.error();
    out.pins.push_back(*pin);
  }
  return out;
}

}  // namespace walkdown::audit
