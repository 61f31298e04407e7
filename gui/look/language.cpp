// SPDX-License-Identifier: Apache-2.0
#include "gui/look/language.h"

#include <QLibraryInfo>
#include <cstring>

namespace walkdown::gui {

QString Translator::translate(const char* context, const char* source, const char* disambiguation,
                              int n) const {
  const char* last = std::strrchr(context, ':');
  const QString found =
      QTranslator::translate(last == nullptr ? context : last + 1, source, disambiguation, n);
  if (!found.isEmpty()) return found;
  return QTranslator::translate("walkdown::gui", source, disambiguation, n);
}

bool load_language(Translator& translator, const QStringList& languages, const QString& folder) {
  for (const QString& language : languages) {
    const QString name = language.section(QChar('-'), 0, 0).section(QChar('_'), 0, 0);
    if (translator.load(QStringLiteral("walkdown_") + name, folder)) return true;
  }
  return translator.load(QStringLiteral("walkdown_en"), folder);
}

bool load_language_of_qt(QTranslator& translator, const QString& language) {
  return translator.load(QStringLiteral("qtbase_") + language,
                         QLibraryInfo::path(QLibraryInfo::TranslationsPath));
}

}  // namespace walkdown::gui
