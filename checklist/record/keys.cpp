// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/keys.h"

#include <fcntl.h>
#include <sodium.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <nlohmann/json.hpp>
#include <system_error>

namespace walkdown::record {

namespace {

using nlohmann::json;
namespace fs = std::filesystem;

constexpr std::string_view kStationHead = "walkdown station key 1";
constexpr std::size_t kLeastPassphrase = 8;
constexpr std::size_t kLongestFile = 4096;
constexpr std::uint64_t kMostMemory = std::uint64_t{1} << 30U;  // what a file may ask of us
constexpr std::uint64_t kMostPasses = 10;

Error failed(const char* what, const std::string& path) {
  return {Code::io, std::string(what) + ": " + std::generic_category().message(errno), path, ""};
}

Error not_a_key_file(const std::string& path) {
  return {Code::bad_input, "this is no key file, or it was changed", path,
          "take a copy of it that you kept, or make a new key"};
}

Result<std::string> read_small(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  if (!file) return failed("the key cannot be read", path);
  std::string bytes(kLongestFile + 1, '\0');
  file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
  bytes.resize(static_cast<std::size_t>(file.gcount()));
  if (bytes.size() > kLongestFile) return not_a_key_file(path);
  return bytes;
}

// A new file that only its owner may read, from its first byte on.
Done write_new(const std::string& path, const std::string& bytes) {
  std::error_code ignored;
  const fs::path folder = fs::path(path).parent_path();
  if (!folder.empty()) fs::create_directories(folder, ignored);
  const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
  if (file < 0 && errno == EEXIST) {
    return Error{Code::refused, "there is a key of this name already", path, "choose another name"};
  }
  if (file < 0) return failed("the key cannot be kept", path);
  const bool kept =
      ::write(file, bytes.data(), bytes.size()) == static_cast<ssize_t>(bytes.size()) &&
      ::fsync(file) == 0;
  ::close(file);
  if (kept) return done();
  const Error error = failed("the key cannot be kept", path);
  ::unlink(path.c_str());
  return error;
}

Result<SigningKey> parse_station(const std::string& text, const std::string& path) {
  const std::size_t first = text.find('\n');
  const std::size_t second = first == std::string::npos ? first : text.find('\n', first + 1);
  if (second == std::string::npos || text.substr(0, first) != kStationHead) {
    return not_a_key_file(path);
  }
  const auto vkey = parse_vkey(std::string_view(text).substr(first + 1, second - first - 1));
  std::string_view rest = std::string_view(text).substr(second + 1);
  if (!rest.empty() && rest.back() == '\n') rest.remove_suffix(1);
  const auto secret = from_base64(rest);
  Seed seed{};
  if (!vkey || !secret || secret->size() != seed.size()) return not_a_key_file(path);
  std::copy(secret->begin(), secret->end(), seed.begin());
  SigningKey key(vkey->name, seed);
  sodium_memzero(seed.data(), seed.size());
  if (key.verify_key() != *vkey) return not_a_key_file(path);
  return key;
}

// The passphrase's own key, wiped at the end.
struct Wrapping {
  std::array<std::uint8_t, crypto_secretbox_KEYBYTES> key{};
  Wrapping() = default;
  Wrapping(const Wrapping&) = delete;
  Wrapping& operator=(const Wrapping&) = delete;
  Wrapping(Wrapping&&) = delete;
  Wrapping& operator=(Wrapping&&) = delete;
  ~Wrapping() { sodium_memzero(key.data(), key.size()); }

  [[nodiscard]] bool derive(std::string_view passphrase, const Bytes& salt, std::uint64_t passes,
                            std::uint64_t memory) {
    return salt.size() == crypto_pwhash_SALTBYTES &&
           crypto_pwhash(key.data(), key.size(), passphrase.data(), passphrase.size(), salt.data(),
                         passes, memory, crypto_pwhash_ALG_ARGON2ID13) == 0;
  }
};

struct Sealed25519 {
  VerifyKey public_key;
  std::uint64_t passes = 0, memory = 0;
  Bytes salt, nonce, box;
};

Bytes bytes_of(const json& file, const char* name) {
  const auto found = file.find(name);
  if (found == file.end() || !found->is_string()) return {};
  return from_base64(found->get_ref<const std::string&>()).value_or(Bytes{});
}

std::uint64_t whole_of(const json& file, const char* name) {
  const auto found = file.find(name);
  return found != file.end() && found->is_number_unsigned() ? found->get<std::uint64_t>() : 0;
}

Result<Sealed25519> parse_person(const std::string& text, const std::string& path) {
  const json file = json::parse(text, nullptr, /*allow_exceptions=*/false);
  if (!file.is_object() || whole_of(file, "walkdown_person_key") != 1) return not_a_key_file(path);
  const auto vkey = file.find("vkey");
  if (vkey == file.end() || !vkey->is_string()) return not_a_key_file(path);
  auto key = parse_vkey(vkey->get_ref<const std::string&>());
  if (!key) return not_a_key_file(path);
  Sealed25519 sealed{std::move(*key),        whole_of(file, "passes"), whole_of(file, "memory"),
                     bytes_of(file, "salt"), bytes_of(file, "nonce"),  bytes_of(file, "box")};
  const bool fits = sealed.passes >= 1 && sealed.passes <= kMostPasses &&
                    sealed.memory >= crypto_pwhash_MEMLIMIT_MIN && sealed.memory <= kMostMemory &&
                    sealed.salt.size() == crypto_pwhash_SALTBYTES &&
                    sealed.nonce.size() == crypto_secretbox_NONCEBYTES &&
                    sealed.box.size() == crypto_secretbox_MACBYTES + std::tuple_size_v<Seed>;
  if (!fits) return not_a_key_file(path);
  return sealed;
}

Bytes random_bytes(std::size_t size) {
  Bytes bytes(size);
  randombytes_buf(bytes.data(), bytes.size());
  return bytes;
}

}  // namespace

std::string default_station_path() {
  // Read once at the start of a program, before there are threads that might set it.
  const char* data = std::getenv("XDG_DATA_HOME");  // NOLINT(concurrency-mt-unsafe)
  if (data != nullptr && *data == '/') return std::string(data) + "/walkdown/station.key";
  const char* home = std::getenv("HOME");  // NOLINT(concurrency-mt-unsafe)
  if (home == nullptr || *home == '\0') return {};
  return std::string(home) + "/.local/share/walkdown/station.key";
}

Result<SigningKey> station_key(const std::string& path, const std::string& name) {
  struct stat found {};
  if (::stat(path.c_str(), &found) == 0) {
    if ((found.st_mode & 077U) != 0) {
      return Error{Code::refused, "others may read the station's key", path, "chmod 600 it"};
    }
    const auto text = read_small(path);
    if (!text) return text.error();
    return parse_station(*text, path);
  }
  if (!is_key_name(name)) {
    return Error{Code::usage, "a station's name has no space and no plus", name, ""};
  }
  const SigningKey key = SigningKey::make(name);
  const Seed seed = key.seed();
  const std::string file = std::string(kStationHead) + '\n' + text(key.verify_key()) + '\n' +
                           base64(seed.data(), seed.size()) + '\n';
  if (Done kept = write_new(path, file); !kept) return kept.error();
  return key;
}

Done save_person_key(const std::string& path, const SigningKey& key, std::string_view passphrase,
                     Cost cost) {
  if (passphrase.size() < kLeastPassphrase) {
    return Error{Code::refused, "the passphrase is too short", "", "take at least 8 characters"};
  }
  const bool moderate = cost == Cost::moderate;
  const std::uint64_t passes =
      moderate ? crypto_pwhash_OPSLIMIT_MODERATE : crypto_pwhash_OPSLIMIT_INTERACTIVE;
  const std::uint64_t memory =
      moderate ? crypto_pwhash_MEMLIMIT_MODERATE : crypto_pwhash_MEMLIMIT_INTERACTIVE;
  const Bytes salt = random_bytes(crypto_pwhash_SALTBYTES);
  const Bytes nonce = random_bytes(crypto_secretbox_NONCEBYTES);
  Wrapping wrapping;
  if (!wrapping.derive(passphrase, salt, passes, memory)) {
    return Error{Code::io, "there is not enough memory to protect the key", "", "close something"};
  }
  Seed seed = key.seed();
  Bytes box(crypto_secretbox_MACBYTES + seed.size());
  crypto_secretbox_easy(box.data(), seed.data(), seed.size(), nonce.data(), wrapping.key.data());
  sodium_memzero(seed.data(), seed.size());
  const json file{{"walkdown_person_key", 1}, {"vkey", text(key.verify_key())},
                  {"kdf", "argon2id13"},      {"passes", passes},
                  {"memory", memory},         {"salt", base64(salt)},
                  {"nonce", base64(nonce)},   {"box", base64(box)}};
  return write_new(path, file.dump(1) + '\n');
}

Result<SigningKey> load_person_key(const std::string& path, std::string_view passphrase) {
  const auto text = read_small(path);
  if (!text) return text.error();
  const auto sealed = parse_person(*text, path);
  if (!sealed) return sealed.error();
  Wrapping wrapping;
  if (!wrapping.derive(passphrase, sealed->salt, sealed->passes, sealed->memory)) {
    return Error{Code::io, "there is not enough memory to open the key", path, "close something"};
  }
  Seed seed{};
  if (crypto_secretbox_open_easy(seed.data(), sealed->box.data(), sealed->box.size(),
                                 sealed->nonce.data(), wrapping.key.data()) != 0) {
    return Error{Code::refused, "the passphrase is wrong", path, "type it again"};
  }
  SigningKey key(sealed->public_key.name, seed);
  sodium_memzero(seed.data(), seed.size());
  // The type byte is the file's word only; the key itself must be the one it names.
  if (key.verify_key() != sealed->public_key) return not_a_key_file(path);
  return key;
}

Result<VerifyKey> person_vkey(const std::string& path) {
  const auto text = read_small(path);
  if (!text) return text.error();
  auto sealed = parse_person(*text, path);
  if (!sealed) return sealed.error();
  return std::move(sealed->public_key);
}

}  // namespace walkdown::record
