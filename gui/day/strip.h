// SPDX-License-Identifier: Apache-2.0
// Always in sight: time to the show, the day in one word, the release, the key, the field, the
// wind, the tester, the last thing written; and the hold, which anyone may call at once.
#pragma once

#include <QBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <array>

#include "gui/day/strip_words.h"
#include "gui/look/look.h"

namespace walkdown::gui {

// A caption and its value; the value is elided where there is no room, and whole in the tool tip.
class StripField : public QFrame {
  Q_OBJECT

 public:
  // `brief`: the caption where it stands beside its value; `least_em`: width of the value in
  // heights of the text.
  StripField(const QString& caption, QString brief, int least_em, bool grows);

  // Has room for each of these, whatever its width in heights of the text.
  void make_room_for(const QStringList& words);
  void say(const Said& said);
  [[nodiscard]] QString text() const { return whole_; }
  // Whether all of it is in sight.
  [[nodiscard]] bool whole() const { return value_->text() == whole_; }
  // The same whatever the value, so that nothing moves when a value changes.
  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }
  // Caption and value beside each other: for large text.
  void set_flat(bool flat);

 protected:
  void resizeEvent(QResizeEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void fit();

  [[nodiscard]] int room() const;

  QString name_;
  QString brief_;
  QStringList words_;
  QLabel* caption_;
  QLabel* value_;
  QBoxLayout* layout_;
  QString whole_;
  int least_em_;
};

class Strip : public QFrame {
  Q_OBJECT

 public:
  explicit Strip(QWidget* parent = nullptr);

  void see(const Snapshot& seen, const day::Checklist& list);
  void see_link(LinkWord word, const QString& say);
  void dress(const Look& look);  // after the labels were
  // The first of the strip; hidden until somebody has a use for it.
  [[nodiscard]] QPushButton& views_button() { return *views_; }
  [[nodiscard]] const StripField& field(std::size_t index) const { return *fields_.at(index); }

  enum Index : std::size_t { show, day, release, key, people, wind, tester, written };

 Q_SIGNALS:
  void hold_called();

 private:
  std::array<StripField*, 8> fields_{};
  QPushButton* views_;
  QPushButton* hold_;
};

}  // namespace walkdown::gui
