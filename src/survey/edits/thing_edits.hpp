// SPDX-License-Identifier: MIT
#pragma once
#include <fmt/format.h>

#include <algorithm>

#include "survey/edits/edit.hpp"
#include "survey/references.hpp"

// What the edits of every noun are made of: things with an id in a table of the survey.

namespace doorcard {

template <class T>
using TableOf = Table<T> Survey::*;

/// Puts a thing behind those that are there.
template <class T>
Edit add_thing(Message name, TableOf<T> table, const T& thing) {
    return {std::move(name), [=](Survey survey) {
                const Survey before = survey;
                survey.*table = (survey.*table).with_added(thing);
                return kept_laws(before, std::move(survey));
            }};
}

/// Changes the thing of that id by `change`; an id is none of what may be changed.
template <class T, class Change>
Edit change_thing(Message name, TableOf<T> table, std::string id, Change change) {
    return {std::move(name), [=](Survey survey) -> Outcome<Survey> {
                const std::size_t at = (survey.*table).position(id);
                if (at == (survey.*table).size())
                    return refused(fmt::format("there is no \"{}\"", id), "name one that is there");
                T row = (survey.*table)[at];
                change(row);
                if (row.id != id) return refused("an id never changes", "add a new thing, and take this one out");
                const Survey before = survey;
                survey.*table = (survey.*table).with_row(at, std::move(row));
                return kept_laws(before, std::move(survey));
            }};
}

/// Takes out what names a thing, or refuses and says what does.
Outcome<Survey> without_mentions(Survey, std::uint32_t kinds, const std::string& id, Mentions);

template <class T>
Edit remove_thing(Message name, TableOf<T> table, std::uint32_t kind, std::string id, Mentions mentions) {
    return {std::move(name), [=](Survey survey) -> Outcome<Survey> {
                if (!(survey.*table).contains(id))
                    return refused(fmt::format("there is no \"{}\"", id), "name one that is there");
                auto without = without_mentions(survey, kind, id, mentions);
                if (!without) return without;
                auto& rows = (*without).*table;
                rows = rows.without_row(rows.position(id));
                return kept_laws(survey, std::move(*without));
            }};
}

}  // namespace doorcard
