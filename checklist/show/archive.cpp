// SPDX-License-Identifier: Apache-2.0
#include "checklist/show/archive.h"

#include <fmt/format.h>

#include <bit>
#include <boost/archive/binary_iarchive.hpp>
#include <boost/archive/binary_oarchive.hpp>
#include <boost/serialization/level.hpp>
#include <boost/serialization/split_member.hpp>
#include <boost/serialization/tracking.hpp>
#include <boost/serialization/version.hpp>
#include <exception>
#include <sstream>
#include <streambuf>

#include "checklist/show/envelope.h"

namespace walkdown::show {

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
struct Refused : std::exception {
  explicit Refused(std::string why) : what_text(std::move(why)) {}
  [[nodiscard]] const char* what() const noexcept override { return what_text.c_str(); }
  std::string what_text;
};

constexpr unsigned kFlags = boost::archive::no_header | boost::archive::no_codecvt;

}  // namespace

// The one class of the archive. Version 1: the files. Version 2: the wire temperature too.
struct Packed {
  Show show;
  const Source* source = nullptr;  // only while loading

  template <typename Archive>
  void save(Archive& archive, unsigned /*version*/) const {
    const auto count = static_cast<std::uint32_t>(show.files.size());
    archive << count;
    for (const File& file : show.files) {
      const auto role = static_cast<std::uint8_t>(file.role);
      archive << role;
      save_text(archive, file.name);
      save_text(archive, file.text);
    }
    const std::uint8_t has_temp = show.temp_milli_degc ? 1 : 0;
    const std::int32_t temp = show.temp_milli_degc.value_or(0);
    archive << has_temp << temp;
  }

  template <typename Archive>
  void load(Archive& archive, unsigned version) {
    if (version < 1 || version > kShowVersion) {
      throw Refused(
          fmt::format("it has version {}, and this walkdown reads 1 to {}", version, kShowVersion));
    }
    std::uint32_t count = 0;
    archive >> count;
    if (count > kRoles) throw Refused(fmt::format("it has {} files", count));
    for (std::uint32_t i = 0; i < count; ++i) show.files.push_back(load_file(archive));
    if (version >= 2) load_temp(archive);
  }

  BOOST_SERIALIZATION_SPLIT_MEMBER()

 private:
  template <typename Archive>
  static void save_text(Archive& archive, const std::string& text) {
    const auto size = static_cast<std::uint32_t>(text.size());
    archive << size;
    archive.save_binary(text.data(), text.size());
  }

  template <typename Archive>
  File load_file(Archive& archive) {
    std::uint8_t role = 0;
    archive >> role;
    if (role >= kRoles) throw Refused(fmt::format("it has a file of unknown kind {}", role));
    File file;
    file.role = static_cast<Role>(role);
    file.name = load_text(archive);
    file.text = load_text(archive);
    return file;
  }

  template <typename Archive>
  std::string load_text(Archive& archive) {
    std::uint32_t size = 0;
    archive >> size;
    if (size > source->left()) throw Refused("a text is longer than the file");
    std::string text(size, '\0');
    archive.load_binary(text.data(), size);
    return text;
  }

  template <typename Archive>
  void load_temp(Archive& archive) {
    std::uint8_t has_temp = 0;
    std::int32_t temp = 0;
    archive >> has_temp >> temp;
    if (has_temp > 1 || (has_temp == 0 && temp != 0)) throw Refused("a mark is neither 0 nor 1");
    if (has_temp == 1) show.temp_milli_degc = temp;
  }
};

}  // namespace walkdown::show

BOOST_CLASS_VERSION(walkdown::show::Packed, walkdown::show::kShowVersion)
BOOST_CLASS_TRACKING(walkdown::show::Packed, boost::serialization::track_never)

namespace walkdown::show {
namespace {

Show load(std::string_view payload) {
  Source source(payload);
  Packed packed;
  packed.source = &source;
  boost::archive::binary_iarchive archive(source, kFlags);
  archive >> packed;
  if (source.left() != 0) throw Refused(fmt::format("{} bytes are left over", source.left()));
  return std::move(packed.show);
}

}  // namespace

Result<std::string> pack(const Show& show) {
  if (const auto good = check(show); !good) return good.error();
  try {
    std::stringbuf payload(std::ios::out | std::ios::binary);
    {
      boost::archive::binary_oarchive archive(payload, kFlags);
      const Packed packed{show};
      archive << packed;
    }
    return wrap(std::move(payload).str());
  } catch (const std::exception& error) {
    return Error{Code::bad_input, "the show cannot be packed", error.what(), ""};
  }
}

Result<Show> unpack(std::string_view bytes, std::string_view file_name) {
  if (bytes.size() > kMaxShowBytes) {
    return Error{Code::bad_input, "the show file is larger than 128 MiB", std::string(file_name),
                 "choose a file that `walkdown show pack` has written"};
  }
  const auto payload = unwrap(bytes, file_name);
  if (!payload) return payload.error();
  try {
    Show show = load(*payload);
    if (const auto good = check(show); !good) return good.error();
    return show;
  } catch (const std::exception& error) {
    return Error{Code::bad_input, fmt::format("the show file cannot be taken: {}", error.what()),
                 std::string(file_name), "open it with the walkdown that wrote it, or a newer one"};
  }
}

}  // namespace walkdown::show
