// SPDX-License-Identifier: Apache-2.0
#include "checklist/cli/demo_files.h"

#include <cerrno>
#include <cstdlib>
#include <filesystem>
#include <system_error>

#include "checklist/cli/files.h"
#include "templates/embedded.h"

namespace walkdown::cli {
namespace {

namespace fs = std::filesystem;

Result<std::string> fresh_folder() {
  std::error_code error;
  const fs::path base = fs::temp_directory_path(error);
  std::string pattern = (error ? fs::path("/tmp") : base) / "walkdown-demo-XXXXXX";
  if (mkdtemp(pattern.data()) == nullptr) {
    return Error{Code::io, "no folder could be made for the demo", pattern,
                 "name one with --dir (" + std::generic_category().message(errno) + ")"};
  }
  return pattern;
}

Result<std::string> put(const std::string& folder, const char* name, const char* from) {
  const auto text = templates::text(from);
  if (!text) return Error{Code::io, "the program was built without its template", from, ""};
  const std::string path = fs::path(folder) / name;
  if (const auto written = write_file(path, *text); !written) return written.error();
  return path;
}

struct Part {
  std::string* path;
  const char* name;
  const char* from;
};

}  // namespace

Result<DemoFiles> lay_out_demo(std::string folder) {
  DemoFiles files;
  if (folder.empty()) {
    auto fresh = fresh_folder();
    if (!fresh) return fresh.error();
    folder = std::move(fresh).value();
  }
  std::error_code error;
  fs::create_directories(folder, error);
  if (error) return Error{Code::io, "the folder cannot be made", folder, error.message()};
  files.folder = folder;
  files.record = fs::path(folder) / "demo.record";
  files.report = fs::path(folder) / "demo-report.html";
  files.station_key = fs::path(folder) / "station.key";
  if (fs::exists(files.record, error)) {
    return Error{Code::refused, "this folder holds the record of a demo already", files.record,
                 "name another folder with --dir; a record is never overwritten"};
  }
  const Part parts[] = {
      {&files.inputs.plan, "plan.csv", "demo/plan.csv"},
      {&files.inputs.igniters, "igniters.toml", "demo/igniters.toml"},
      {&files.inputs.modules, "modules.toml", "demo/modules.toml"},
      {&files.inputs.tester, "tester.toml", "demo/tester.toml"},
      {&files.site, "site.geojson", "demo/site.geojson"},
      {&files.checklist, "checklist.toml", "checklists/evening-show.toml"},
      {&files.distances, "distances.toml", "distances/radius-70ft-per-inch.toml"},
      {&files.faults, "faults.toml", "demo/faults.toml"},
  };
  for (const Part& part : parts) {
    auto path = put(folder, part.name, part.from);
    if (!path) return path.error();
    *part.path = std::move(path).value();
  }
  return files;
}

}  // namespace walkdown::cli
