// SPDX-License-Identifier: Apache-2.0
// Signatures, how to check them, and what they prove.
#include "checklist/report/page.h"

namespace walkdown::report {
namespace {

void people(Page& page) {
  std::vector<std::vector<std::string>> rows;
  for (const Person& each : page.model.people) {
    std::string roles;
    for (const std::string& role : each.roles) roles += (roles.empty() ? "" : ", ") + role;
    rows.push_back(
        {Page::entry(each.n), esc(each.name), esc(roles), "<code>" + esc(each.vkey) + "</code>"});
  }
  page.table({"entry", "name", "roles", "public key"}, rows, "log");
  page.add("<p>The station: <code>{}</code></p>\n", esc(page.model.station));
  const auto& unknown = page.model.check.unknown_keys;
  if (unknown.empty()) {
    page.text("All of these keys were on the list of known keys that this report was made with.");
  } else {
    page.add(
        "<p>{} of these keys were on no list of known keys when this report was made: their names "
        "are "
        "taken on trust, until somebody who knows the people compares the keys.</p>\n",
        unknown.size());
  }
}

// Facts that say in whole numbers what the sentence says in words, or that nobody reads: the boot
// clock.
bool is_for_machines(std::string_view name) {
  return name == "asked-up-ms" || name == "utc-offset-min" || name == "milli" ||
         name == "period-ms" || name.ends_with("-mm-per-s");
}

// What was signed besides the sentence.
std::string fact_list(const Page& page, const SignedBy& by) {
  std::string facts;
  for (const auto& [name, value] : by.facts) {
    if (is_for_machines(name)) continue;
    const bool time = name == "show-at-ms" && page.model.show_at_ms &&
                      value == std::to_string(*page.model.show_at_ms);
    facts += fmt::format("{}{}: {}", facts.empty() ? "" : "; ", esc(time ? "show-at" : name),
                         time ? page.times.full(*page.model.show_at_ms) : esc(value));
  }
  return facts;
}

void signatures(Page& page) {
  std::vector<std::vector<std::string>> rows;
  for (const SignedBy& each : page.model.signatures) {
    std::string facts = fact_list(page, each);
    rows.push_back({Page::entry(each.n), page.times.full(each.at_ms), esc(each.person),
                    esc(each.role),
                    esc(each.statement) + (facts.empty() ? "" : " &mdash; " + facts)});
  }
  if (rows.empty()) return page.text("Nobody signed anything in this record.");
  page.table({"entry", "time", "who", "as", "states"}, rows, "log signs");
}

// Only where there is one: the steps are of no use otherwise.
void stamp_steps(Page& page) {
  const auto& stamps = page.model.check.stamps;
  if (stamps.empty()) return;
  page.add(R"(<h3>The time-stamp, with openssl</h3><ol>
<li>Ask the authority itself for its certificate (a PEM file, here <code>AUTHORITY.pem</code>): one that comes with this
record proves nothing.</li>
<li><code>tests/independent/openssl_stamp.sh {0} AUTHORITY.pem</code> takes the request, the answer and the stamped head out
of entry {1} and has <code>openssl ts -verify</code> check them. By hand: those are <code>request</code>,
<code>response</code> (both base64) and <code>note</code> of the entry's body, written to <code>head.tsq</code>,
<code>head.tsr</code> and <code>head.note</code>; then
<code>openssl ts -verify -data head.note -in head.tsr -CAfile AUTHORITY.pem</code> must say OK, and
<code>openssl ts -reply -in head.tsr -text</code> shows the time.</li>
<li>Or <code>walkdown verify {0} --authorities AUTHORITY.pem</code>: it says whose each time-stamp is, and that the stamped
head is one of this record.</li>
</ol>
)",
           esc(page.model.file), stamps.front().n);
}

}  // namespace

void signatures_part(Page& page) {
  page.section("Signatures");
  people(page);
  page.out += "<h3>Sign-offs</h3>\n";
  signatures(page);
  page.out += "<h3>From outside</h3>\n";
  page.lines(page.model.outside,
             "No witness and no time-stamp authority has countersigned this record.");
  if (!page.model.check.remarks.empty()) {
    page.out += "<h3>To be known besides</h3>\n<ul>\n";
    for (const std::string& remark : page.model.check.remarks)
      page.add("<li>{}</li>\n", esc(remark));
    page.out += "</ul>\n";
  }
  page.end_section();
}

void verify_part(Page& page) {
  const Model& model = page.model;
  page.section("How to check this record");
  page.add(R"(<h3>With walkdown</h3><ol>
<li>Run <code>walkdown verify {0}</code>. It must say that the record holds, with {1} entries and the mark {2}.</li>
<li>Compare the mark with the one on the paper that was kept before the show, or let the program do it:
<code>walkdown verify {0} --mark "&lt;mark from the paper&gt;"</code>. A mark noted earlier in the day is that of an
earlier state; the paper must say at which entry it was taken. Only this step finds a day that was written anew,
or an end that was cut and closed again.</li>
<li>Ask the people for their public keys, one a line in a file, and add <code>--keys FILE</code>: names are as good as
that list.</li>
<li>Where two files claim to be this record: <code>walkdown verify A --against B</code> shows where they part.</li>
</ol>)",
           esc(model.file), model.check.entries, esc(model.check.mark));
  page.out += R"(<h3>Without walkdown</h3><ol>
<li>The record is a text file; its form is written down in <code>checklist/record/FORMAT.md</code> of the source, and
is enough to write a checker of one's own.</li>
<li>One such checker is <code>tests/independent/verify_record.py</code>, in another language, sharing no line with the
program: <code>python3 verify_record.py RECORD --mark "..."</code>.</li>
<li>Any one signature can be checked with the stock <code>openssl</code> command;
<code>tests/independent/openssl_check.sh</code> shows how.</li>
<li>The first 16 hexadecimal digits of the last root are the mark: compare with the paper.</li>
</ol>
)";
  stamp_steps(page);
  page.out += R"(<h3>What the signatures prove, and what they do not</h3><ul>
<li>The station's signatures prove that these entries, in this order, were written by whoever holds the station's
key, and that none was changed, dropped or moved afterwards by anybody else.</li>
<li>A person's sign-off proves that whoever holds that person's key stated this sentence about this state of the
record. It does not prove that the person looked, or that the statement is true.</li>
<li>Times are those of the station's clock. A witness's countersignature, or a time-stamp, bounds them from
outside.</li>
<li>Who holds the station's key could write the whole day anew, without the people's sign-offs. The mark on paper, a
witness and a time-stamp are what shows that.</li>
</ul>
<div class="caution"><b>Cautions.</b> This report tells what was read, seen and signed. It gives no leave to arm, to fire
or to approach, and no reading says that a pin cannot fire. An igniter that reads as planned may still fail, and one that
reads open may still be live. Local law, the authority's permit and the makers' sheets go before anything said here.</div>
)";
  page.end_section();
}

}  // namespace walkdown::report
