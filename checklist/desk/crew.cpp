// SPDX-License-Identifier: Apache-2.0
#include "checklist/desk/crew.h"

#include <algorithm>
#include <filesystem>
#include <utility>

namespace walkdown::desk {
namespace {

namespace fs = std::filesystem;

}  // namespace

Result<std::string> key_name(const std::string& person) {
  const bool odd = person.empty() || person.front() == ' ' || person.back() == ' ' ||
                   person.front() == '.' || person.find("  ") != std::string::npos ||
                   person.find_first_of("_/") != std::string::npos;
  std::string name = person;
  std::replace(name.begin(), name.end(), ' ', '_');
  if (!odd && record::is_key_name(name)) return name;
  return Error{Code::refused, "a key cannot be named so", person,
               "write the name in letters, with single spaces between"};
}

std::string person_name(const std::string& key_name) {
  std::string name = key_name;
  std::replace(name.begin(), name.end(), '_', ' ');
  return name;
}

std::string Crew::default_folder() {
  const std::string station = record::default_station_path();
  return station.empty() ? station : (fs::path(station).parent_path() / "crew").string();
}

std::string Crew::path_of(const std::string& name) const {
  const auto key = key_name(name);
  return (fs::path(folder_) / ((key ? *key : name) + ".key")).string();
}

Result<Member> Crew::add(const std::string& name, std::string_view passphrase,
                         record::Cost cost) const {
  const auto key = key_name(name);
  if (!key) return key.error();
  const record::SigningKey made = record::SigningKey::make(*key);
  if (Done kept = record::save_person_key(path_of(name), made, passphrase, cost); !kept) {
    return kept.error();
  }
  return Member{name, made.verify_key()};
}

std::vector<Member> Crew::list() const {
  std::vector<Member> all;
  std::error_code ended;
  for (auto file = fs::directory_iterator(folder_, ended);
       !ended && file != fs::directory_iterator(); file.increment(ended)) {
    if (file->path().extension() != ".key") continue;
    if (auto key = record::person_vkey(file->path().string())) {
      all.push_back({person_name(key->name), std::move(key).value()});
    }
  }
  std::sort(all.begin(), all.end(),
            [](const Member& a, const Member& b) { return a.name < b.name; });
  return all;
}

Result<Member> Crew::find(const std::string& name) const {
  if (const auto fine = key_name(name); !fine) return fine.error();
  const std::string path = path_of(name);
  std::error_code ignored;
  if (!fs::exists(path, ignored)) {
    return Error{Code::io, "there is no key of " + name, folder_,
                 "make one with: walkdown crew add"};
  }
  auto key = record::person_vkey(path);
  if (!key) return key.error();
  return Member{person_name(key->name), std::move(key).value()};
}

Result<record::SigningKey> Crew::load(const std::string& name, std::string_view passphrase) const {
  const auto member = find(name);
  if (!member) return member.error();
  return record::load_person_key(path_of(name), passphrase);
}

}  // namespace walkdown::desk
