// SPDX-License-Identifier: MIT
#include <algorithm>

#include "desk/field_typed.hpp"
#include "desk/neutral_choices.hpp"
#include "desk/typed_words.hpp"

namespace doorcard {
namespace {

/// What was typed, for the name of an edit: a choice by its label.
Message said(const Survey& survey, std::string_view table, std::string_view key, std::string_view typed) {
    const auto choices = choices_of(survey, table, key);
    const auto chosen = std::ranges::find(choices, choice_said(choices, typed), &FieldChoice::value);
    return chosen == choices.end() ? verbatim(std::string(trimmed(typed))) : chosen->label;
}

/// `Wire, size of kitchen-east: 12`.
Message edit_name(const Survey& survey, std::string_view address, std::string_view key, std::string_view typed) {
    const std::size_t colon = std::min(address.find(':'), address.size());
    const std::string_view table = address.substr(0, colon);
    const std::string id(address.substr(std::min(colon + 1, address.size())));
    const Message label = label_of(table, key);
    if (trimmed(typed).empty())
        return id.empty() ? Message{tr("{0} taken out"), {label}} : Message{tr("{0} of {1} taken out"), {label, id}};
    const Message value = said(survey, table, key, typed);
    return id.empty() ? Message{tr("{0}: {1}"), {label, value}} : Message{tr("{0} of {1}: {2}"), {label, id, value}};
}

}  // namespace

Outcome<Edit> filled_in(const Survey& survey, std::string_view address, std::string_view key, std::string_view typed,
                        Units units) {
    if (address.starts_with("circuit:") && key == "neutral")
        return neutral_chosen(survey, std::string(address.substr(8)), std::string(typed));
    const auto entry = entry_of(survey, address);
    if (!entry) return refused("there is no such entry", "choose one that is there");
    const std::string_view table = address.substr(0, address.find(':'));
    auto keys = keys_typed(survey, table, *entry, key, typed, {panel_of_entry(survey, address), units});
    if (!keys) return tl::unexpected(std::move(keys.error()));
    const bool is_new = address == "dwelling:" && survey.dwellings.empty();
    return keys_edit(edit_name(survey, address, key, typed),
                     {is_new ? EntryEdit::Kind::add : EntryEdit::Kind::change, std::string(address), *std::move(keys),
                      Mentions::refuse});
}

}  // namespace doorcard
