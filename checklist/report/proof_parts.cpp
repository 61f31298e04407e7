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
<li>In the folder of walkdown's source, with both files put into it:<br>
<code>sh tests/independent/openssl_stamp.sh {0} AUTHORITY.pem</code><br>
It takes the request, the answer and the stamped head out of entry {1}, has <code>openssl ts -verify</code> check them,
and must say OK of both. By hand: those are <code>request</code>, <code>response</code> (both base64) and
<code>note</code> of the entry's body, written to <code>head.tsq</code>, <code>head.tsr</code> and <code>head.note</code>;
then this must say OK, and the second shows the time:<br>
<code>openssl ts -verify -data head.note -in head.tsr -CAfile AUTHORITY.pem</code><br>
<code>openssl ts -reply -in head.tsr -text</code></li>
<li>Or, with walkdown, which says whose each time-stamp is, and that the stamped head is one of this record:<br>
<code>walkdown verify {0} --authorities AUTHORITY.pem</code></li>
</ol>
)",
           esc(shell_word(page.model.file)), stamps.front().n);
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
  const std::string file = esc(shell_word(model.file));
  page.section("How to check this record");
  page.add(R"(<h3>With walkdown</h3><ol>
<li>Run<br><code>walkdown verify {0}</code><br>
It must say that the record holds, with {1} entries and the mark {2}.</li>
<li>Compare the mark with the one on the paper that was kept, or let the program do it:<br>
<code>walkdown verify {0} --mark "MARK"</code><br>
A mark that was written down before the record was closed, as on a permit before the show, is that of an earlier moment:
the program says of which one, and such a mark shows nothing of what came after it. Only this step finds a day that was
written anew; an end that was cut and closed again, only the mark of the whole record.</li>
<li>Ask the people for their public keys, one a line in a file, and run<br>
<code>walkdown verify {0} --keys FILE</code><br>
Names are as good as that list.</li>
<li>Where two files claim to be this record, this shows where they part:<br>
<code>walkdown verify A --against B</code></li>
</ol>)",
           file, model.check.entries, esc(model.check.mark));
  page.add(R"(<h3>Without walkdown</h3>
<p>In the folder of walkdown's source, with <code>{0}</code> put into it; needed are <code>python3</code> with its package
<code>cryptography</code>, and <code>openssl</code>.</p><ol>
<li>The record is a text file; its form is written down in <code>checklist/record/FORMAT.md</code> of the source, and
is enough to write a checker of one's own.</li>
<li>One such checker, in another language, sharing no line with the program:<br>
<code>python3 tests/independent/verify_record.py {0}</code><br>
It must print that <code>"holds"</code> is <code>true</code>, and the same entries and mark as above. It takes
<code>--mark</code> and <code>--keys</code> too.</li>
<li>The stock <code>openssl</code> command checks any one signature; here the last checkpoint's and the last
sign-off's:<br>
<code>sh tests/independent/openssl_check.sh {0}</code><br>
It must print <code>Signature Verified Successfully</code> for each.</li>
<li>The mark by hand: it is the beginning of the root in the last line of the file.<br>
<code>tail -n 1 {0} | grep -oE '[A-Za-z0-9+/]{{43}}=' | head -n 1 | base64 -d | od -An -tx1 -N8</code><br>
It must print the 16 digits of the mark.</li>
</ol>
)",
           file);
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
