// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <vector>

#include "base/outcome.hpp"
#include "survey/edits/edit.hpp"

namespace doorcard {

/// A key of an entry and what it shall be: a text as it is, or as TOML where it begins with a quote; numbers, dates,
/// true and false as TOML; a list in brackets, or with commas between its elements. Nullopt: the key is taken out.
struct KeyEdit {
    std::string key;  ///< "amps", "wire.size"
    std::optional<std::string> value;
};

/// What shall be done to one entry, named by its table and its id, or its place from 1 ("breaker:MAIN:5", "reading:3",
/// "survey:").
struct EntryEdit {
    enum class Kind { change, add, remove };
    Kind kind = Kind::change;
    std::string address;
    std::vector<KeyEdit> keys;
    Mentions mentions = Mentions::refuse;
};

/// The survey after it, or complaints in the manner of those of a file, without a place. A breaker whose spaces change
/// is moved, and what names it by its default id follows. What one entry cannot say of others is found when the text is
/// read again.
Outcome<Survey> edited(const Survey&, const EntryEdit&);

}  // namespace doorcard
