// SPDX-License-Identifier: Apache-2.0
#include "reader/plan/igniter_file.h"

#include "reader/plan/toml_file.h"

namespace walkdown::plan {
namespace {

constexpr double kTinyOhm = 1e-4;
constexpr double kMostOhm = 1e5;
constexpr double kTinyA = 1e-6;
constexpr double kMostA = 1000;

void check_order(TomlFile& file, const toml::table& table, const Igniter& igniter) {
  if (igniter.no_fire_a && igniter.all_fire_a && *igniter.no_fire_a > *igniter.all_fire_a) {
    file.wrong(table, igniter.name, "no_fire_a is above all_fire_a; look at the data sheet again");
  }
  if (igniter.test_max_a && igniter.no_fire_a && *igniter.test_max_a > *igniter.no_fire_a) {
    file.wrong(table, igniter.name, "test_max_a is above no_fire_a; look at the data sheet again");
  }
}

Igniter igniter_from(TomlFile& file, const std::string& name, const toml::table& table) {
  Igniter igniter;
  igniter.name = name;
  file.near_misses(
      table, {"bridge_ohm", "source", "all_fire_a", "no_fire_a", "test_max_a", "fitted_lead_ohm"});
  if (const auto bridge = file.interval(table, "bridge_ohm", kTinyOhm, kMostOhm)) {
    igniter.bridge_ohm = *bridge;
  } else if (!table.contains("bridge_ohm")) {
    file.wrong(table, name, "give bridge_ohm = [least, most] in ohm");
  }
  igniter.source = file.text(table, "source").value_or("no source given");
  igniter.all_fire_a = file.number(table, "all_fire_a", kTinyA, kMostA);
  igniter.no_fire_a = file.number(table, "no_fire_a", kTinyA, kMostA);
  igniter.test_max_a = file.number(table, "test_max_a", kTinyA, kMostA);
  igniter.fitted_lead_ohm =
      file.interval(table, "fitted_lead_ohm", 0, kMostOhm).value_or(Interval{0, 0});
  check_order(file, table, igniter);
  return igniter;
}

Wire wire_from(TomlFile& file, const std::string& name, const toml::table& table) {
  Wire wire;
  wire.name = name;
  file.near_misses(table, {"ohm_per_km", "alpha_per_k", "source"});
  if (const auto ohm = file.interval(table, "ohm_per_km", kTinyOhm, kMostOhm)) {
    wire.ohm_per_km = *ohm;
  } else if (!table.contains("ohm_per_km")) {
    file.wrong(table, name, "give ohm_per_km = [least, most] of one conductor");
  }
  wire.alpha_per_k = file.number(table, "alpha_per_k", -0.01, 0.02).value_or(wire.alpha_per_k);
  wire.source = file.text(table, "source").value_or("no source given");
  return wire;
}

void take_wiring(TomlFile& file, Wiring& wiring) {
  const toml::node* node = file.root().get("wiring");
  if (node == nullptr) return;
  const toml::table* table = node->as_table();
  if (table == nullptr) {
    file.wrong(*node, "wiring", "write a table [wiring]");
    return;
  }
  file.near_misses(*table, {"lead_tol_pct", "contact_ohm", "temp_c", "temp_tol_k"});
  wiring.lead_tol_pct = file.number(*table, "lead_tol_pct", 0, 50).value_or(wiring.lead_tol_pct);
  wiring.contact_ohm = file.interval(*table, "contact_ohm", 0, 100).value_or(wiring.contact_ohm);
  wiring.temp_c = file.number(*table, "temp_c", -60, 80).value_or(wiring.temp_c);
  wiring.temp_tol_k = file.number(*table, "temp_tol_k", 0, 60).value_or(wiring.temp_tol_k);
}

void take_supply(TomlFile& file, std::optional<Supply>& out) {
  const toml::node* node = file.root().get("supply");
  if (node == nullptr) return;
  const toml::table* table = node->as_table();
  if (table == nullptr) {
    file.wrong(*node, "supply", "write a table [supply]");
    return;
  }
  file.near_misses(*table, {"volt", "source_ohm", "margin", "source"});
  Supply supply;
  if (const auto volt = file.interval(*table, "volt", 0.1, 10000)) {
    supply.volt = *volt;
  } else if (!table->contains("volt")) {
    file.wrong(*table, "volt", "give volt = [least, most] under load");
  }
  if (const auto ohm = file.number(*table, "source_ohm", 0, kMostOhm)) {
    supply.source_ohm = *ohm;
  } else if (!table->contains("source_ohm")) {
    file.wrong(*table, "source_ohm", "give source_ohm of the source and its cable; 0 if none");
  }
  supply.margin = file.number(*table, "margin", 1, 20).value_or(supply.margin);
  supply.source = file.text(*table, "source").value_or("no source given");
  out = supply;
}

}  // namespace

Result<Catalogue> read_igniters(std::string_view toml, std::string_view file_name) {
  TomlFile file(toml, file_name);
  Catalogue catalogue;
  if (file.good()) {
    file.near_misses(file.root(), {"igniter", "wire", "wiring", "supply"});
    for (const auto& [name, table] : file.named("igniter")) {
      catalogue.igniters.push_back(igniter_from(file, name, *table));
    }
    for (const auto& [name, table] : file.named("wire")) {
      catalogue.wires.push_back(wire_from(file, name, *table));
    }
    take_wiring(file, catalogue.wiring);
    take_supply(file, catalogue.supply);
    if (catalogue.igniters.size() > kMaxNames || catalogue.wires.size() > kMaxNames) {
      file.wrong(file.root(), "igniter",
                 "at most 65000 igniters and 65000 wires can be told apart");
    }
  }
  if (!file.good()) return file.error("cannot take the igniter file");
  return catalogue;
}

}  // namespace walkdown::plan
