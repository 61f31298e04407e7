// SPDX-License-Identifier: Apache-2.0
#include "reader/tester/ports.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include <filesystem>
#include <fstream>

namespace walkdown::tester {
namespace {

namespace fs = std::filesystem;

// A machine of files: two USB adapters, a UART, and a UART that the board does not have.
class Ports : public ::testing::Test {
 protected:
  Ports() {
    fs::remove_all(root);
    fs::create_directories(root / "by-id");
    usb("ttyUSB0", "usb-one");
    usb("ttyUSB1", "");
    tty("ttyS0", "4");
    tty("ttyS1", "0");
    fs::create_directories(root / "class/tty0");  // a console: no device behind it
  }
  ~Ports() override { fs::remove_all(root); }

  void tty(const std::string& name, const std::string& type) {
    fs::create_directories(root / "class" / name / "device");
    if (!type.empty()) std::ofstream(root / "class" / name / "type") << type << "\n";
    std::ofstream(root / name) << "";
  }
  void usb(const std::string& name, const std::string& id) {
    const fs::path interface = root / "devices" / name / "1-1.0" / "tty";
    fs::create_directories(interface);
    std::ofstream(root / "devices" / name / "product") << "adapter " << name << "\n";
    fs::create_directories(root / "class" / name);
    fs::create_directory_symlink(interface, root / "class" / name / "device");
    std::ofstream(root / name) << "";
    if (!id.empty()) fs::create_symlink(root / name, root / "by-id" / id);
  }

  fs::path root = fs::path(::testing::TempDir()) / ("ports_" + std::to_string(::getpid()));
  PortRoots roots{root.string(), (root / "by-id").string(), (root / "class").string()};
};

TEST_F(Ports, ListsWhatHasHardwareStableNamesFirst) {
  const auto ports = list_ports(roots);
  ASSERT_EQ(ports.size(), 3U);
  EXPECT_EQ(ports[0].path, (root / "ttyUSB0").string());
  EXPECT_EQ(ports[0].by_id, (root / "by-id/usb-one").string());
  EXPECT_EQ(ports[0].device, "adapter ttyUSB0");
  EXPECT_EQ(ports[1].path, (root / "ttyS0").string());
  EXPECT_EQ(ports[2].path, (root / "ttyUSB1").string());
  EXPECT_EQ(ports[2].by_id, "");
}

TEST_F(Ports, FindsTheStableNameFromEitherName) {
  const std::string by_id = (root / "by-id").string();
  EXPECT_EQ(stable_name((root / "ttyUSB0").string(), by_id), (root / "by-id/usb-one").string());
  EXPECT_EQ(stable_name((root / "by-id/usb-one").string(), by_id),
            (root / "by-id/usb-one").string());
  EXPECT_EQ(stable_name((root / "ttyUSB1").string(), by_id), "");
  EXPECT_EQ(stable_name("/no/such", by_id), "");
  EXPECT_EQ(stable_name((root / "ttyUSB0").string(), "/no/such"), "");
}

TEST_F(Ports, AMachineWithoutPortsHasNone) {
  EXPECT_TRUE(list_ports({"/none", "/none", "/none"}).empty());
}

}  // namespace
}  // namespace walkdown::tester
