// SPDX-License-Identifier: Apache-2.0
#include "tests/check/forge.h"

#include <gtest/gtest.h>

#include "checklist/record/line.h"
#include "tests/record/sample.h"

namespace walkdown::check::test {

Forge::Forge(const std::string& text) {
  for (const auto& commit : record::test::commits_of(text)) {
    for (const std::string& line : commit) {
      const auto parsed = record::parse_line(line);
      entries.push_back(record::entry_of(std::get<record::EntryView>(*parsed)));
    }
    commits_.push_back(entries.size());
  }
}

std::size_t Forge::first(const std::string& kind) const {
  for (std::size_t i = 0; i < entries.size(); ++i) {
    if (entries[i].kind == kind) return i;
  }
  ADD_FAILURE() << "no entry " << kind;
  return 0;
}

std::size_t Forge::last(const std::string& kind) const {
  for (std::size_t i = entries.size(); i > 0; --i) {
    if (entries[i - 1].kind == kind) return i - 1;
  }
  ADD_FAILURE() << "no entry " << kind;
  return 0;
}

std::size_t Forge::first(const std::string& kind, const char* member,
                         const nlohmann::json& value) const {
  for (std::size_t i = 0; i < entries.size(); ++i) {
    if (entries[i].kind == kind && entries[i].body.value(member, nlohmann::json()) == value) {
      return i;
    }
  }
  ADD_FAILURE() << "no entry " << kind << " with " << member << ' ' << value;
  return 0;
}

std::string Forge::sealed() const {
  std::vector<std::vector<std::string>> commits;
  std::size_t next = 0;
  for (std::size_t i = 0; i < entries.size(); ++i) {
    if (commits.empty() || (next < commits_.size() && i == commits_[next])) {
      commits.emplace_back();
      if (i > 0) ++next;
    }
    record::Entry entry = entries[i];
    entry.n = i;
    commits.back().push_back(*record::entry_line(entry));
  }
  return record::test::resealed(commits, entries.front().body["origin"], record::test::station());
}

}  // namespace walkdown::check::test
