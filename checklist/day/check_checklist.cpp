// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/check_checklist.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace walkdown::day {
namespace {

class Check {
 public:
  Check(const std::vector<Written>& written, Checklist& checklist, TomlSource& source)
      : written_(written), checklist_(checklist), source_(source) {}

  void run(const toml::table& root);

 private:
  void say(std::size_t item, const std::string& what, std::string remedy);
  std::optional<std::size_t> resolve(std::size_t item, const std::string& id, const char* key);
  void references(std::size_t item);
  void answer(std::size_t item);
  void choices(std::size_t item);
  void limits(std::size_t item);
  void custody(std::size_t item);
  void dead_keys(std::size_t item);
  void lasts(std::size_t item);
  void killers();

  const std::vector<Written>& written_;
  Checklist& checklist_;
  TomlSource& source_;
};

void Check::say(std::size_t item, const std::string& what, std::string remedy) {
  source_.say(written_[item].at, fmt::format("item {}: {}", checklist_.items[item].id, what),
              std::move(remedy));
}

// Only items written before it can be named: so nothing runs in a circle.
std::optional<std::size_t> Check::resolve(std::size_t item, const std::string& id,
                                          const char* key) {
  const std::size_t other = checklist_.item(id);
  if (other == Checklist::npos) {
    say(item, fmt::format("{} names {}, which is no item", key, id), "correct the id");
    return std::nullopt;
  }
  if (other >= item) {
    say(item, fmt::format("{} names {}, which does not come before it", key, id),
        "an item can only rest on earlier ones; change their order");
    return std::nullopt;
  }
  return other;
}

void Check::references(std::size_t index) {
  Item& item = checklist_.items[index];
  if (checklist_.item(item.id) != index) say(index, "the id is used twice", "give each its own");
  for (const std::string& id : written_[index].needs) {
    if (const auto other = resolve(index, id, "needs")) item.needs.push_back(*other);
  }
  if (!written_[index].after.empty()) item.after = resolve(index, written_[index].after, "after");
  if (!written_[index].repeats.empty()) {
    item.repeats = resolve(index, written_[index].repeats, "repeats");
  }
  if (item.kind == Kind::wait && !item.after) {
    say(index, "a wait counts from nothing", "name an earlier item under after");
  }
}

bool answered(Kind kind) {
  return kind == Kind::confirm || kind == Kind::number || kind == Kind::wind ||
         kind == Kind::file || kind == Kind::text;
}

void Check::answer(std::size_t index) {
  const Item& item = checklist_.items[index];
  if (answered(item.kind) && item.by.empty()) {
    say(index, "nobody may answer it", "write by = [\"lead\"], or another role");
  }
  if (std::any_of(item.question.begin(), item.question.end(),
                  [](char c) { return static_cast<unsigned char>(c) < ' '; })) {
    say(index, "the question runs over more than one line", "ask one short question");
  }
  if (!item.second.empty() && item.by.empty()) {
    say(index, "it has a second signer but no first", "write by");
  }
  const bool chosen = item.kind == Kind::confirm || (!answered(item.kind) && item.asked());
  if (chosen) choices(index);
  if (!chosen && !item.choices.empty()) {
    say(index, fmt::format("a {} has no choices", word(item.kind)), "take them out");
  }
}

void Check::choices(std::size_t index) {
  const Item& item = checklist_.items[index];
  if (item.choices.size() < 2) {
    say(index, "there is nothing to choose between", "list the states that can be found");
  }
  for (const std::string& choice : item.choices) {
    if (says_nothing(choice)) {
      say(index, fmt::format("\"{}\" does not say what was seen", choice), "name the state");
    }
  }
  for (const std::string& choice : item.good) {
    if (!contains(item.choices, choice)) {
      say(index, fmt::format("\"{}\" is good but cannot be chosen", choice), "add it to choices");
    }
  }
  if (item.good.empty() || item.good.size() >= item.choices.size()) {
    say(index, "no choice would refuse it, or none would let it hold",
        "list under good the choices that let it hold");
  }
}

void Check::limits(std::size_t index) {
  const Item& item = checklist_.items[index];
  const bool limited = item.valid_for_ms || item.min_milli || item.max_milli ||
                       item.mean_max_mm_per_s || item.gust_max_mm_per_s || item.wait_ms > 0;
  if (limited && item.source.empty()) {
    say(index, "it has a limit without a source",
        "write source = \"...\", or \"common practice, no source\"");
  }
  if (item.kind == Kind::number && (item.unit.empty() || (!item.min_milli && !item.max_milli))) {
    say(index, "a number needs a unit and a limit", "write unit and min or max");
  }
  if (item.min_milli && item.max_milli && *item.min_milli > *item.max_milli) {
    say(index, "min is above max", "exchange them");
  }
  if (item.kind == Kind::wind && !item.mean_max_mm_per_s && !item.gust_max_mm_per_s) {
    say(index, "a wind item needs a limit", "write mean_max_m_per_s or gust_max_m_per_s");
  }
  if (item.kind == Kind::wind && item.period_ms != 600'000 && item.period_ms != 120'000) {
    say(index, "a mean wind is over 10 min or 2 min", "write period = \"10m\" or \"2m\"");
  }
  if ((item.kind == Kind::wait || item.kind == Kind::thunder) && item.wait_ms == 0) {
    say(index, "it does not say how long to wait", "write wait = \"30m\"");
  }
}

void Check::custody(std::size_t index) {
  const Item& item = checklist_.items[index];
  if (item.kind != Kind::custody) return;
  const std::size_t key = checklist_.key(item.key);
  if (key == Checklist::npos) {
    say(index, fmt::format("there is no key \"{}\"", item.key), "add it under [[key]]");
    return;
  }
  if (item.places.empty()) say(index, "it does not say where the key has to be", "write places");
  for (const std::string& place : item.places) {
    if (place.starts_with("role:") || contains(checklist_.keys[key].places, place)) continue;
    say(index, fmt::format("the key has no place \"{}\"", place),
        "write one of its places, or role:lead for a person");
  }
}

// What an item that nobody answers cannot use would only look as if it protected something.
void Check::dead_keys(std::size_t index) {
  const Item& item = checklist_.items[index];
  if (item.kind == Kind::wind && !item.second.empty()) {
    say(index, "a wind has no second signature", "take second out; read the wind again instead");
  }
  if (item.alike && item.kind != Kind::confirm) {
    say(index, "alike stands on an item that is not a confirm", "take it out");
  }
  if (answered(item.kind) || item.asked() || item.kind == Kind::continuity) return;
  if (item.broken_by != 0) {
    say(index,
        fmt::format("a {} that nobody answers follows from what is: no event breaks it",
                    word(item.kind)),
        "take broken_by out, or let somebody answer it (by, choices, good)");
  }
  if (item.valid_for_ms) {
    say(index, fmt::format("a {} that nobody answers does not grow old", word(item.kind)),
        "take valid_for out, or let somebody answer it (by, choices, good)");
  }
}

void Check::lasts(std::size_t index) {
  const Item& item = checklist_.items[index];
  if (!checklist_.stages[item.stage].release || !item.valid_for_ms) return;
  if (*item.valid_for_ms > checklist_.show_length_ms) return;
  say(index, "it is valid for no longer than the show lasts, so no release could cover the show",
      "make valid_for longer than show_length");
}

void Check::killers() {
  const std::size_t last = checklist_.last_release_stage();
  for (std::size_t i = 0; i < checklist_.items.size(); ++i) {
    const Item& item = checklist_.items[i];
    if (!item.killer || last == Checklist::npos || item.stage >= last) continue;
    const bool repeated =
        std::any_of(checklist_.items.begin(), checklist_.items.end(),
                    [&](const Item& other) { return other.repeats == i && other.stage == last; });
    if (!repeated) {
      say(i, "lives hang on it, but it is not asked again before the release",
          fmt::format("add an item with repeats = \"{}\" to the last stage before it", item.id));
    }
  }
}

void Check::run(const toml::table& root) {
  for (std::size_t i = 0; i < checklist_.items.size(); ++i) {
    references(i);
    answer(i);
    limits(i);
    custody(i);
    dead_keys(i);
    lasts(i);
  }
  killers();
  if (checklist_.stages.empty()) source_.say(root.source(), "there is no stage", "add [[stage]]");
  if (checklist_.last_release_stage() == Checklist::npos && !checklist_.stages.empty()) {
    source_.say(root.source(), "no stage is part of the release",
                "leave out release = false on the stages it rests on");
  }
  const auto after = std::find_if(checklist_.stages.begin(), checklist_.stages.end(),
                                  [](const Stage& stage) { return !stage.release; });
  if (std::any_of(after, checklist_.stages.end(), [](const Stage& each) { return each.release; })) {
    source_.say(root.source(), "a stage of the release comes after one that is not part of it",
                "put the stages with release = false last");
  }
  if (checklist_.release_second.empty()) {
    source_.say(root.source(), "nobody countersigns the release",
                "write release_second = [\"safety\"], or another role");
  }
}

}  // namespace

void check_checklist(const toml::table& root, const std::vector<Written>& written,
                     Checklist& checklist, TomlSource& source) {
  Check(written, checklist, source).run(root);
}

}  // namespace walkdown::day
