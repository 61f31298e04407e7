// SPDX-License-Identifier: Apache-2.0
// Secret keys as files of mode 0600.
// - The station's key signs checkpoints by the hundred, with nobody there to ask: it is not
//   encrypted, and proves which computer wrote, not who.
// - A person's key is kept under a passphrase: Argon2id (RFC 9106; libsodium's moderate cost, about
//   0.8 s and 256 MiB) makes a key for XSalsa20-Poly1305. A wrong passphrase costs as much as a
//   right one.
#pragma once

#include <string>
#include <string_view>

#include "checklist/record/signing_key.h"
#include "reader/result.h"

namespace walkdown::record {

// $XDG_DATA_HOME/walkdown/station.key, or ~/.local/share/walkdown/station.key; empty without a
// home.
[[nodiscard]] std::string default_station_path();

// Reads the station's key, and makes one under the name where there is no file. Folders are made.
// bad_input: the file was changed; refused: others may read it.
[[nodiscard]] Result<SigningKey> station_key(const std::string& path, const std::string& name);

// What Argon2id costs. The file says which it was made with.
enum class Cost { moderate, interactive };  // interactive: 0.2 s and 64 MiB, for tests and the demo

// refused where there is a file already, or the passphrase is shorter than 8 characters.
Done save_person_key(const std::string& path, const SigningKey& key, std::string_view passphrase,
                     Cost cost = Cost::moderate);
// refused for a wrong passphrase; bad_input for a file that is no key; io.
[[nodiscard]] Result<SigningKey> load_person_key(const std::string& path,
                                                 std::string_view passphrase);
// Whose key it is, without the passphrase. What the file says, unproven until it is loaded.
[[nodiscard]] Result<VerifyKey> person_vkey(const std::string& path);

}  // namespace walkdown::record
