// SPDX-License-Identifier: MIT
#pragma once
#include "file/complaints.hpp"
#include "file/keys.hpp"
#include "file/marks.hpp"
#include "file/toml_text.hpp"

namespace doorcard {

/// A file as it stands, key by key: what could be read, and where. What the things say of each other is not looked at.
struct Entries {
    Draft draft;
    Marks marks;
    Complaints complaints;
};

/// Reads every table by its list of keys. The format must have been looked at before.
void read_entries(TomlNode root, Entries&);

}  // namespace doorcard
