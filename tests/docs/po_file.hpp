// SPDX-License-Identifier: MIT
#pragma once
#include <set>
#include <string>
#include <vector>

namespace po {

/// One text of a catalogue (PO format of GNU gettext). The header has the empty `id`.
struct Entry {
    std::string id;
    std::string plural;
    std::vector<std::string> translations;
    bool fuzzy = false;
};

/// The texts of a catalogue in file order, without obsolete ones (#~).
std::vector<Entry> entries_of(const std::string& text);

/// The fmt fields of a pattern, as written and ascending: "{0} of {1:.1f}" has {0} and {1:.1f}.
std::multiset<std::string> fields_of(const std::string& pattern);

/// What a catalogue lacks against the template of the sources: missing, untranslated, doubtful (fuzzy), left over, or
/// with other fields than the English.
std::vector<std::string> faults(const std::vector<Entry>& wanted, const std::vector<Entry>& catalogue);

}  // namespace po
