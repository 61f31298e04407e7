// SPDX-License-Identifier: Apache-2.0
// The crew's keys: a folder with one file a person, each under that person's own passphrase
// (record/keys.h). Roles are not kept here: they are given on the day, by enrolling.
//
// A person's key is named after the person, with '_' for each space: "Mara Linde" signs as
// "Mara_Linde", and the file is Mara_Linde.key. So the name on paper and the name in the signature
// are one.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "checklist/record/keys.h"
#include "checklist/record/signing_key.h"
#include "checklist/record/vkey.h"
#include "reader/result.h"

namespace walkdown::desk {

struct Member {
  std::string name;  // "Mara Linde"
  record::VerifyKey key;
};

class Crew {
 public:
  // The folder need not exist.
  explicit Crew(std::string folder) : folder_(std::move(folder)) {}

  // $XDG_DATA_HOME/walkdown/crew, or ~/.local/share/walkdown/crew; empty without a home.
  [[nodiscard]] static std::string default_folder();

  // Makes a key and keeps it. Takes about a second (Argon2id). refused: there is one of this name,
  // the passphrase is under 8 characters, or the name cannot be a key's ('_', '+', '/', control
  // characters, spaces at an end or two in a row, a '.' at the front, over 200 bytes).
  [[nodiscard]] Result<Member> add(const std::string& name, std::string_view passphrase,
                                   record::Cost cost = record::Cost::moderate) const;
  // Sorted by name; files that are no keys are left out. Empty where there is no folder.
  [[nodiscard]] std::vector<Member> list() const;
  // io: nobody of this name is here.
  [[nodiscard]] Result<Member> find(const std::string& name) const;
  // Opens the key, about a second whether the passphrase is right or wrong. refused: it is wrong.
  [[nodiscard]] Result<record::SigningKey> load(const std::string& name,
                                                std::string_view passphrase) const;

  [[nodiscard]] const std::string& folder() const { return folder_; }
  [[nodiscard]] std::string path_of(const std::string& name) const;

 private:
  std::string folder_;
};

// The name of the key of a person, and back. refused: as for add().
[[nodiscard]] Result<std::string> key_name(const std::string& person);
[[nodiscard]] std::string person_name(const std::string& key_name);

}  // namespace walkdown::desk
