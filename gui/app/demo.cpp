// SPDX-License-Identifier: Apache-2.0
#include "gui/app/demo.h"

#include <QDateTime>
#include <array>
#include <utility>

#include "checklist/cli/crew_hand.h"
#include "checklist/cli/files.h"
#include "checklist/desk/acts.h"
#include "checklist/desk/crew.h"
#include "checklist/desk/prepared.h"
#include "gui/new_show/show_draft.h"
#include "reader/trainer/faults.h"

namespace walkdown::gui {
namespace {

constexpr double kLinesPerS = 120;  // slow enough to watch
constexpr unsigned kTimes = 2;      // of each pin
constexpr std::uint64_t kSeed = 7;
constexpr std::int64_t kToShow_ms = 210LL * 60 * 1000;  // time enough for the whole checklist

struct Invented {
  const char* name;
  const char* role;
};
constexpr std::array kCrew{Invented{"Mara Linde", "lead"}, Invented{"Jon Weir", "safety"},
                           Invented{"Ines Holm", "crew"}, Invented{"Tom Aster", "spotter"}};

ShowDraft draft_of(const cli::DemoFiles& files) {
  ShowDraft draft;
  draft.path(show::Role::plan) = files.inputs.plan;
  draft.path(show::Role::site) = files.site;
  draft.path(show::Role::igniters) = files.inputs.igniters;
  draft.path(show::Role::tester) = files.inputs.tester;
  draft.path(show::Role::modules) = files.inputs.modules;
  draft.path(show::Role::checklist) = files.checklist;
  draft.path(show::Role::distances) = files.distances;
  return draft;
}

Result<trainer::Field> faulty_field(const cli::DemoFiles& files, const audit::Planned& planned) {
  const auto text = cli::read_file(files.faults);
  if (!text) return text.error();
  const auto faults = trainer::read_faults(*text, cli::base_name(files.faults));
  if (!faults) return faults.error();
  trainer::Field field(planned.plan, planned.tester.model, kSeed);
  if (const Done made = trainer::apply_faults(*faults, field); !made) return made.error();
  return field;
}

Done make_crew(const std::string& folder) {
  const desk::Crew crew(folder);
  for (const Invented& each : kCrew) {
    const auto made = crew.add(each.name, kDemoPassphrase, record::Cost::interactive);
    if (!made) return made.error();
  }
  return done();
}

}  // namespace

Demo::Demo(cli::DemoFiles files, trainer::Field field, std::unique_ptr<trainer::TesterPty> tester)
    : files_(std::move(files)), field_(std::move(field)), tester_(std::move(tester)) {}

Result<std::unique_ptr<Demo>> Demo::make(const std::string& folder) {
  auto files = cli::lay_out_demo(folder);
  if (!files) return files.error();
  const auto show = show_of(draft_of(*files));
  if (!show) return show.error();
  const auto prepared = desk::prepare(*show);
  if (!prepared.prepared) {
    return Error{Code::bad_input, "the demo's show has a mistake", prepared.errors.front(), ""};
  }
  auto field = faulty_field(*files, prepared.prepared->planned);
  if (!field) return field.error();
  auto tester = trainer::TesterPty::open(kLinesPerS);
  if (!tester) return tester.error();
  if (const Done made = make_crew(files->folder + "/crew"); !made) return made.error();
  return std::unique_ptr<Demo>(
      new Demo(std::move(files).value(), std::move(field).value(), std::move(tester).value()));
}

Places Demo::places() const { return {files_.station_key, files_.folder + "/crew"}; }

Result<desk::Desk> Demo::open(const record::Clock& clock) const {
  const auto show = show_of(draft_of(files_));
  if (!show) return show.error();
  auto desk = open_record(files_.record, *show, places(), clock);
  if (!desk) return desk.error();
  const desk::Crew crew = crew_of(places());
  for (const Invented& each : kCrew) {
    const auto member = crew.find(each.name);
    if (!member) return member.error();
    const auto wrote = desk::enrol(*desk, each.name, each.role, member->key);
    if (!wrote) return wrote.error();
  }
  auto lead = crew.load(kCrew.front().name, kDemoPassphrase);
  if (!lead) return lead.error();
  const desk::Signer signer{std::move(lead).value(), kCrew.front().name, kCrew.front().role};
  const std::int64_t show_at_ms = clock.at_ms() + kToShow_ms;
  const int offset_min = QDateTime::fromMSecsSinceEpoch(show_at_ms).offsetFromUtc() / 60;
  const auto set = desk::set_show_time(*desk, signer, show_at_ms, offset_min);
  if (!set) return set.error();
  return desk;
}

void Demo::sweep(const std::vector<plan::PinId>& pins) {
  form_.times = kTimes;
  tester_->send(trainer::sweep(field_, pins.empty() ? field_.pins() : pins, form_));
}

void Demo::mend(const match::Finding& finding) {
  const auto hands = cli::act_on(finding, field_, "Ines Holm");
  sweep(hands ? hands->read_again : finding.pins);
}

void Demo::unplug(bool out) {
  if (out) return tester_->unplug();
  static_cast<void>(tester_->replug());  // the same device again; it can only fail with the system
}

}  // namespace walkdown::gui
