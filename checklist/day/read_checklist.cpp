// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/read_checklist.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "checklist/day/check_checklist.h"
#include "checklist/day/toml_source.h"

namespace walkdown::day {
namespace {

constexpr std::size_t kLargestFile = 1U << 20U;
constexpr std::size_t kMostItems = 500;

class Import {
 public:
  explicit Import(std::string_view file_name) : source_(file_name) {}

  ChecklistRead run(std::string_view toml);

 private:
  void root(const toml::table& table);
  void key(const toml::table& table);
  void stage(const toml::table& table);
  void item(const toml::table& table);
  void kind(const toml::table& table, Item& item);
  void answer(const toml::table& table, Item& item);
  void limits(const toml::table& table, Item& item);
  void events(const toml::table& table, Item& item);

  TomlSource source_;
  Checklist checklist_;
  std::vector<Written> written_;
};

void Import::key(const toml::table& table) {
  source_.only(table, {"name", "starts", "places", "firing", "takers"});
  Key key{source_.needed(table, "name"), source_.needed(table, "starts"),
          source_.list(table, "places"), source_.needed(table, "firing"),
          source_.list(table, "takers")};
  for (const std::string* place : {&key.starts, &key.firing}) {
    if (!contains(key.places, *place)) key.places.push_back(*place);
  }
  if (key.starts == key.firing) {
    source_.say(table.source(), "a key starts the day where it arms", "start it in the lock box");
  }
  if (checklist_.key(key.name) != Checklist::npos) {
    source_.say(table.source(), "two keys have the name " + key.name, "give each its own");
  }
  if (key.takers.empty()) key.takers = checklist_.lead;
  checklist_.keys.push_back(std::move(key));
}

void Import::kind(const toml::table& table, Item& item) {
  const std::string name = source_.needed(table, "kind");
  const auto found = kind_of(name);
  if (found) item.kind = *found;
  if (!found && !name.empty()) {
    source_.say(table.get("kind")->source(), name + " is no kind of item",
                "write confirm, number, continuity, zone, wind, thunder, custody, headcount, wait, "
                "file or text");
  }
}

void Import::answer(const toml::table& table, Item& item) {
  item.by = source_.list(table, "by");
  item.second = source_.list(table, "second");
  item.choices = source_.list(table, "choices");
  item.good = source_.list(table, "good");
  item.unit = source_.text(table, "unit");
  item.source = source_.text(table, "source");
  item.killer = source_.flag(table, "killer", false);
  item.key = source_.text(table, "key");
  item.places = source_.list(table, "places");
  item.alike = source_.flag(table, "alike", false);
}

void Import::limits(const toml::table& table, Item& item) {
  item.valid_for_ms = source_.duration(table, "valid_for");
  item.due_ms = source_.duration(table, "due", true);
  item.takes_ms = source_.duration(table, "takes").value_or(0);
  item.min_milli = source_.milli(table, "min");
  item.max_milli = source_.milli(table, "max");
  item.mean_max_mm_per_s = source_.milli(table, "mean_max_m_per_s");
  item.gust_max_mm_per_s = source_.milli(table, "gust_max_m_per_s");
  item.period_ms = source_.duration(table, "period").value_or(item.period_ms);
  item.near_ms = source_.duration(table, "near").value_or(item.near_ms);
  item.wait_ms = source_.duration(table, "wait").value_or(0);
}

void Import::events(const toml::table& table, Item& item) {
  for (const std::string& name : source_.list(table, "broken_by")) {
    if (const auto event = event_of(name)) {
      item.broken_by |= 1U << static_cast<unsigned>(*event);
    } else {
      source_.say(table.get("broken_by")->source(), name + " is no event that breaks an answer",
                  "write entered, rehook, hold, clock, suspend, restart, show-time, thunder or "
                  "custody");
    }
  }
}

void Import::item(const toml::table& table) {
  source_.only(table, {"id",
                       "question",
                       "kind",
                       "by",
                       "second",
                       "valid_for",
                       "due",
                       "takes",
                       "needs",
                       "broken_by",
                       "choices",
                       "good",
                       "unit",
                       "min",
                       "max",
                       "source",
                       "killer",
                       "repeats",
                       "mean_max_m_per_s",
                       "gust_max_m_per_s",
                       "period",
                       "near",
                       "wait",
                       "after",
                       "key",
                       "places",
                       "alike"});
  Item item;
  item.id = source_.needed(table, "id");
  item.question = source_.needed(table, "question");
  item.stage = checklist_.stages.size() - 1;
  kind(table, item);
  answer(table, item);
  limits(table, item);
  events(table, item);
  written_.push_back({table.source(), source_.list(table, "needs"), source_.text(table, "after"),
                      source_.text(table, "repeats")});
  checklist_.items.push_back(std::move(item));
}

void Import::stage(const toml::table& table) {
  source_.only(table, {"id", "title", "pause_by", "release", "item"});
  Stage stage;
  stage.id = source_.needed(table, "id");
  stage.title = source_.needed(table, "title");
  stage.pause_by = source_.list(table, "pause_by");
  stage.release = source_.flag(table, "release", true);
  stage.first = checklist_.items.size();
  if (checklist_.stage(stage.id) != Checklist::npos) {
    source_.say(table.source(), "two stages have the id " + stage.id, "give each its own");
  }
  if (stage.pause_by.empty()) stage.pause_by = checklist_.lead;
  checklist_.stages.push_back(stage);
  for (const toml::table* each : source_.tables(table, "item")) item(*each);
  checklist_.stages.back().count = checklist_.items.size() - stage.first;
  if (checklist_.stages.back().count == 0) {
    source_.say(table.source(), "a stage has no item", "add [[stage.item]] tables");
  }
}

void Import::root(const toml::table& table) {
  source_.only(table, {"name", "source", "show_length", "break_after", "release_by",
                       "release_second", "lead", "key", "stage"});
  checklist_.name = source_.needed(table, "name");
  checklist_.source = source_.needed(table, "source");
  checklist_.show_length_ms = source_.duration(table, "show_length").value_or(0);
  checklist_.break_after_ms =
      source_.duration(table, "break_after").value_or(checklist_.break_after_ms);
  checklist_.lead = source_.list(table, "lead");
  if (checklist_.lead.empty()) checklist_.lead = {"lead"};
  checklist_.release_by = source_.list(table, "release_by");
  if (checklist_.release_by.empty()) checklist_.release_by = checklist_.lead;
  checklist_.release_second = source_.list(table, "release_second");
  for (const toml::table* each : source_.tables(table, "key")) key(*each);
  for (const toml::table* each : source_.tables(table, "stage")) stage(*each);
}

ChecklistRead Import::run(std::string_view toml) {
  if (toml.size() > kLargestFile) {
    source_.say({}, "the checklist is over 1 MiB", "choose another file");
    return {{}, std::move(source_.mistakes())};
  }
  try {
    const toml::table table = toml::parse(toml);
    root(table);
    if (checklist_.items.size() > kMostItems) {
      source_.say(table.source(), "a checklist of more than 500 items is not read by anyone",
                  "split it");
    } else {
      check_checklist(table, written_, checklist_, source_);
    }
  } catch (const toml::parse_error& error) {
    source_.say(error.source(), std::string(error.description()), "correct the TOML");
  }
  return {std::move(checklist_), std::move(source_.mistakes())};
}

}  // namespace

ChecklistRead read_checklist(std::string_view toml, std::string_view file_name) {
  return Import(file_name).run(toml);
}

}  // namespace walkdown::day
