// SPDX-License-Identifier: MIT
#pragma once
#include "ui/menus.hpp"
#include "ui/seat.hpp"

namespace doorcard {

/// The address by which the slip of the chosen row is opened.
constexpr const char* row_address = "row:";

/// What the window does that is no edit.
class FrameActs {
public:
    virtual ~FrameActs() = default;
    virtual void begin_new() = 0;
    virtual void ask_to_open() = 0;
    virtual void save() = 0;
    virtual void save_as() = 0;
    virtual void close() = 0;
    virtual void larger() = 0;
    virtual void smaller() = 0;
    virtual void usual_size() = 0;
    virtual void set_theme(Theme) = 0;
    virtual void set_units(Units) = 0;
    virtual void set_language(const std::string&) = 0;
    virtual void show_page(JobPage) = 0;
    virtual void go_to_face() = 0;
    virtual void go_to_findings() = 0;
    virtual void next_area() = 0;
    virtual void toggle_list() = 0;
    virtual bool is_list() const = 0;
    virtual void open_row_slip() = 0;
};

/// All that can be done, with its keys.
std::vector<MenuList> menu_lists(Seat&, FrameActs&);

}  // namespace doorcard
