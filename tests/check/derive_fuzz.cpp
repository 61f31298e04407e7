// SPDX-License-Identifier: Apache-2.0
// Entries of any kind with any body, after an honest opening, as somebody with the station's key
// may write them: each is taken, or named as one that does not hold; nothing falls. A line of the
// input is `<kind> <body>`; a line that is no entry is passed over. Signatures are not looked at,
// so that what comes behind them is reached.
#include <nlohmann/json.hpp>

#include "checklist/check/derive.h"
#include "checklist/desk/tell.h"
#include "checklist/record/rules.h"
#include "tests/desk/evening.h"

namespace {

using namespace walkdown;

const std::string& opening() {
  static const std::string body =
      nlohmann::json{{"format", 1},
                     {"origin", "fuzz"},
                     {"station", record::text(record::test::station().verify_key())},
                     {"show", show::to_json(desk::test::evening_show())}}
          .dump();
  return body;
}

class Day {
 public:
  Day() { take("open", opening()); }

  // False once something does not hold.
  bool take(const std::string& kind, const std::string& body) {
    const record::EntryView view{n_, 1'783'191'731'123 + step_ms_, 81'234 + step_ms_, kind, body};
    ++n_;
    step_ms_ += 7'000;
    if (rules_.accept(view, heads_) || deriver_.take(view)) return false;
    (void)desk::tell(deriver_.folded().day().checklist(), record::entry_of(view));
    return true;
  }

 private:
  record::Rules rules_{false};
  record::Heads heads_;
  check::Deriver deriver_;
  std::uint64_t n_ = 0;
  std::int64_t step_ms_ = 0;
};

bool is_body(const nlohmann::json& tree) {
  // Whole numbers only, as a record has them.
  if (tree.is_number_float()) return false;
  if (!tree.is_structured()) return true;
  return std::all_of(tree.begin(), tree.end(), is_body);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  Day day;
  std::string_view rest(reinterpret_cast<const char*>(data), size);
  for (int lines = 0; !rest.empty() && lines < 60; ++lines) {
    const std::string_view line = rest.substr(0, rest.find('\n'));
    rest.remove_prefix(std::min(rest.size(), line.size() + 1));
    const std::size_t space = line.find(' ');
    if (space == std::string_view::npos || !record::is_kind(line.substr(0, space))) continue;
    const auto body = nlohmann::json::parse(line.substr(space + 1), nullptr, false);
    if (!body.is_object() || !is_body(body)) continue;
    std::string text;
    try {
      text = body.dump();
    } catch (const nlohmann::json::exception&) {
      continue;  // not UTF-8: no line of a record
    }
    const auto canonical = record::entry_line({0, 0, 0, "note", body});
    if (!canonical) continue;
    if (!day.take(std::string(line.substr(0, space)), text)) return 0;
  }
  return 0;
}
