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

/// The list that a key stands in: that of the table within for a dotted one. Empty where there is none.
FieldList list_with(FieldList, std::string_view key);

/// What a key holds; nullopt where it is absent.
std::optional<Value> value_held(const EntryKeys&, std::string_view key);
/// The same as a person reads it: no quotes but around an item with a comma, lists with commas, "none" for a list
/// without items; empty where it is absent.
std::string value_read(const EntryKeys&, std::string_view key);

/// The items of a list as it is read or typed.
std::vector<std::string> items_of(std::string_view list);

/// One step: keys of an entry set as they were typed. An entry that is to be added takes them all.
Edit keys_edit(Message name, EntryEdit);

}  // namespace doorcard
