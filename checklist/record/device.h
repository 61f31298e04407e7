// SPDX-License-Identifier: Apache-2.0
// Where the record's bytes go: the seam at which tests fill the disk, cut a write, or break a sync.
#pragma once

#include <cstdint>
#include <functional>
#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "reader/result.h"

namespace walkdown::record {

class Device {
 public:
  Device() = default;
  Device(const Device&) = delete;
  Device& operator=(const Device&) = delete;
  Device(Device&&) = delete;
  Device& operator=(Device&&) = delete;
  virtual ~Device() = default;
  // Appends some of the bytes, at least one; returns how many. io when it cannot.
  virtual Result<std::size_t> write(std::string_view bytes) = 0;
  // Returns once all that was written is on the medium. io when it is not known to be.
  virtual Done sync() = 0;
};

// Wraps the device that a Writer opened; the identity where empty.
using DeviceWrap = std::function<std::unique_ptr<Device>(std::unique_ptr<Device>)>;

// A file that exists, opened for appending and locked against a second writer for as long as the
// device lives. busy when another has it.
[[nodiscard]] Result<std::unique_ptr<Device>> open_locked(const std::string& path);

// Puts a new file at `path` with these bytes, all or nothing: written and synced beside it, then
// renamed, and the folder synced. refused when there is one already. The file comes back locked.
[[nodiscard]] Result<std::unique_ptr<Device>> create_locked(const std::string& path,
                                                            std::string_view bytes,
                                                            const DeviceWrap& wrap);

// Writes all, however little each write() takes.
Done write_all(Device& device, std::string_view bytes);

// Cuts the file to its first `keep` bytes after copying the rest to a new file `<path>.torn-<n>`,
// n the first free from 1 up; both are synced. Returns the name of that file without its folder.
[[nodiscard]] Result<std::string> cut_tail(const std::string& path, std::uint64_t keep);

// The files `<path>.torn-1`, -2, ... that are there, without their folder.
[[nodiscard]] std::vector<std::string> torn_files(const std::string& path);

}  // namespace walkdown::record
