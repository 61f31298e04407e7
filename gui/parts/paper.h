// SPDX-License-Identifier: Apache-2.0
// Onto paper: the printer is asked for in the window, the pages are laid out away from its thread,
// since a long report takes a second or more.
#pragma once

#include <QTextDocument>
#include <QWidget>
#include <functional>
#include <memory>

class QPrinter;

namespace walkdown::gui {

using MakePages = std::function<std::unique_ptr<QTextDocument>()>;  // called in any thread

// False where the printer did not take it.
bool print_pages(const MakePages& make, QPrinter& printer);

// Asks for the printer; `then` is told how it went, in the window's thread, unless nothing was to
// be printed or `owner` is gone.
void ask_to_print(QWidget* owner, const MakePages& make, const std::function<void(bool)>& then);

// "Given to the printer", or what to do.
[[nodiscard]] QString printed_words(bool printed);

}  // namespace walkdown::gui
