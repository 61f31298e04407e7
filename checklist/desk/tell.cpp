// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/tell.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>

#include "checklist/day/answer_value.h"
#include "checklist/day/body.h"
#include "checklist/day/duration.h"
#include "checklist/desk/crew.h"
#include "checklist/record/cosign.h"
#include "checklist/record/stamped.h"

namespace walkdown::desk {
namespace {

using day::text_in;
using day::texts_in;
using day::whole_in;
using nlohmann::json;

using Teller = std::string (*)(const day::Checklist& list, const json& body);

std::string signer(const json& body) {
  const std::string role = text_in(body, "role");
  const std::string by = text_in(body, "by");
  if (by.empty()) return "somebody";
  return role.empty() ? by : fmt::format("{} ({})", by, role);
}

// ": reason", or nothing.
std::string because(const json& body) {
  const std::string reason = text_in(body, "reason");
  return reason.empty() ? reason : ": " + reason;
}

std::string join(const std::vector<std::string>& texts) {
  std::string joined;
  for (const std::string& each : texts) joined += (joined.empty() ? "" : ", ") + each;
  return joined;
}

std::string decimals(std::int64_t thousandths, int digits) {
  return fmt::format("{:.{}f}", static_cast<double>(thousandths) / 1000, digits);
}

std::string reading(const day::Checklist& /*list*/, const json& body) {
  const auto micro_ohm = whole_in(body, "uohm");
  if (!micro_ohm) return text_in(body, "pin") + " over range";
  return fmt::format("{} {} ohm", text_in(body, "pin"), decimals(*micro_ohm / 1000, 2));
}

std::string answer(const day::Checklist& list, const json& body) {
  const std::string item = text_in(body, "item");
  const std::size_t index = list.item(item);
  const auto milli = whole_in(body, "milli");
  std::string value = text_in(body, "value");
  if (milli && index != day::Checklist::npos) {
    value = day::say_milli(*milli, list.items[index].unit);
  }
  return fmt::format("{} answered {}: {}", signer(body), item, value);
}

std::string enrol(const day::Checklist& /*list*/, const json& body) {
  return fmt::format("{} is enrolled as {}", text_in(body, "name"), text_in(body, "role"));
}

std::string second(const day::Checklist& /*list*/, const json& body) {
  return fmt::format("{} looked and confirms: {}", signer(body), text_in(body, "what"));
}

std::string pause(const day::Checklist& list, const json& body) {
  const std::size_t index = list.stage(text_in(body, "stage"));
  const std::string title =
      index == day::Checklist::npos ? text_in(body, "stage") : list.stages[index].title;
  return fmt::format("{} closed the pause after \"{}\"", signer(body), title);
}

std::string show_time(const day::Checklist& /*list*/, const json& body) {
  const std::int64_t offset_min = whole_in(body, "utc_offset_min").value_or(0);
  return fmt::format("{} set the show for {}{}", signer(body),
                     day::say_clock(whole_in(body, "show_at_ms").value_or(0), offset_min),
                     offset_min == 0 ? " UTC" : "");
}

std::string wind(const day::Checklist& /*list*/, const json& body) {
  return fmt::format("wind: mean {} m/s, gusts {} m/s over {}, by {}",
                     decimals(whole_in(body, "mean_mm_per_s").value_or(0), 1),
                     decimals(whole_in(body, "gust_mm_per_s").value_or(0), 1),
                     day::say_duration(whole_in(body, "period_ms").value_or(0)),
                     text_in(body, "from") == "instrument" ? "the instrument" : signer(body));
}

std::string thunder(const day::Checklist& /*list*/, const json& body) {
  const auto flash_ms = whole_in(body, "flash_ms");
  if (!flash_ms) return "thunder was heard";
  return fmt::format("thunder was heard, {} s after its flash", decimals(*flash_ms, 0));
}

std::string in(const day::Checklist& /*list*/, const json& body) {
  const auto positions = texts_in(body, "positions");
  return fmt::format("{} went into the field{}", text_in(body, "person"),
                     positions.empty() ? "" : ": " + join(positions));
}

// "Jon Weir is out of the field", or what another says of Jon Weir.
std::string of_person(const json& body, const char* what) {
  const std::string person = text_in(body, "person");
  const std::string by = text_in(body, "by");
  if (by.empty() || by == person) return fmt::format("{} {}", person, what);
  return fmt::format("{} says that {} {}{}", signer(body), person, what, because(body));
}

std::string out(const day::Checklist& /*list*/, const json& body) {
  return of_person(body, "is out of the field");
}
std::string tag_hang(const day::Checklist& /*list*/, const json& body) {
  return of_person(body, "hung a tag");
}
std::string tag_back(const day::Checklist& /*list*/, const json& body) {
  return of_person(body, "has the tag back");
}

std::string key_offer(const day::Checklist& /*list*/, const json& body) {
  return fmt::format("{} signed for the {} that {} holds", signer(body), text_in(body, "key"),
                     text_in(body, "from"));
}
std::string key_give(const day::Checklist& /*list*/, const json& body) {
  return fmt::format("{} gave the {} to {}", signer(body), text_in(body, "key"),
                     text_in(body, "to"));
}
std::string key_put(const day::Checklist& /*list*/, const json& body) {
  return fmt::format("{} put the {} into the {}", signer(body), text_in(body, "key"),
                     text_in(body, "place"));
}
std::string key_take(const day::Checklist& /*list*/, const json& body) {
  return fmt::format("{} took the {} out of the {}", signer(body), text_in(body, "key"),
                     text_in(body, "place"));
}

std::string hold(const day::Checklist& /*list*/, const json& body) {
  return fmt::format("{} called a hold{}", signer(body), because(body));
}
std::string lift(const day::Checklist& /*list*/, const json& body) {
  return fmt::format("{} lifted the hold{}", signer(body), because(body));
}
std::string waive(const day::Checklist& /*list*/, const json& body) {
  return fmt::format("{} waives {}{}", signer(body), text_in(body, "item"), because(body));
}
std::string waive_pin(const day::Checklist& /*list*/, const json& body) {
  return fmt::format("{} waives {}, which reads {}{}", signer(body), text_in(body, "pin"),
                     text_in(body, "verdict"), because(body));
}
std::string release(const day::Checklist& /*list*/, const json& body) {
  return fmt::format("{} signed the release", signer(body));
}
std::string withdraw(const day::Checklist& /*list*/, const json& body) {
  return fmt::format("{} withdrew the release{}", signer(body), because(body));
}

std::string rehook(const day::Checklist& /*list*/, const json& body) {
  std::vector<std::string> what = texts_in(body, "pins");
  for (const std::string& each : texts_in(body, "positions")) what.push_back(each);
  const auto module = whole_in(body, "module");
  const auto rail = whole_in(body, "rail");
  if (module) {
    what.push_back(rail ? fmt::format("module {} rail {}", *module, *rail)
                        : fmt::format("module {}", *module));
  }
  const std::string why = text_in(body, "why");
  return fmt::format("hooked up anew: {}{}", what.empty() ? "the whole field" : join(what),
                     why.empty() ? "" : " (" + why + ")");
}

std::string rejected(const day::Checklist& /*list*/, const json& body) {
  return "a line was not taken: " + text_in(body, "why");
}

std::string claim(const day::Checklist& /*list*/, const json& body) {
  std::string counts;
  if (const auto found = body.find("verdicts"); found != body.end() && found->is_object()) {
    for (const auto& [word, count] : found->items()) {
      counts += fmt::format("{}{} {}", counts.empty() ? "" : ", ", count.dump(), word);
    }
  }
  return "the field reads: " + counts;
}

std::string statement(const day::Checklist& /*list*/, const json& body) {
  return fmt::format("{} states: {}", signer(body), text_in(body, "text"));
}
std::string note(const day::Checklist& /*list*/, const json& body) { return text_in(body, "text"); }
std::string open(const day::Checklist& list, const json& /*body*/) {
  return "the record was opened, with the checklist \"" + list.name + "\"";
}
std::string resumed(const day::Checklist& /*list*/, const json& /*body*/) {
  return "the program was started anew";
}
std::string suspended(const day::Checklist& /*list*/, const json& body) {
  return "the machine slept for " + day::say_duration(whole_in(body, "ms").value_or(0));
}
std::string clock_step(const day::Checklist& /*list*/, const json& body) {
  const std::int64_t by_ms = whole_in(body, "by_ms").value_or(0);
  return fmt::format("the wall clock stepped {} by {}", by_ms < 0 ? "back" : "on",
                     day::say_duration(by_ms));
}
std::string torn(const day::Checklist& /*list*/, const json& body) {
  return "a crash left lines that were never acknowledged; they are kept in " +
         text_in(body, "file");
}
// Who and when; that it is an enrolled witness's signature, the record's own rules have seen to.
std::string cosign(const day::Checklist& /*list*/, const json& body) {
  const auto cosigned = record::parse_cosign_body(body);
  if (!cosigned || cosigned->note.signatures.empty()) {
    return "a witness's signature that cannot be read";
  }
  const auto at_ms = static_cast<std::int64_t>(cosigned->time_s) * 1000;
  return fmt::format("{} signed as a witness that the first {} entries stood at {}",
                     person_name(cosigned->note.signatures.front().name), cosigned->checkpoint.size,
                     record::stamp_time(at_ms));
}
std::string timestamp(const day::Checklist& /*list*/, const json& body) {
  const auto stamped = record::parse_stamped_body(body);
  const auto stamp = stamped ? stamped->check() : Result<record::TimeStamp>(stamped.error());
  if (!stamp) return "a time-stamp that does not hold";
  return fmt::format("{} signed that the first {} entries stood at {} (RFC 3161 time-stamp)",
                     stamp->authority, stamped->checkpoint.size, record::stamp_time(stamp->at_ms));
}
std::string close(const day::Checklist& /*list*/, const json& body) {
  return "the record was closed" + because(body);
}

struct Known {
  std::string_view kind;
  Teller tell;
};
constexpr std::array<Known, 34> kKnown = {{{"reading", reading},
                                           {"answer", answer},
                                           {"enrol", enrol},
                                           {"second", second},
                                           {"pause", pause},
                                           {"show-time", show_time},
                                           {"wind", wind},
                                           {"thunder", thunder},
                                           {"in", in},
                                           {"out", out},
                                           {"tag-hang", tag_hang},
                                           {"tag-back", tag_back},
                                           {"key-offer", key_offer},
                                           {"key-give", key_give},
                                           {"key-put", key_put},
                                           {"key-take", key_take},
                                           {"hold", hold},
                                           {"lift", lift},
                                           {"waive", waive},
                                           {"waive-pin", waive_pin},
                                           {"release", release},
                                           {"withdraw", withdraw},
                                           {"rehook", rehook},
                                           {"rejected", rejected},
                                           {"claim", claim},
                                           {"note", note},
                                           {"statement", statement},
                                           {"open", open},
                                           {"resumed", resumed},
                                           {"suspended", suspended},
                                           {"clock-step", clock_step},
                                           {"cosign", cosign},
                                           {"timestamp", timestamp},
                                           {"close", close}}};

}  // namespace

std::string tell(const day::Checklist& list, const record::Entry& entry) {
  const auto* const found = std::find_if(
      kKnown.begin(), kKnown.end(), [&](const Known& each) { return each.kind == entry.kind; });
  if (entry.kind == "torn") return torn(list, entry.body);
  if (found == kKnown.end()) return entry.kind;
  return found->tell(list, entry.body);
}

}  // namespace walkdown::desk
