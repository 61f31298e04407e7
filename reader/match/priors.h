// SPDX-License-Identifier: Apache-2.0
// How often each mistake is made, and how large it is when it is made: the one table behind every
// probability in this folder. The rates are judgement, common practice, no source; only their
// ratios matter. A crew that keeps count replaces a rate by (count + rate * 500) / (chances + 500).
#pragma once

namespace walkdown::match {

// Per planned load.
struct LoadRates {
  double open = 0.010;
  double poor_joint = 0.008;
  double missing = 0.006;  // counts where two or more igniters are planned
  double wrong_lead = 0.006;
  double shorted = 0.003;
  double leak = 0.003;
  double intermittent = 0.003;
  double wrong_igniter = 0.003;  // counts where the catalogue has another type
  double extra = 0.002;
  double repeated = 0.001;   // the tester sent the line before once more
  double unplanned = 0.004;  // per pin without a planned load: somebody's load is on it
};

// Per opportunity named beside each. A field in which many were made has them all raised by one
// factor, learned from that field: explain().
struct MoveRates {
  double swap = 0.002;             // load: it changed places with another, or sits on a free pin
  double shift = 0.010;            // rail
  double reversal = 0.004;         // rail
  double rail_exchange = 0.004;    // rail
  double module_exchange = 0.010;  // module

  // Where the other end of a swap is, given that there was one.
  double swap_neighbour = 0.60;
  double swap_rail = 0.25;
  double swap_module = 0.10;
  double swap_elsewhere = 0.05;
  double rails_of_one_module = 0.7;  // of exchanged rails; the rest are of two modules

  double slide_share = 0.7;  // of shifts: the loads move up until free pins have taken them in
  double by_one = 0.38;      // of shifts, each direction: by 1, by 2, and by 3 and more in all
  double by_two = 0.09;
  double by_more = 0.03;
};

// Sizes, where one goes wrong.
struct Sizes {
  double joint_lo_ohm = 0.5;  // poor joint in series, log-uniform
  double joint_hi_ohm = 20;
  double leak_lo_ohm = 5;  // leak across the load, log-uniform
  double leak_hi_ohm = 500;
  double loose_lo_ohm = 0.1;  // extra resistance of an intermittent, log-uniform
  double loose_hi_ohm = 5;
  double loose_open = 0.4;     // share of an intermittent's readings that are over range
  double short_far_end = 0.7;  // of shorts: at the igniter; the rest anywhere along the lead
  double lead_short_lo = 0.4;  // wrong lead: factor on its resistance, log-uniform on each side
  double lead_short_hi = 0.85;
  double lead_long_lo = 1.15;
  double lead_long_hi = 2.5;
};

// Over the field.
struct FieldRates {
  double offset = 0.10;           // test leads not zeroed
  double offset_scale_ohm = 0.2;  // how large, exponential; leads of a tester have 0.1 to 0.3 ohm
  double wire = 0.01;             // wire of another gauge or material throughout
  double other_igniter = 0.002;   // one wrong type throughout
};

struct Priors {
  LoadRates load;
  MoveRates move;
  Sizes size;
  FieldRates field;
  // Density per ohm left for what nobody thought of. It caps what one pin can say at about 20 nats.
  double floor_per_ohm = 1e-9;
};

}  // namespace walkdown::match
