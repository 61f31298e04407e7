// SPDX-License-Identifier: Apache-2.0
#include "checklist/check/take_extract.h"

#include <algorithm>
#include <set>
#include <utility>

#include "checklist/check/derive.h"
#include "checklist/record/extract.h"
#include "checklist/record/json_text.h"
#include "checklist/record/line_source.h"
#include "checklist/record/naming.h"
#include "checklist/record/rules.h"

namespace walkdown::check {
namespace {

using nlohmann::json;

// What the first pass gives: that the record holds, and whom it knows.
struct Known {
  record::Report report;
  std::vector<record::Person> people;
  std::set<std::string> mentioned;  // in a `by` or `person`, enrolled or not
};

void remember_people(const record::EntryView& entry, Known& known) {
  if (entry.n == 0 || entry.kind == audit::kReading) return;
  const json body = record::parse_canonical(entry.body);
  if (entry.kind == "enrol") {
    if (auto person = record::person_of(body)) known.people.push_back(std::move(*person));
  }
  for (const char* member : {"by", "person"}) {
    const auto found = body.find(member);
    if (found == body.end() || !found->is_string()) continue;
    if (std::string name = found->get<std::string>(); !name.empty()) {
      known.mentioned.insert(std::move(name));
    }
  }
}

Result<Known> look(const std::string& path, record::VerifyOptions options, Deriver& deriver) {
  Known known;
  options.visitor = [&](const record::EntryView& entry) {
    remember_people(entry, known);
    return deriver.take(entry);
  };
  auto report = record::verify_file(path, options);
  if (!report) return report.error();
  if (!report->holds) {
    return Error{Code::forged, "the record does not hold: " + report->why, path,
                 "nothing is taken from it; see: walkdown verify"};
  }
  known.report = std::move(*report);
  return known;
}

Result<std::vector<std::string>> phrases_to_withhold(const ExtractWish& wish, const Known& known) {
  std::vector<std::string> phrases;
  const auto add = [&](const std::string& name) {
    auto more = record::phrases_of(name, known.people);
    phrases.insert(phrases.end(), more.begin(), more.end());
  };
  for (const std::string& name : wish.withhold) {
    const bool enrolled = std::any_of(known.people.begin(), known.people.end(),
                                      [&](const auto& person) { return person.name == name; });
    if (!enrolled && !known.mentioned.contains(name)) {
      return Error{Code::refused, "nobody of this name is in the record", name,
                   "write the name as the record has it"};
    }
    add(name);
  }
  if (!wish.withhold_everybody) return phrases;
  for (const auto& person : known.people) add(person.name);
  // A `by` that nobody enrolled may be "hand at module 2": of such, only the whole counts.
  phrases.insert(phrases.end(), known.mentioned.begin(), known.mentioned.end());
  return phrases;
}

// The lines of the part that was checked, once more.
struct Second {
  std::vector<record::Hash> leaves;
  record::Chosen chosen;
  std::string checkpoint;
};

class SecondPass {
 public:
  SecondPass(const ExtractWish& wish, const std::vector<std::string>& withhold,
             std::uint64_t sealed_lines)
      : wish_(wish), withhold_(withhold), left_(sealed_lines) {}

  bool line(std::string_view line) {
    const auto parsed = record::parse_line(line);
    if (!parsed) return false;
    if (const auto* view = std::get_if<record::EntryView>(&*parsed)) {
      found_.leaves.push_back(record::leaf_hash(line));
      choose(*view, line);
    } else {
      found_.checkpoint = std::get<record::CheckpointLine>(*parsed).note;
    }
    return --left_ > 0;
  }
  [[nodiscard]] Second found() && { return std::move(found_); }

 private:
  void choose(const record::EntryView& view, std::string_view line) {
    const bool taken = std::any_of(wish_.any_of.begin(), wish_.any_of.end(),
                                   [&](const Choice& choice) { return choice.takes(view); });
    if (!taken) return;
    const bool hide =
        !withhold_.empty() && record::says(record::parse_canonical(view.body), withhold_);
    found_.chosen.emplace(view.n, hide ? std::nullopt : std::optional(std::string(line)));
  }

  const ExtractWish& wish_;
  const std::vector<std::string>& withhold_;
  std::uint64_t left_;
  Second found_;
};

// The station whose signature the checkpoint bears.
Result<record::ExtractHead> head_of(const Second& second, const record::Sealed& sealed,
                                    const std::vector<std::string>& withhold) {
  const auto note = record::parse_note(second.checkpoint);
  if (!note) return note.error();
  const auto signer = std::find_if(sealed.stations.begin(), sealed.stations.end(),
                                   [&](const auto& key) { return is_signed_by(*note, key); });
  if (signer == sealed.stations.end())
    return Error{Code::io, "the record changed meanwhile", "", ""};
  record::ExtractHead head{second.checkpoint, *signer};
  if (record::says(json(record::extract_head_line(head)), withhold)) {
    return Error{
        Code::refused,
        "a name to be withheld stands in the record's origin or in its station's key, which "
        "every extract must show",
        sealed.origin, ""};
  }
  return head;
}

}  // namespace

Result<Extract> take_extract(const std::string& path, ExtractWish wish,
                             record::VerifyOptions options) {
  Deriver deriver;
  const auto known = look(path, std::move(options), deriver);
  if (!known) return known.error();
  for (Choice& choice : wish.any_of) {
    const auto& plan = deriver.folded().prepared().planned.plan;
    if (const Done knows = choice.know(plan, known->people); !knows) return knows.error();
  }
  const auto withhold = phrases_to_withhold(wish, *known);
  if (!withhold) return withhold.error();
  SecondPass pass(wish, *withhold, known->report.sealed.lines);
  const auto rest =
      record::read_lines(path, {[&](std::string_view line) { return pass.line(line); },
                                [] { return record::kLongestOpen; }, [] {}});
  if (!rest) return rest.error();
  Second second = std::move(pass).found();
  const record::WholeTree tree(std::move(second.leaves));
  if (tree.root() != known->report.sealed.tree.root()) {
    return Error{Code::io, "the record changed meanwhile", path, ""};
  }
  if (second.chosen.empty()) {
    return Error{Code::refused, "no entry of the record is chosen", path, ""};
  }
  const auto head = head_of(second, known->report.sealed, *withhold);
  if (!head) return head.error();
  Extract extract{record::extract_text(*head, tree, second.chosen), 0, 0, known->report.mark};
  for (const auto& [n, line] : second.chosen) ++(line ? extract.entries : extract.withheld);
  return extract;
}

}  // namespace walkdown::check
