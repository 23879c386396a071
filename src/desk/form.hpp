// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "assess/directory.hpp"
#include "assess/finding.hpp"
#include "file/enum_words.hpp"
#include "survey/edits/edit.hpp"

namespace doorcard {

/// How a field is filled in. `yes_no` has three states: yes, no, not looked.
enum class Entry { text, long_text, number, whole, choice, yes_no, date, list };
enum class Units { feet, metres };

struct FieldChoice {
    std::string value;  ///< as the survey file writes it; empty: not known
    Message label;
};

/// One field of a form: a key of an entry of the survey, as a person fills it in. A length or area is one field, under
/// its key in feet, shown in the units asked for.
struct FormField {
    std::string address;  ///< "panel:MAIN"
    std::string key;      ///< "wire.size"
    Message label;
    Entry entry = Entry::text;
    std::string value;  ///< as it is read; empty: absent
    std::string unit;
    std::vector<FieldChoice> choices;  ///< of choice and yes_no; the first: not known
    Message hint;
    bool important = false;
};

struct FormGroup {
    Message title;
    std::vector<FormField> fields;
    bool folded = false;  ///< rarely used: closed at first
};

/// All keys of one entry, the usual ones first. Empty where there is no such entry.
std::vector<FormGroup> form_of(const Survey&, std::string_view address, Units);
/// The slip of one row of a face: its breaker, and each circuit on it with its wire, neutral and how it was traced.
std::vector<FormGroup> slip_of(const Survey&, std::string_view panel, Position, Units);
/// The arrival at a call: who works, the caller's words, first look, what must stay on, the sources, the panel's facts,
/// the building. Every part may be left out.
std::vector<FormGroup> arrival_of(const Survey&, std::string_view panel, Units);

/// What was typed into a field, as an edit; an empty text takes the key out.
Outcome<Edit> filled_in(const Survey&, std::string_view address, std::string_view key, std::string_view typed, Units);

/// The label and the choices of a key, for forms and grids alike.
Message label_of(std::string_view table, std::string_view key);
std::vector<FieldChoice> choices_of(const Survey&, std::string_view table, std::string_view key);
Entry entry_kind(std::string_view table, std::string_view key);
std::string unit_of(std::string_view table, std::string_view key);
/// The words of a closed set; the first: not known.
std::vector<FieldChoice> word_choices(WordList);
/// What a key means, where its label does not say so: what is meant by it, or what is taken where nothing is said.
Message hint_of(std::string_view table, std::string_view key);

/// Where a finding is mended: the entry, and the key that is to be filled in or changed; the key may be empty.
struct FieldAtFault {
    std::string address, key;
};
FieldAtFault field_at_fault(const Finding&, const Survey&);
/// Whether it is known what mends the findings of a rule.
bool is_rule_mended(std::string_view rule);

}  // namespace doorcard
