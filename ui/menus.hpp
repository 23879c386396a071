// SPDX-License-Identifier: MIT
#pragma once
#include <functional>
#include <string>
#include <vector>

#include "base/words.hpp"

class wxFrame;
class wxMenuBar;

namespace doorcard {

/// One line of a menu: what it is called, its key, what it does, and whether it can just now.
struct MenuCommand {
    std::string label;  ///< in the user's language; "&" before its letter; empty: a line between groups
    std::string key;    ///< "Ctrl+Z"; may be empty
    std::function<void()> act;
    std::function<bool()> can;          ///< empty: always
    std::function<bool()> is_on;        ///< of one that is ticked; empty: it is none
    std::function<std::string()> name;  ///< of one whose label says what it would do; empty: it is `label`
};

struct MenuList {
    std::string title;
    std::vector<MenuCommand> commands;
};

/// The menus of a frame. What they can do is asked whenever one is opened, and before a key does something.
void set_menus(wxFrame*, std::vector<MenuList>);

}  // namespace doorcard
