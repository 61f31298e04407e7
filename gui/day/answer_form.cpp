// SPDX-License-Identifier: Apache-2.0
#include "gui/day/answer_form.h"

#include <QFileInfo>
#include <QRadioButton>
#include <QVBoxLayout>
#include <utility>

#include "checklist/desk/acts.h"
#include "gui/day/answer_words.h"
#include "gui/day/file_hash.h"
#include "gui/look/words.h"
#include "gui/parts/ask_file.h"
#include "gui/parts/pieces.h"

namespace walkdown::gui {

AnswerForm::AnswerForm(day::Item item, std::int64_t asked_up_ms, QWidget* parent)
    : QWidget(parent), item_(std::move(item)), asked_up_ms_(asked_up_ms) {
  auto* layout = new QVBoxLayout(this);
  layout->setContentsMargins(0, 0, 0, 0);
  if (item_.kind == day::Kind::wind) {
    add_wind();
  } else if (!item_.choices.empty()) {
    add_choices();
  } else if (item_.kind == day::Kind::number) {
    const QString limits = limits_words(item_);
    add_line(limits.isEmpty() ? tr("Value in %1").arg(q(item_.unit))
                              : tr("Value in %1 (%2)").arg(q(item_.unit), limits),
             line_);
  } else if (item_.kind == day::Kind::file) {
    add_file();
  } else if (item_.kind == day::Kind::text) {
    add_line(tr("What you heard or saw, in words"), line_);
  }
}

void AnswerForm::add_choices() {
  choices_ = new QButtonGroup(this);
  for (std::size_t i = 0; i < item_.choices.size(); ++i) {
    auto* choice = new QRadioButton(q(item_.choices[i]));
    choice->setAccessibleName(choice->text());
    choices_->addButton(choice, static_cast<int>(i));
    layout()->addWidget(choice);
  }
}

void AnswerForm::add_line(const QString& name, QLineEdit*& line) {
  layout()->addWidget(quiet_label(name));
  line = new QLineEdit;
  line->setAccessibleName(name);
  layout()->addWidget(line);
}

void AnswerForm::add_file() {
  add_line(tr("File: a photo or the permit itself"), line_);
  layout()->addWidget(button(tr("Choose the file \u2026"), [this] {
    const QString path = ask_to_open(this, tr("Choose the file"));
    if (!path.isEmpty()) line_->setText(path);
  }));
}

void AnswerForm::add_wind() {
  add_line(tr("Mean over %1 min, in m/s").arg(item_.period_ms / 60'000), mean_);
  add_line(tr("Gust, the highest 3 s mean, in m/s"), gust_);
  layout()->addWidget(quiet_label(limits_words(item_)));
}

std::optional<day::Said> AnswerForm::said(QString& why) const {
  day::Said out;
  if (choices_ != nullptr) {
    if (choices_->checkedId() < 0) {
      why = tr("Choose what was seen.");
      return std::nullopt;
    }
    out.value = item_.choices.at(static_cast<std::size_t>(choices_->checkedId()));
    return out;
  }
  const QString text = line_ != nullptr ? line_->text().trimmed() : QString();
  if (text.isEmpty()) {
    why = tr("Say what was seen.");
    return std::nullopt;
  }
  if (item_.kind != day::Kind::number) {
    out.value = text.toStdString();
    return out;
  }
  out.milli = milli_from(text);
  if (out.milli) return out;
  why = tr("'%1' is not a number.").arg(text);
  return std::nullopt;
}

std::optional<Deed> AnswerForm::wind_deed(QString& why) const {
  const auto mean = milli_from(mean_->text());
  const auto gust = milli_from(gust_->text());
  if (!mean || !gust || *mean < 0 || *gust < 0) {
    why = tr("Mean and gust are numbers in m/s.");
    return std::nullopt;
  }
  const day::WindValue wind{*mean, *gust, item_.period_ms};
  return [wind](desk::Desk& desk, const desk::Signer& signer, const std::string&) {
    return desk::hand_wind(desk, signer, wind);
  };
}

std::optional<Deed> AnswerForm::deed(QString& why) const {
  if (item_.kind == day::Kind::wind) return wind_deed(why);
  const auto seen = said(why);
  if (!seen) return std::nullopt;
  const bool file = item_.kind == day::Kind::file;
  return
      [id = item_.id, what = *seen, at = asked_up_ms_, file](
          desk::Desk& desk, const desk::Signer& signer, const std::string&) mutable -> desk::Entry {
        if (file) {
          const auto hash = sha256_of_file(*what.value);
          if (!hash) return hash.error();
          what.sha256 = *hash;
          what.value = QFileInfo(q(*what.value)).fileName().toStdString();
        }
        return desk::answer(desk, signer, id, what, at);
      };
}

QString AnswerForm::words() const {
  if (item_.kind == day::Kind::wind) {
    return tr("mean %1 m/s, gust %2 m/s").arg(mean_->text(), gust_->text());
  }
  if (choices_ != nullptr && choices_->checkedButton() != nullptr) {
    return choices_->checkedButton()->text();
  }
  if (line_ == nullptr) return {};
  return item_.unit.empty() ? line_->text() : line_->text() + QChar(' ') + q(item_.unit);
}

}  // namespace walkdown::gui
