// SPDX-License-Identifier: Apache-2.0
#include "gui/look/language.h"

#include <gtest/gtest.h>

#include <QFile>
#include <QRegularExpression>
#include <QXmlStreamReader>

namespace walkdown::gui {
namespace {

QStringList places(const QString& text) {
  static const QRegularExpression place(QStringLiteral("%(\\d|n)"));
  QStringList out;
  for (auto it = place.globalMatch(text); it.hasNext();) out << it.next().captured();
  out.sort();
  return out;
}

class EveryLanguage : public ::testing::TestWithParam<const char*> {};
INSTANTIATE_TEST_SUITE_P(Translations, EveryLanguage, ::testing::Values("en", "de", "fr", "es"));

TEST_P(EveryLanguage, IsCompleteAndKeepsThePlacesOfValues) {
  QFile file(QStringLiteral(WALKDOWN_TRANSLATIONS "/walkdown_%1.ts").arg(GetParam()));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  QXmlStreamReader xml(&file);
  QString source;
  int count = 0;
  while (!xml.atEnd()) {
    if (xml.readNext() != QXmlStreamReader::StartElement) continue;
    if (xml.name() == QLatin1String("source")) source = xml.readElementText();
    if (xml.name() == QLatin1String("translation")) {
      EXPECT_FALSE(xml.attributes().hasAttribute("type")) << source.toStdString();
    }
    const bool form = xml.name() == QLatin1String("numerusform");
    if (!form && xml.name() != QLatin1String("translation")) continue;
    const QString text =
        form ? xml.readElementText() : xml.readElementText(QXmlStreamReader::IncludeChildElements);
    if (!form && text.trimmed().isEmpty()) continue;  // a plural: its forms were read already
    ++count;
    if (form || !source.contains(QStringLiteral("%n"))) {
      EXPECT_EQ(places(source), places(text)) << source.toStdString();
    }
  }
  EXPECT_FALSE(xml.hasError());
  EXPECT_GE(count, 6);
}

TEST(Language, AsksWithAndWithoutNamespaces) {
  Translator german;
  ASSERT_TRUE(load_language(german, {"xx", "de-AT", "fr"}, WALKDOWN_QM));
  EXPECT_EQ(german.translate("walkdown::gui::Views", "Field", nullptr, -1), "Feld");
  EXPECT_EQ(german.translate("words", "fits", nullptr, -1), "passt");
  EXPECT_EQ(german.translate("walkdown::gui::NewShowDialog", "Plan", nullptr, -1), "Plan");
  EXPECT_EQ(german.translate("Strip", "not possible: %n reason(s)", nullptr, 1),
            QString::fromUtf8("nicht möglich: %n Grund"));
  EXPECT_TRUE(german.translate("words", "no such text", nullptr, -1).isEmpty());
}

// No language calls anything safe.
TEST_P(EveryLanguage, PromisesNothing) {
  QFile file(QStringLiteral(WALKDOWN_TRANSLATIONS "/walkdown_%1.ts").arg(GetParam()));
  ASSERT_TRUE(file.open(QIODevice::ReadOnly));
  const QString text = QString::fromUtf8(file.readAll()).toLower();
  for (const char* word : {"safe", "sicher ", "sicher<", "seguro", "sécuri", "sûr<"}) {
    EXPECT_FALSE(text.contains(QString::fromUtf8(word))) << word;
  }
}

}  // namespace
}  // namespace walkdown::gui
