// SPDX-License-Identifier: Apache-2.0
#include "gui/day/against_words.h"

#include <QCoreApplication>
#include <map>

#include "gui/day/strip_words.h"
#include "gui/look/sentences.h"
#include "gui/look/words.h"

namespace walkdown::gui {
namespace {

struct Against {
  Q_DECLARE_TR_FUNCTIONS(Against)
};

QString item_line(const day::Item& item, const day::ItemState& state) {
  const QString head = q(item.question) + QStringLiteral(" \u2013 ");
  if (state.standing == day::Standing::due)
    return head + translated(state.why);  // it says that it is due
  return head + words(state.standing) + QStringLiteral(": ") + translated(state.why);
}

// Every line that the gate can say of this state, and what is shown for it.
std::map<std::string, QString> known(const day::State& state, const day::Checklist& list) {
  std::map<std::string, QString> out;
  for (std::size_t i = 0; i < state.items.size(); ++i) {
    const day::ItemState& item = state.items[i];
    out[item.id + " is " + std::string(day::word(item.standing)) + ": " + item.why] =
        item_line(list.items[i], item);
  }
  for (const day::HoldLog& hold : state.holds) out[day::said(hold)] = hold_words(hold);
  for (const auto& name : state.in_field) {
    out[name + " is in the field"] = Against::tr("%1 is in the field").arg(q(name));
  }
  for (const auto& name : state.tags) {
    out["the tag of " + name + " is not back"] =
        Against::tr("The tag of %1 is not back").arg(q(name));
  }
  for (const day::Stage& stage : list.stages) {
    out["the pause after \"" + stage.title + "\" is not closed"] =
        Against::tr("Stage \u201c%1\u201d is not closed yet").arg(q(stage.title));
  }
  return out;
}

}  // namespace

QString against_line(const std::string& line, const day::State& state, const day::Checklist& list) {
  const auto lines = known(state, list);
  const auto found = lines.find(line);
  return found == lines.end() ? translated(line) : found->second;
}

QStringList against_words(const day::State& state, const day::Checklist& list) {
  const auto lines = known(state, list);
  QStringList out;
  for (const auto& line : state.against) {
    const auto found = lines.find(line);
    out << (found == lines.end() ? translated(line) : found->second);
  }
  return out;
}

QString schedule_words(const std::string& say, const day::Checklist& list) {
  const auto quoted = [](const day::Item& item) {
    return Against::tr("\u201c%1\u201d").arg(q(item.question));
  };
  const QString text = q(say);
  for (const day::Item& item : list.items) {
    const QString id = q(item.id);
    if (text.startsWith(id + QStringLiteral(" cannot be done ")) ||
        text.startsWith(id + QStringLiteral(" lasts only "))) {
      return translated((quoted(item) + text.mid(id.size())).toStdString());
    }
    for (const char* lead : {"as planned, ", "begin "}) {
      for (const char* tail : {" expires ", " by "}) {
        const QString from = QLatin1String(lead) + id + QLatin1String(tail);
        const auto at = text.indexOf(from);
        if (at < 0) continue;
        const auto begin = at + static_cast<qsizetype>(qstrlen(lead));
        return translated(
            (text.left(begin) + quoted(item) + text.mid(begin + id.size())).toStdString());
      }
    }
  }
  return translated(say);
}

}  // namespace walkdown::gui
