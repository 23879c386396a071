// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "file/edit_keys.hpp"
#include "file/keys.hpp"

namespace doorcard {

/// An entry of the survey, by its address ("panel:MAIN", "reading:3", "survey:"): its list of keys, and the thing
/// itself (null where there is none).
struct EntryKeys {
    FieldList keys;
    const void* thing = nullptr;
};
std::optional<EntryKeys> entry_of(const Survey&, std::string_view address);

/// A key, dotted where it is one of a table within ("wire.size"); null where there is none.
const Field* field_named(FieldList, std::string_view key);

/// What a key holds, as a person reads it: no quotes, lists with commas; empty where it is absent.
std::string value_read(const EntryKeys&, std::string_view key);

/// What a person typed, as `edited` takes it: a decimal comma, a unit behind a number, quotes in a text are all right.
/// Nullopt: the key is taken out.
std::optional<std::string> value_typed(const Field&, std::string_view typed);

/// One step: keys of an entry set as they were typed. An entry that is to be added takes them all.
Edit keys_edit(Message name, EntryEdit);

}  // namespace doorcard
