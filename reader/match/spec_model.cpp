// SPDX-License-Identifier: Apache-2.0
#include "reader/match/spec_model.h"

#include <algorithm>
#include <cmath>

namespace walkdown::match {
namespace {

constexpr double kLeastLead = 1e-3;  // ohm: less is no lead

}  // namespace

SizeLogs::SizeLogs(const Sizes& size)
    : joint(std::log(size.joint_hi_ohm / size.joint_lo_ohm)),
      leak(std::log(size.leak_hi_ohm / size.leak_lo_ohm)),
      lead_short(std::log(size.lead_short_hi / size.lead_short_lo)),
      lead_long(std::log(size.lead_long_hi / size.lead_long_lo)) {}

SpecModel::SpecModel(const SpecTable& table, const Spec& spec, const Shared& shared,
                     const Priors& priors, const SizeLogs& ln, double noise)
    : table_(table),
      shared_(shared),
      priors_(priors),
      ln_(ln),
      keep_(1 - spec.faults),
      sound_(spec.sound, noise),
      base_(spec.sound.mean),
      width_(std::sqrt(12 * (spec.sound.variance() + noise))) {
  loads(spec, noise);
  lead(spec, noise);
}

void SpecModel::instead(Cause cause, double rate, const Shape& load, const Spec& spec,
                        double noise) {
  if (rate <= 0) return;
  Spec shown;
  shown.lead_ohm = spec.lead_shown;
  shown.lead_box = spec.lead_box;
  Shape whole = whole_shape(load, shown, table_.contact_ohm);
  whole.mean = shared_.shown(whole.mean);
  whole.rest += spec.shared_var;
  instead_.push_back({cause, rate, Ready(whole, noise)});
}

void SpecModel::loads(const Spec& spec, double noise) {
  const LoadKind& kind = table_.kinds[spec.kind];
  const LoadRates& rate = priors_.load;
  instead_.reserve(1 + kind.extra.size() + kind.others.size());
  if (kind.can_miss) instead(Cause::missing, rate.missing, kind.missing, spec, noise);
  for (const Shape& more : kind.extra) {
    instead(Cause::extra, rate.extra / static_cast<double>(kind.extra.size()), more, spec, noise);
  }
  for (const LoadKind::Other& other : kind.others) {
    instead(Cause::wrong_igniter, rate.wrong_igniter * other.share, other.shape, spec, noise);
  }
}

void SpecModel::lead(const Spec& spec, double noise) {
  const double contact = table_.contact_ohm.hi - table_.contact_ohm.lo;
  const double fixed = shared_.shown(table_.contact_ohm.mid());
  lead_ = (1 + shared_.gain) * spec.lead_shown;
  Shape end;  // a shunt at the far end: lead and contacts
  end.mean = fixed + lead_;
  end.rest = spec.shared_var;
  add_box(end, spec.lead_box);
  add_box(end, contact);
  Shape along;  // a short anywhere along the lead
  along.mean = fixed + lead_ / 2;
  along.rest = spec.shared_var;
  add_box(along, spec.lead_shown);
  add_box(along, contact);
  end_ = Ready(end, noise);
  along_ = Ready(along, noise);
  short_below_ = std::max(end_.mean() + end_.reach(), along_.mean() + along_.reach());
  has_lead_ = spec.lead_shown >= kLeastLead;
  const Shape& sound = table_.kinds[spec.kind].sound;
  rest_ = shared_.shown(sound.mean + table_.contact_ohm.mid());
  rest_width_ = std::sqrt(12 * (sound.variance() + contact * contact / 12 + spec.shared_var +
                                spec.lead_box * spec.lead_box / 12 + noise));
}

void SpecModel::faults(double y, Weights& w) const {
  const LoadRates& rate = priors_.load;
  const Sizes& size = priors_.size;
  for (const Instead& other : instead_) at(w, other.cause) += other.rate * other.load.at(y);
  at(w, Cause::poor_joint) = rate.poor_joint * added_density(y, base_, width_, size.joint_lo_ohm,
                                                             size.joint_hi_ohm, ln_.joint);
  at(w, Cause::leak) =
      rate.leak * shunted_density(y, base_, width_, size.leak_lo_ohm, size.leak_hi_ohm, ln_.leak);
  if (y < short_below_) {
    at(w, Cause::shorted) =
        rate.shorted * (size.short_far_end * end_.at(y) + (1 - size.short_far_end) * along_.at(y));
  }
  if (!has_lead_) return;
  at(w, Cause::wrong_lead) = rate.wrong_lead / 2 *
                             (added_density(y, rest_, rest_width_, size.lead_short_lo * lead_,
                                            size.lead_short_hi * lead_, ln_.lead_short) +
                              added_density(y, rest_, rest_width_, size.lead_long_lo * lead_,
                                            size.lead_long_hi * lead_, ln_.lead_long));
}

}  // namespace walkdown::match
