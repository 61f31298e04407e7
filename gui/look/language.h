// SPDX-License-Identifier: Apache-2.0
// The window in the language of the person. Files and records stay as they are.
#pragma once

#include <QStringList>
#include <QTranslator>

namespace walkdown::gui {

// The contexts of the .ts files are class names without their namespaces, as lupdate writes them;
// the running program asks with namespaces. Text from lambdas stands under the namespace.
class Translator : public QTranslator {
 public:
  [[nodiscard]] QString translate(const char* context, const char* source,
                                  const char* disambiguation, int n) const override;
};

// The first of the languages that there is a translation for, from `folder` (":/i18n"); English
// only fills in plurals. False where none could be loaded.
bool load_language(Translator& translator, const QStringList& languages, const QString& folder);

// What Qt itself says in that language, as in the dialog to print; false where this computer does
// not have it, and then it is said in English.
bool load_language_of_qt(QTranslator& translator, const QString& language);

}  // namespace walkdown::gui
