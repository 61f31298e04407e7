// SPDX-License-Identifier: Apache-2.0
#include "gui/look/sentences.h"

#include <gtest/gtest.h>

#include <QCoreApplication>
#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

#include "gui/look/language.h"
#include "gui/look/words.h"
#include "reader/match/say.h"

namespace walkdown::gui {
namespace {

// Says it in one language for as long as it lives.
class Speaking {
 public:
  explicit Speaking(const QString& language) {
    loaded_ = load_language(translator_, {language}, WALKDOWN_QM);
    QCoreApplication::installTranslator(&translator_);
  }
  [[nodiscard]] bool loaded() const { return loaded_; }

 private:
  Translator translator_;  // Qt forgets one that goes
  bool loaded_ = false;
};

QString with_values(QString text) {
  for (int value = 1; value < 10; ++value) {
    text.replace(QStringLiteral("%%1").arg(value), QStringLiteral("V%1").arg(value));
  }
  return text;
}

TEST(Sentences, StandAsTheyAreWithoutALanguage) {
  for (const Sentence& each : sentences()) {
    const QString said = with_values(q(each.text));
    EXPECT_EQ(translated(said.toStdString()), said);
    EXPECT_EQ(is_known(said.toStdString()), !each.inside) << each.text;
  }
}

// Also that no sentence is taken for another one.
TEST(Sentences, KeepTheirValuesInEveryLanguage) {
  for (const char* language : {"de", "fr", "es"}) {
    const Speaking speaking(QString::fromLatin1(language));
    ASSERT_TRUE(speaking.loaded());
    for (const Sentence& each : sentences()) {
      if (each.inside) continue;
      EXPECT_EQ(translated(with_values(q(each.text)).toStdString()),
                with_values(QCoreApplication::translate("Sentences", each.text)))
          << language << ": " << each.text;
    }
  }
}

QString everything_said() {
  QString all;
  for (const char* part : {"/reader", "/checklist", "/gui/new_show"}) {
    QDirIterator files(QStringLiteral(WALKDOWN_SOURCES) + QLatin1String(part), {"*.cpp"},
                       QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
      QFile file(files.next());
      if (file.open(QIODevice::ReadOnly)) all += QString::fromUtf8(file.readAll());
    }
  }
  static const QRegularExpression broken_line(QStringLiteral("\"\\s*\\n\\s*\""));
  return all.remove(broken_line).replace(QStringLiteral("\\\""), QStringLiteral("\""));
}

// A sentence changed where it is made would be shown in English from then on.
TEST(Sentences, AreThoseThatTheProgramSays) {
  const QString all = everything_said();
  ASSERT_GT(all.size(), 100'000);
  static const QRegularExpression cut(QStringLiteral("%\\d|[:;,()\"]"));
  int put_together = 0;
  for (const Sentence& each : sentences()) {
    for (const QString& piece : q(each.text).split(cut)) {
      if (all.contains(piece.trimmed())) continue;
      ++put_together;
      for (const QString& word : piece.trimmed().split(QChar(' '))) {
        EXPECT_TRUE(all.contains(word)) << each.text;
      }
    }
  }
  EXPECT_LE(put_together, 25) << "most are written in one piece";
}

TEST(Sentences, OfEveryFindingAreKnown) {
  const std::vector<plan::PinId> pins = {{3, 1, 4}, {3, 1, 9}, {3, 2, 1}, {5, 1, 2}};
  for (std::size_t kind = 0; kind < match::kKinds; ++kind) {
    const auto k = static_cast<match::Kind>(kind);
    for (const int by : {-2, -1, 1, 2}) {
      match::Finding finding;
      finding.kind = k;
      finding.pins = pins;
      finding.say = match::sentence(k, pins, by);
      EXPECT_TRUE(is_known(finding.say)) << finding.say;
      EXPECT_TRUE(is_known(match::deciding_look(k, pins, by)));
      const std::string thing = match::as_thing(k, pins, by);
      EXPECT_TRUE(is_known(thing) || thing.find(" exchanged") != std::string::npos) << thing;
      finding.runner_up = match::RunnerUp{match::Kind::swapped, pins, 0, 0.25};
      EXPECT_TRUE(is_known(match::with_doubt(finding)));
    }
  }
}

TEST(Sentences, AreSaidInTheLanguageWithWhatStandsInThem) {
  const Speaking speaking(QStringLiteral("de"));
  ASSERT_TRUE(speaking.loaded());
  EXPECT_EQ(translated("Unplug rail 3 of module 8 and turn it round; then read it again."),
            "Schiene 3 von Modul 8 ausstecken und umdrehen; dann neu messen.");
  EXPECT_EQ(translated("Exchange the leads on pin 4 of rail 1, module 3 and pin 9 of rail 1, "
                       "module 3; then read both again; or it is, at 25 %, a leak: to decide, see "
                       "whether a splice on pin 4 of rail 1, module 3 is wet."),
            QString::fromUtf8(
                "Die Leitungen an Stift 4 auf Schiene 1, Modul 3 und Stift 9 auf Schiene 1, Modul "
                "3 tauschen; dann beide neu messen; oder es ist, mit 25 %: ein Nebenschluss. Um zu "
                "entscheiden: sehen, ob eine Verbindung an Stift 4 auf Schiene 1, Modul 3 nass "
                "ist."));
  EXPECT_EQ(translated("the field reads: 346 fits, 26 doubtful, 1 open"),
            "Befund des Feldes: 346 passt, 26 zweifelhaft, 1 offen");
  EXPECT_EQ(translated("of 12 planned pins 3 are unread, 2 do not fit (M01/R1/P05 short, "
                       "M01/R1/P06 open)"),
            "von 12 geplanten Stiften: 3 ungelesen, 2 passen nicht (M01/R1/P05 kurzgeschlossen, "
            "M01/R1/P06 offen)");
  EXPECT_EQ(translated("Mara Linde called a hold: a dog inside the line"),
            "Mara Linde rief einen Halt: a dog inside the line");
  EXPECT_EQ(
      translated("plan.csv, row 12, column lead_m, '7x': write the one-way length in metres, from "
                 "0 to 10000, as 12.5."),
      "plan.csv, Zeile 12, Spalte lead_m, '7x': die einfache L\u00e4nge in Metern schreiben, von 0 "
      "bis "
      "10000, wie 12.5.");
  EXPECT_EQ(translated("the record does not verify: one of the lines 145 to 979 was changed after "
                       "it was sealed"),
            QString::fromUtf8("die Prüfung des Protokolls schlägt fehl: eine der Zeilen 145 bis "
                              "979 wurde nach dem Versiegeln verändert"));
  EXPECT_EQ(translated(Error{Code::bad_input, "the file is empty",
                             "a line, line 4 of it.record, "
                             "line 12",
                             ""}),
            "die Datei ist leer: a line, line 4 of it.record, Zeile 12.");
  EXPECT_EQ(translated("as planned"), "as planned") << "somebody's own words stay";
  EXPECT_EQ(translated(Error{Code::refused, "a hold is lifted with a reason", {}, "write why"}),
            QString::fromUtf8("ein Halt wird mit einem Grund aufgehoben; schreiben, warum."));
  EXPECT_EQ(translated(Error{Code::io, "no such sentence", "show.csv", ""}),
            "no such sentence: show.csv.");
}

}  // namespace
}  // namespace walkdown::gui
