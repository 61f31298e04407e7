// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/demo_crew.h"

#include <utility>
#include <vector>

namespace walkdown::cli {
namespace {

struct Invented {
  const char* name;
  const char* role;
};
constexpr Invented kPeople[] = {{"Mara Linde", "lead"},   {"Jon Weir", "safety"},
                                {"Edda Horn", "crew"},    {"Ines Holm", "crew"},
                                {"Tomas Rey", "spotter"}, {"Olga Brandt", "witness"}};

Result<desk::Signer> make(const desk::Crew& crew, const Invented& person) {
  const auto made = crew.add(person.name, kDemoPassphrase, record::Cost::interactive);
  if (!made) return made.error();
  auto key = crew.load(person.name, kDemoPassphrase);
  if (!key) return key.error();
  return desk::Signer{std::move(key).value(), person.name, person.role};
}

}  // namespace

Result<DemoCrew> make_demo_crew(const std::string& folder) {
  const desk::Crew crew(folder);
  std::vector<desk::Signer> all;
  for (const Invented& person : kPeople) {
    auto signer = make(crew, person);
    if (!signer) return signer.error();
    all.push_back(std::move(signer).value());
  }
  return DemoCrew{std::move(all[0]), std::move(all[1]), std::move(all[2]),
                  std::move(all[3]), std::move(all[4]), std::move(all[5])};
}

}  // namespace walkdown::cli
