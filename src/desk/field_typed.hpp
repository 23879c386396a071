// SPDX-License-Identifier: MIT
#pragma once
#include "desk/entry_keys.hpp"
#include "desk/form.hpp"

namespace doorcard {

/// Where something is typed: the panel that bare numbers of spaces are of, and what lengths are typed in.
struct TypingPlace {
    std::string panel;
    Units units = Units::feet;
};

/// The panel that an entry belongs to, else the only one of the survey, else none.
std::string panel_of_entry(const Survey&, std::string_view address);

/// What a key holds, as a form or a grid shows it: lengths in these units, addresses as one says them.
std::string value_shown(const Survey&, const EntryKeys&, std::string_view key, const TypingPlace&);

/// What was typed into the field of a key, as the keys that `edited` takes: its own, and those that may not stand
/// beside it, taken out. An empty text takes it out, `none` is the list without items. Words of closed sets and names
/// of things may be typed as they are shown, in any of the languages. A length that is typed as it was shown stays as
/// it was written. Refused with what would be right.
Outcome<std::vector<KeyEdit>> keys_typed(const Survey&, std::string_view table, const EntryKeys&, std::string_view key,
                                         std::string_view typed, const TypingPlace&);

/// The value of one of the choices that a text says, by value or by label in any of the languages; else the text.
std::string choice_said(const std::vector<FieldChoice>&, std::string_view typed);

/// The id, or address, of what somebody names in a field; where nothing is named so, the text itself.
std::string reference_said(const Survey&, const Field&, const std::string& panel, const std::string& typed);

}  // namespace doorcard
