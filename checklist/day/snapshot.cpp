// SPDX-License-Identifier: Apache-2.0
#include "checklist/day/snapshot.h"

#include <bit>
#include <boost/archive/binary_iarchive.hpp>
#include <boost/archive/binary_oarchive.hpp>
#include <boost/serialization/split_member.hpp>
#include <boost/serialization/tracking.hpp>
#include <boost/serialization/version.hpp>
#include <exception>
#include <map>
#include <sstream>
#include <streambuf>
#include <type_traits>
#include <utility>
#include <vector>

#include "checklist/day/snapshot_fields.h"

namespace walkdown::day {

static_assert(std::endian::native == std::endian::little, "the archive holds native integers");

namespace {

// Bytes in memory as a stream that knows how much is left: no length is believed beyond that.
class Source : public std::streambuf {
 public:
  explicit Source(std::string_view bytes) {
    char* from = const_cast<char*>(bytes.data());  // NOLINT: std::streambuf's get area is not const
    setg(from, from, from + bytes.size());
  }
  [[nodiscard]] std::size_t left() const { return static_cast<std::size_t>(egptr() - gptr()); }
};

// Thrown and caught in this file alone: Boost's archives know no other way out of a load.
struct Refused : std::exception {};

constexpr unsigned kFlags = boost::archive::no_header | boost::archive::no_codecvt;

template <typename T>
concept Plain = std::is_integral_v<T> && !std::is_same_v<T, bool>;

template <typename Archive>
class Saving {
 public:
  explicit Saving(Archive& archive) : archive_(archive) {}

  template <typename... Parts>
  void operator()(const Parts&... parts) {
    (put(parts), ...);
  }

 private:
  template <Plain T>
  void put(const T& value) {
    archive_ << value;
  }
  void put(bool value) { put(static_cast<std::uint8_t>(value ? 1 : 0)); }
  void put(ReleaseWord word) { put(static_cast<std::uint8_t>(word)); }
  void put(const std::string& text) {
    put(static_cast<std::uint64_t>(text.size()));
    archive_.save_binary(text.data(), text.size());
  }
  template <typename T>
  void put(const std::optional<T>& value) {
    put(value.has_value());
    if (value) put(*value);
  }
  template <typename T>
  void put(const std::vector<T>& all) {
    put(static_cast<std::uint64_t>(all.size()));
    for (const T& each : all) put(each);
  }
  template <typename Key, typename T>
  void put(const std::map<Key, T>& all) {
    put(static_cast<std::uint64_t>(all.size()));
    for (const auto& [key, each] : all) (*this)(key, each);
  }
  // fields() is one list for both directions, so it takes what it may also write to.
  template <typename T>
  requires std::is_class_v<T>
  void put(const T& value) {
    fields(*this, const_cast<T&>(value));  // NOLINT(cppcoreguidelines-pro-type-const-cast)
  }

  Archive& archive_;
};

template <typename Archive>
class Loading {
 public:
  Loading(Archive& archive, const Source& source) : archive_(archive), source_(source) {}

  template <typename... Parts>
  void operator()(Parts&... parts) {
    (get(parts), ...);
  }

 private:
  template <Plain T>
  void get(T& value) {
    archive_ >> value;
  }
  void get(bool& value) {
    std::uint8_t mark = 0;
    get(mark);
    if (mark > 1) throw Refused();
    value = mark == 1;
  }
  void get(ReleaseWord& word) {
    std::uint8_t value = 0;
    get(value);
    if (value > static_cast<std::uint8_t>(ReleaseWord::fallen)) throw Refused();
    word = static_cast<ReleaseWord>(value);
  }
  // Each element is a byte at least.
  std::size_t count() {
    std::uint64_t size = 0;
    get(size);
    if (size > source_.left()) throw Refused();
    return static_cast<std::size_t>(size);
  }
  void get(std::string& text) {
    text.assign(count(), '\0');
    archive_.load_binary(text.data(), text.size());
  }
  template <typename T>
  void get(std::optional<T>& value) {
    bool there = false;
    get(there);
    if (there) get(value.emplace());
  }
  template <typename T>
  void get(std::vector<T>& all) {
    for (std::size_t left = count(); left > 0; --left) get(all.emplace_back());
  }
  template <typename Key, typename T>
  void get(std::map<Key, T>& all) {
    for (std::size_t left = count(); left > 0; --left) {
      Key key{};
      get(key);
      get(all[key]);
    }
  }
  template <typename T>
  requires std::is_class_v<T>
  void get(T& value) { fields(*this, value); }

  Archive& archive_;
  const Source& source_;
};

bool fits(const Day& day, const Checklist& list, const Outside& outside) {
  return day.items.size() == list.items.size() && day.pauses.size() == list.stages.size() &&
         day.keys.size() == list.keys.size() && day.pins.size() == outside.pins.size() &&
         (!day.last_answered || *day.last_answered < list.items.size());
}

}  // namespace

// The one class of the archive.
struct Kept {
  Day day;
  std::string pins;                // of the pin source
  const Source* source = nullptr;  // only while loading

  template <typename Archive>
  void save(Archive& archive, unsigned /*version*/) const {
    Saving out(archive);
    out(day, pins);
  }
  template <typename Archive>
  void load(Archive& archive, unsigned version) {
    if (version != kSnapshotVersion) throw Refused();
    Loading in(archive, *source);
    in(day, pins);
  }
  BOOST_SERIALIZATION_SPLIT_MEMBER()
};

}  // namespace walkdown::day

BOOST_CLASS_VERSION(walkdown::day::Kept, walkdown::day::kSnapshotVersion)
BOOST_CLASS_TRACKING(walkdown::day::Kept, boost::serialization::track_never)

namespace walkdown::day {

std::string snapshot(const Fold& fold) {
  const PinSource* pins = fold.outside().source;
  const Kept kept{fold.day(), pins == nullptr ? std::string() : pins->save()};
  std::stringbuf bytes(std::ios::out | std::ios::binary);
  {
    boost::archive::binary_oarchive archive(bytes, kFlags);
    archive << kept;
  }
  return std::move(bytes).str();
}

bool restore(Fold& fold, std::string_view bytes) {
  Source source(bytes);
  Kept kept;
  kept.source = &source;
  try {
    boost::archive::binary_iarchive archive(source, kFlags);
    archive >> kept;
  } catch (const std::exception&) {
    return false;
  }
  if (source.left() != 0 || !fits(kept.day, fold.checklist(), fold.outside())) return false;
  PinSource* const pins = fold.outside().source;
  if (pins != nullptr && !pins->load(kept.pins)) return false;
  fold.restore(std::move(kept.day));
  return true;
}

}  // namespace walkdown::day
