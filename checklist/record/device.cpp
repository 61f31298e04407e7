// SPDX-License-Identifier: Apache-2.0
#include "checklist/record/device.h"

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdio>
#include <cstring>
#include <filesystem>
#include <system_error>

namespace walkdown::record {

namespace {

namespace fs = std::filesystem;

Error failed(const char* what, const std::string& where, int number) {
  Error error{Code::io, std::string(what) + ": " + std::generic_category().message(number), where,
              ""};
  if (number == ENOSPC || number == EDQUOT) {
    error.remedy = "make room on the disk and resume the record; what was acknowledged is kept";
  } else if (number == EACCES || number == EPERM || number == EROFS) {
    error.remedy = "choose a folder that you may write to";
  }
  return error;
}

class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  Descriptor(Descriptor&& other) noexcept : number_(other.number_) { other.number_ = -1; }
  Descriptor& operator=(Descriptor&&) = delete;
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  [[nodiscard]] int get() const { return number_; }
  [[nodiscard]] bool ok() const { return number_ >= 0; }

 private:
  int number_;
};

constexpr std::uint64_t kAhead = std::uint64_t{4} << 20U;  // bytes

// Blocks of the disk are taken ahead of the bytes, behind the end of the file, which stays where it
// is: a sync then need not wait for the disk to book new blocks as well (a fifth to a quarter less
// on ext4). What was not used is given back. A file system that cannot do it does without.
class FileDevice final : public Device {
 public:
  FileDevice(Descriptor file, std::string path) : file_(std::move(file)), path_(std::move(path)) {
    size_ = taken_ = size();
  }
  FileDevice(const FileDevice&) = delete;
  FileDevice& operator=(const FileDevice&) = delete;
  FileDevice(FileDevice&&) = delete;
  FileDevice& operator=(FileDevice&&) = delete;
  ~FileDevice() override {
    // By what the file is now, not by what was written here: nothing may ever be cut off.
    if (taken_ > size_) give_back();
  }

  Result<std::size_t> write(std::string_view bytes) override {
    take_ahead(bytes.size());
    while (true) {
      const ssize_t wrote = ::write(file_.get(), bytes.data(), bytes.size());
      if (wrote > 0) size_ += static_cast<std::uint64_t>(wrote);
      if (wrote > 0) return static_cast<std::size_t>(wrote);
      if (wrote == 0) return failed("the record cannot be written", path_, EIO);
      if (errno != EINTR) return failed("the record cannot be written", path_, errno);
    }
  }

  Done sync() override {
    if (::fdatasync(file_.get()) != 0) return failed("the record cannot be synced", path_, errno);
    return done();
  }

 private:
  [[nodiscard]] std::uint64_t size() const {
    struct stat found {};
    return ::fstat(file_.get(), &found) == 0 ? static_cast<std::uint64_t>(found.st_size) : 0;
  }

  void take_ahead(std::uint64_t more) {
    if (!can_take_ || size_ + more <= taken_) return;
    const auto wanted = static_cast<off_t>(more + kAhead);
    can_take_ =
        ::fallocate(file_.get(), FALLOC_FL_KEEP_SIZE, static_cast<off_t>(size_), wanted) == 0;
    if (can_take_) taken_ = size_ + more + kAhead;
  }

  void give_back() const {
    const std::uint64_t end = size();
    // The lock is held, so nobody appends between the two.
    if (end == 0 || ::ftruncate(file_.get(), static_cast<off_t>(end)) != 0) return;
  }

  Descriptor file_;
  std::string path_;
  std::uint64_t size_ = 0;   // bytes in the file
  std::uint64_t taken_ = 0;  // bytes it has room for
  bool can_take_ = true;
};

std::string folder_of(const std::string& path) {
  const std::string folder = fs::path(path).parent_path().string();
  return folder.empty() ? "." : folder;
}

// A new name in a folder is on the medium only once the folder is.
Done sync_folder_of(const std::string& path) {
  const std::string folder = folder_of(path);
  const Descriptor opened(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  // Some file systems cannot sync a folder (EINVAL); there is nothing better to do on them.
  if (!opened.ok() || (::fsync(opened.get()) != 0 && errno != EINVAL)) {
    return failed("the folder cannot be synced", folder, errno);
  }
  return done();
}

Done lock(int file, const std::string& path) {
  if (::flock(file, LOCK_EX | LOCK_NB) == 0) return done();
  if (errno != EWOULDBLOCK) return failed("the record cannot be locked", path, errno);
  return Error{Code::busy, "another program is writing this record", path,
               "stop that one first, or begin another record"};
}

bool exists(const std::string& path) {
  struct stat found {};
  return ::lstat(path.c_str(), &found) == 0;
}

Error exists_already(const std::string& path) {
  return {Code::refused, "there is a file of this name already", path,
          "resume it if it is this show's record, or choose another name"};
}

Done rename_new(const std::string& from, const std::string& to) {
  if (::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), RENAME_NOREPLACE) == 0) {
    return done();
  }
  if (errno == EEXIST) return exists_already(to);
  // Not every file system knows RENAME_NOREPLACE; there the check and the renaming are two steps.
  if (exists(to)) return exists_already(to);
  if (::rename(from.c_str(), to.c_str()) != 0)
    return failed("the record cannot be named", to, errno);
  return done();
}

Done copy_from(int from, std::uint64_t offset, int to, const std::string& path) {
  std::array<char, 65536> buffer{};
  while (true) {
    const ssize_t got = ::pread(from, buffer.data(), buffer.size(), static_cast<off_t>(offset));
    if (got < 0) return failed("the torn end cannot be read", path, errno);
    if (got == 0) return done();
    for (ssize_t put = 0; put < got;) {
      const ssize_t wrote = ::write(to, buffer.data() + put, static_cast<std::size_t>(got - put));
      if (wrote <= 0) return failed("the torn end cannot be kept aside", path, errno);
      put += wrote;
    }
    offset += static_cast<std::uint64_t>(got);
  }
}

std::string torn_name(const std::string& path, std::size_t number) {
  return path + ".torn-" + std::to_string(number);
}

}  // namespace

Result<std::unique_ptr<Device>> open_locked(const std::string& path) {
  Descriptor file(::open(path.c_str(), O_RDWR | O_APPEND | O_CLOEXEC));
  if (!file.ok()) return failed("the record cannot be opened", path, errno);
  if (Done locked = lock(file.get(), path); !locked) return locked.error();
  return std::unique_ptr<Device>(std::make_unique<FileDevice>(std::move(file), path));
}

Result<std::unique_ptr<Device>> create_locked(const std::string& path, std::string_view bytes,
                                              const DeviceWrap& wrap) {
  if (exists(path)) return exists_already(path);
  const std::string beside = path + ".new-" + std::to_string(::getpid());
  Descriptor file(
      ::open(beside.c_str(), O_RDWR | O_CREAT | O_TRUNC | O_APPEND | O_CLOEXEC | O_NOFOLLOW, 0644));
  if (!file.ok()) return failed("the record cannot be created", path, errno);
  if (Done locked = lock(file.get(), beside); !locked) return locked.error();
  std::unique_ptr<Device> device = std::make_unique<FileDevice>(std::move(file), path);
  if (wrap) device = wrap(std::move(device));
  Done kept = write_all(*device, bytes);
  if (kept) kept = device->sync();
  if (kept) kept = rename_new(beside, path);
  if (kept) kept = sync_folder_of(path);
  if (kept) return device;
  ::unlink(beside.c_str());
  return kept.error();
}

Done write_all(Device& device, std::string_view bytes) {
  while (!bytes.empty()) {
    const auto wrote = device.write(bytes);
    if (!wrote) return wrote.error();
    bytes.remove_prefix(*wrote);
  }
  return done();
}

Result<std::string> cut_tail(const std::string& path, std::uint64_t keep) {
  const Descriptor file(::open(path.c_str(), O_RDWR | O_CLOEXEC));
  if (!file.ok()) return failed("the record cannot be opened", path, errno);
  std::size_t number = 1;
  while (exists(torn_name(path, number))) ++number;
  const std::string aside = torn_name(path, number);
  const Descriptor torn(::open(aside.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0644));
  if (!torn.ok()) return failed("the torn end cannot be kept aside", aside, errno);
  if (Done copied = copy_from(file.get(), keep, torn.get(), aside); !copied) return copied.error();
  if (::fsync(torn.get()) != 0) return failed("the torn end cannot be kept aside", aside, errno);
  if (Done synced = sync_folder_of(path); !synced) return synced.error();
  if (::ftruncate(file.get(), static_cast<off_t>(keep)) != 0 || ::fsync(file.get()) != 0) {
    return failed("the torn end cannot be cut off", path, errno);
  }
  return fs::path(aside).filename().string();
}

std::vector<std::string> torn_files(const std::string& path) {
  std::vector<std::string> names;
  for (std::size_t number = 1; exists(torn_name(path, number)); ++number) {
    names.push_back(fs::path(torn_name(path, number)).filename().string());
  }
  return names;
}

}  // namespace walkdown::record
