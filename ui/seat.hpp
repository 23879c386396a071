// SPDX-License-Identifier: MIT
#pragma once
#include "base/words.hpp"
#include "desk/actions.hpp"
#include "desk/form.hpp"
#include "rules/book.hpp"
#include "ui/looks.hpp"

namespace doorcard {

/// Where one sits at a desk: what every view of the window may ask, and the one way to do something.
class Seat {
public:
    virtual ~Seat() = default;
    virtual const Desk& desk() const = 0;
    virtual const Words& words() const = 0;
    virtual const Looks& looks() const = 0;
    virtual Units units() const = 0;
    virtual void act(Action) = 0;
    /// An edit, or the complaint why there is none.
    void act(Outcome<Edit> edit) {
        edit ? act(Action{Apply{*std::move(edit)}}) : act(Action{Refuse{std::move(edit.error())}});
    }
    std::string say(const char* english) const { return words()(english); }
};

}  // namespace doorcard
