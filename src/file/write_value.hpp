// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "file/keys.hpp"

namespace doorcard {

/// How values are written into a survey file; each reads back as what it was.
std::string quoted(std::string_view text);
/// A key, in quotes where it has to be.
std::string written_key(std::string_view key);
std::string written_number(double);
std::string written_moment(const Moment&);
std::string written_photo(const Photo&);
std::string written_column(const RecordingColumn&);

/// The value of a key; where it replaces one, with the quotes and the form of number that stood there.
std::string written_value(const Field&, const Value&, std::string_view in_place_of = {});
/// The elements of a list, in order.
std::vector<std::string> written_items(const Value&);

/// A key and its value, as written.
struct WrittenKey {
    std::string key;
    std::string value;
};
/// All keys that a thing has, in the order of their list.
std::vector<WrittenKey> written_keys(FieldList, const void* owner);
/// The same in braces.
std::string written_table(FieldList, const void* owner);

/// What a key holds; nullopt where it is left out.
std::optional<Value> value_of(const Field&, const void* owner);

}  // namespace doorcard
