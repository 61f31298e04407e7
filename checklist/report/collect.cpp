// SPDX-License-Identifier: Apache-2.0
#include "checklist/report/collect.h"

#include <algorithm>
#include <utility>

#include "checklist/day/body.h"
#include "checklist/desk/tell.h"
#include "checklist/record/signoff.h"

namespace walkdown::report {
namespace {

using day::text_in;
using day::whole_in;
using record::Entry;

bool is_one_of(std::string_view kind, std::initializer_list<std::string_view> kinds) {
  return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

}  // namespace

std::vector<ItemAt> items_now(const desk::Folded& folded, bool of_the_release_only) {
  const day::Checklist& list = folded.day().checklist();
  const day::State state = folded.day().at(folded.last());
  std::vector<ItemAt> all;
  for (std::size_t i = 0; i < list.items.size(); ++i) {
    const day::Item& item = list.items[i];
    if (of_the_release_only && !list.stages[item.stage].release) continue;
    all.push_back({item.id, item.question, item.source, state.items[i]});
  }
  return all;
}

std::optional<std::string> Collector::take(const record::EntryView& view) {
  if (auto why = deriver_.take(view)) return why;
  model_.last_at_ms = view.at_ms;
  if (view.kind == audit::kReading) {
    take_reading(view);
    if (release_word_ == day::ReleaseWord::stands || release_word_ == day::ReleaseWord::pending) {
      watch_release({view.n, view.at_ms, view.up_ms, std::string(view.kind), {}});
    }
    return std::nullopt;
  }
  if (view.n == 0) model_.opened_at_ms = view.at_ms;
  Entry entry{view.n, view.at_ms, view.up_ms, std::string(view.kind), nlohmann::json::object()};
  if (view.n == 0) {
    model_.station = text_in(record::entry_of(view).body, "station");
  } else {
    entry.body = record::entry_of(view).body;
  }
  take_entry(entry);
  return std::nullopt;
}

void Collector::take_reading(const record::EntryView& view) {
  auto read = audit::quick_reading_of(view.body);
  if (!read) {
    const auto slowly = audit::reading_of(record::entry_of(view).body);
    if (!slowly) return;
    read = *slowly;
  }
  const tester::Reading& reading = read->reading;
  ++model_.readings;
  const auto ohm = reading.over ? std::nullopt : std::optional(reading.ohm());
  readings_[reading.pin].push_back({view.n, view.at_ms, ohm});
  if (released_) after_.push_back({reading.pin, reading.ohm(), reading.over});
}

void Collector::take_entry(const Entry& entry) {
  const day::Checklist& list = folded().day().checklist();
  sort_line(entry, {entry.n, entry.at_ms, entry.kind, desk::tell(list, entry)});
  sign_offs(entry);
  watch_keys(entry);
  watch_field(entry);
  watch_items(entry);
  watch_release(entry);
  if (entry.kind == audit::kClaim) claims_.push_back({entry.n, entry.at_ms, entry.body});
  if (entry.kind == audit::kRejected) ++model_.rejected;
  if (entry.kind == audit::kRehook) {
    if (auto what = audit::rehook_of(entry.body)) {
      rehooks_.push_back({{entry.n, entry.at_ms, what->by, what->why}, std::move(what).value()});
    }
  }
}

void Collector::sort_line(const Entry& entry, Line line) {
  const std::string& kind = entry.kind;
  if (is_one_of(kind, {"clock-step", "resumed", "suspended", "torn"})) {
    model_.breaks.push_back(std::move(line));
  } else if (is_one_of(kind, {"note", "statement"})) {
    model_.notes.push_back(std::move(line));
  } else if (is_one_of(kind, {"cosign", "timestamp"})) {
    model_.outside.push_back(std::move(line));
  } else if (kind == "thunder") {
    model_.thunder.push_back(std::move(line));
  } else if (kind == "hold") {
    model_.holds.push_back({std::move(line), std::nullopt});
  } else if (kind == "lift" && folded().day().day().holds.empty()) {
    for (Hold& hold : model_.holds) {
      if (!hold.lifted) hold.lifted = line;
    }
  } else if (kind == "show-time") {
    model_.utc_offset_min = whole_in(entry.body, "utc_offset_min").value_or(0);
  } else if (kind == "wind") {
    const bool instrument = text_in(entry.body, "from") == "instrument";
    model_.winds.push_back({entry.n, entry.at_ms, whole_in(entry.body, "mean_mm_per_s").value_or(0),
                            whole_in(entry.body, "gust_mm_per_s").value_or(0),
                            whole_in(entry.body, "period_ms").value_or(0),
                            instrument ? "instrument" : text_in(entry.body, "by")});
  } else if (kind == "enrol") {
    const std::string name = text_in(entry.body, "name");
    auto& people = model_.people;
    auto found = std::find_if(people.begin(), people.end(),
                              [&](const Person& each) { return each.name == name; });
    if (found == people.end()) {
      people.push_back({name, {}, text_in(entry.body, "vkey"), entry.n});
      found = people.end() - 1;
    }
    found->roles.push_back(text_in(entry.body, "role"));
  } else if (is_one_of(kind, {"waive", "waive-pin", "second"})) {
    waiver(entry);
  }
}

void Collector::waiver(const Entry& entry) {
  if (entry.kind == "second") {
    const auto of = whole_in(entry.body, "of");
    for (auto* list : {&model_.waived_items, &model_.waived_pins}) {
      for (Waived& each : *list) {
        if (of && static_cast<std::int64_t>(each.n) == *of) each.second = text_in(entry.body, "by");
      }
    }
    return;
  }
  const bool pin = entry.kind == "waive-pin";
  (pin ? model_.waived_pins : model_.waived_items)
      .push_back({entry.n, entry.at_ms, text_in(entry.body, pin ? "pin" : "item"),
                  text_in(entry.body, "verdict"), text_in(entry.body, "by"), "",
                  text_in(entry.body, "reason")});
}

void Collector::sign_offs(const Entry& entry) {
  const auto notes = record::sign_offs_of(entry.body);
  if (!notes) return;
  for (const std::string& text : *notes) {
    const auto note = record::parse_note(text);
    const auto said =
        note ? record::parse_sign_off(note->text) : Result<record::SignOff>(note.error());
    if (!said) continue;
    model_.signatures.push_back(
        {entry.n, said->at_ms, said->person, said->role, said->statement, said->facts});
  }
}

void Collector::watch_keys(const Entry& entry) {
  const day::Checklist& list = folded().day().checklist();
  const day::Day& day = folded().day().day();
  if (model_.keys.empty()) {
    for (const auto& key : list.keys) {
      model_.keys.push_back({key.name, {{key.starts, false, entry.at_ms, entry.at_ms, 0}}, {}});
    }
  }
  for (std::size_t i = 0; i < model_.keys.size(); ++i) {
    KeyStory& story = model_.keys[i];
    const day::KeyLog& log = day.keys[i];
    if (entry.kind.starts_with("key-") && text_in(entry.body, "key") == story.name) {
      story.lines.push_back({entry.n, entry.at_ms, entry.kind, desk::tell(list, entry)});
    }
    Held& last = story.held.back();
    last.to_ms = entry.at_ms;
    if (log.holder == last.holder && log.person == last.person) continue;
    story.held.push_back({log.holder, log.person, entry.at_ms, entry.at_ms, entry.n});
  }
}

void Collector::watch_field(const Entry& entry) {
  const auto inside = static_cast<std::int64_t>(folded().day().day().in_field.size());
  if (model_.headcount.empty() || model_.headcount.back().inside != inside) {
    model_.headcount.push_back({entry.at_ms, inside});
  }
  if (is_one_of(entry.kind, {"in", "out", "tag-hang", "tag-back"})) {
    model_.in_and_out.push_back(
        {entry.n, entry.at_ms, entry.kind, desk::tell(folded().day().checklist(), entry)});
  }
}

// A span that held goes on to where it ran out, not to the entry that came after.
void Collector::extend(std::size_t item, std::int64_t at_ms, const day::Judgement& found) {
  std::vector<Span>& spans = model_.items[item].spans;
  const auto& until = until_ms_[item];
  if (!spans.empty()) spans.back().to_ms = at_ms;
  if (!spans.empty() && spans.back().standing == found.standing) return;
  if (!spans.empty() && found.standing == day::Standing::expired && until && *until < at_ms &&
      *until >= spans.back().from_ms) {
    spans.back().to_ms = *until;
    spans.push_back({*until, at_ms, found.standing});
    return;
  }
  spans.push_back({at_ms, at_ms, found.standing});
}

// Continuity asks for a diagnosis, so it is judged only where the record itself judges it; between,
// whoever touched the field has broken it.
void Collector::watch_items(const Entry& entry) {
  const day::Fold& fold = folded().day();
  const auto& items = fold.checklist().items;
  model_.items.resize(items.size());
  until_ms_.resize(items.size());
  const day::Moment moment = fold.day().time.last();
  const bool judged = is_one_of(
      entry.kind, {"claim", "release", "second", "pause", "waive", "waive-pin", "answer", "close"});
  const bool touched = audit::touches_field(entry.kind);
  for (std::size_t i = 0; i < items.size(); ++i) {
    day::Judgement found;
    const bool field = items[i].kind == day::Kind::continuity;
    if (!field || judged) {
      found = day::judge(fold.view(), i, moment);
    } else if (!touched || entry.kind == audit::kClaim) {
      if (!model_.items[i].spans.empty()) found.standing = model_.items[i].spans.back().standing;
    }
    extend(i, entry.at_ms, found);
    until_ms_[i].reset();
    if (found.until_aged_ms) until_ms_[i] = fold.day().time.at_of_aged(*found.until_aged_ms);
  }
}

void Collector::watch_release(const Entry& entry) {
  const day::ReleaseLog& log = folded().day().day().release;
  auto& all = model_.releases;
  const bool is_new =
      log.word != day::ReleaseWord::none && (all.empty() || all.back().n != log.claim.n);
  if (is_new) {
    all.push_back({log.claim.n,
                   log.claim.by,
                   std::nullopt,
                   "",
                   entry.at_ms,
                   std::nullopt,
                   {},
                   std::nullopt,
                   0,
                   ""});
  }
  if (!is_new && log.word == release_word_) return;
  release_word_ = log.word;
  if (all.empty()) return;
  Release& release = all.back();
  if (log.word == day::ReleaseWord::stands) {
    if (!released_) {
      before_ = folded().field().samples();
      model_.outcome = *folded().outcome();
      model_.outcome_at_release = true;
    }
    released_ = true;
    release.second = log.claim.second;
    release.second_n = log.claim.second_n;
    release.at_ms = entry.at_ms;
    if (log.until_aged_ms) {
      release.until_at_ms = folded().day().day().time.at_of_aged(*log.until_aged_ms);
    }
    release.grounds = items_now(folded(), true);
  } else if (log.word == day::ReleaseWord::fallen && !release.fell_at_ms) {
    release.fell_at_ms = entry.at_ms;
    release.fell_n = entry.n;
    release.fell_why = log.why;
  }
}

Model Collector::finish() {
  model_.origin = folded().origin();
  model_.show_at_ms = folded().day().day().show_at_ms;
  model_.prepared = folded().prepared();
  const auto last = items_now(folded(), false);
  model_.items.resize(last.size());
  for (std::size_t i = 0; i < last.size(); ++i) {
    model_.items[i].last = last[i];
    model_.items[i].stage = model_.prepared.checklist.items[i].stage;
    if (!model_.items[i].spans.empty()) model_.items[i].spans.back().to_ms = model_.last_at_ms;
  }
  for (KeyStory& key : model_.keys) key.held.back().to_ms = model_.last_at_ms;
  return std::move(model_);
}

}  // namespace walkdown::report
