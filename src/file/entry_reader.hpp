// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <optional>
#include <utility>

#include "file/read_entries.hpp"

namespace doorcard {

/// Reads the entries of a table, key by key, as the keys' forms, bounds, words and patterns demand, and complains where
/// they are not that. What it reads goes straight into the things of the draft.
class EntryReader {
public:
    explicit EntryReader(Complaints& complaints) : complaints_(complaints) {}
    /// Marks of the keys that ask for it go to `marks`, if given, as of `row`.
    void read(TomlNode table, FieldList, void* owner, std::string_view where, TableMarks* marks, std::size_t row);

private:
    using Kind = TomlNode::Kind;
    struct PlacedText {
        Place place;
        std::string_view text;
    };
    struct Member {
        const Field* field;
        Place key;
    };
    using Names = std::vector<std::pair<std::string_view, const Field*>>;

    // read_entries.cpp: keys
    void read_member(const TomlMember&, const Field&, FieldList, void* owner, TableMarks* marks, std::size_t row);
    void mark(const TomlMember&, std::vector<Mark>& marks, std::size_t row) const;
    const Field* field_named(std::string_view key, FieldList);
    void unknown_key(const TomlMember&, FieldList);
    void check_groups(std::vector<Member>& grouped, FieldList);
    void check_required(const std::vector<TomlMember>&, TomlNode table, FieldList);

    // read_value.cpp: values
    std::optional<Value> read_value(TomlNode);
    std::optional<Value> read_text(TomlNode);
    std::optional<Value> read_texts(TomlNode);
    std::optional<Value> read_number(TomlNode);
    std::optional<Value> read_whole(TomlNode);
    std::optional<Value> read_wholes(TomlNode);
    std::optional<Value> read_moment(TomlNode);
    std::optional<Value> read_volts_by_address(TomlNode);
    std::optional<Value> read_columns(TomlNode);
    std::optional<Value> read_photos(TomlNode);
    RecordingColumn column_of(TomlNode);
    Photo photo_of(TomlNode);
    void refuse_twice(const std::vector<PlacedText>& texts);
    std::optional<double> number_of(TomlNode);
    std::optional<int> whole_of(TomlNode);
    bool is_allowed(Place, const std::string& text);
    bool is_kind(TomlNode, Kind);
    std::nullopt_t wrong_value(Place, std::string_view is);

    Complaints& complaints_;
    std::map<std::pair<const Field*, std::size_t>, Names> names_;  // by list
    // of the key that is being read
    const Field* field_ = nullptr;
    std::string_view where_;
    std::vector<PlacedText> texts_;
};

}  // namespace doorcard
