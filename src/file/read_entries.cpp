// SPDX-License-Identifier: MIT
#include "file/read_entries.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/nearest_word.hpp"
#include "file/entry_reader.hpp"

namespace doorcard {

void EntryReader::read(TomlNode table, FieldList fields, void* owner, std::string_view where, TableMarks* marks,
                       std::size_t row) {
    const auto outer = std::exchange(where_, where);
    std::vector<TomlMember> members;
    table.members_into(members);
    std::vector<Member> grouped;
    for (const TomlMember& member : members) {
        const Field* field = field_named(member.key, fields);
        if (!field) {
            unknown_key(member, fields);
        } else {
            if (!field->group.empty()) grouped.push_back({field, member.place});
            read_member(member, *field, fields, owner, marks, row);
        }
    }
    if (grouped.size() > 1) check_groups(grouped, fields);
    check_required(members, table, fields);
    where_ = outer;
}

void EntryReader::read_member(const TomlMember& member, const Field& field, FieldList fields, void* owner,
                              TableMarks* marks, std::size_t row) {
    const auto* outer = std::exchange(field_, &field);
    if (field.form == Form::table) {
        const std::string where = fmt::format("{} of {}", field.name, where_);
        if (is_kind(member.node, Kind::table)) read(member.node, field.keys, field.open(owner), where, nullptr, row);
    } else if (texts_.clear(); auto value = read_value(member.node)) {
        field.set(owner, std::move(*value));
        if (field.is_marked && marks)
            mark(member, marks->by_field[static_cast<std::size_t>(&field - fields.data())], row);
    }
    field_ = outer;
}

void EntryReader::mark(const TomlMember& member, std::vector<Mark>& marks, std::size_t row) const {
    const auto number = static_cast<std::uint32_t>(row);
    const bool in_list = member.node.is(Kind::list);
    for (const PlacedText& text : texts_) marks.push_back({number, member.place, text.place, text.text, in_list});
    if (texts_.empty() && !in_list) marks.push_back({number, member.place, member.node.place(), {}, false});
}

const Field* EntryReader::field_named(std::string_view key, FieldList fields) {
    Names& names = names_[{fields.data(), fields.size()}];
    if (names.empty()) {
        for (const Field& field : fields) names.emplace_back(field.name, &field);
        std::ranges::sort(names);
    }
    const auto found = std::ranges::lower_bound(names, key, {}, &Names::value_type::first);
    return found != names.end() && found->first == key ? found->second : nullptr;
}

void EntryReader::unknown_key(const TomlMember& member, FieldList fields) {
    if (!complaints_.wants(member.place)) return;
    NearestWord search(member.key);
    for (const Field& field : fields) search.offer(field.name);
    complaints_.add(member.place, fmt::format("unknown key \"{}\" in {}", member.key, where_),
                    search.meant() ? fmt::format("did you mean \"{}\"?", *search.meant())
                                   : fmt::format("the nearest known key is \"{}\"", *search.nearest()));
}

void EntryReader::check_groups(std::vector<Member>& grouped, FieldList fields) {
    std::ranges::sort(grouped, {}, &Member::key);
    for (std::size_t later = 1; later < grouped.size(); ++later) {
        const auto clashes = [&](const Member& earlier) {
            return earlier.field->group == grouped[later].field->group &&
                   earlier.field->beside != grouped[later].field->name;
        };
        const auto end = grouped.begin() + static_cast<std::ptrdiff_t>(later);
        const auto earlier = std::find_if(grouped.begin(), end, clashes);
        if (earlier == end) continue;
        std::string all;
        for (const Field& field : fields)
            if (field.group == earlier->field->group) all.append(all.empty() ? "" : ", ").append(field.name);
        complaints_.add(
            grouped[later].key,
            fmt::format("\"{}\" beside \"{}\" in {}", grouped[later].field->name, earlier->field->name, where_),
            fmt::format("give one of {}", all));
    }
}

void EntryReader::check_required(const std::vector<TomlMember>& members, TomlNode table, FieldList fields) {
    if (!complaints_.wants(table.place())) return;
    for (const Field& field : fields) {
        if (!field.is_required || std::ranges::find(members, field.name, &TomlMember::key) != members.end()) continue;
        complaints_.add(table.place(), fmt::format("{} has no \"{}\"", where_, field.name),
                        fmt::format("add {} = ... ({})", field.name, type_words(field)));
    }
}

namespace {

using Kind = TomlNode::Kind;

class FileReader {
public:
    explicit FileReader(Entries& into) : into_(into), reader_(into.complaints) {}

    void read(TomlNode root) {
        std::vector<TomlMember> members;
        root.members_into(members);
        for (const TomlMember& member : members) {
            const auto table = std::ranges::find(all_tables(), member.key, &KeyTable::name);
            if (table != all_tables().end())
                read_table(*table, member);
            else if (member.key != "format")
                unknown_table(member);
        }
    }

private:
    void read_table(const KeyTable& table, const TomlMember& member) {
        entries_ += member.node.is(Kind::list) ? member.node.size() : 1;
        if (entries_ > most_entries) {
            into_.complaints.add(member.place, "the file has more than a million entries",
                                 "a survey has some hundreds to some hundred thousands");
        } else if (table.shape != Shape::many && member.node.is(Kind::table)) {
            table.make_rows(into_.draft, 1);
            read_entry(table, member.node, 0);
        } else if (table.shape != Shape::one && member.node.is(Kind::list)) {
            table.make_rows(into_.draft, member.node.size());
            for (std::size_t row = 0; row < member.node.size(); ++row) read_entry(table, member.node[row], row);
        } else {
            into_.complaints.add(member.node.place(),
                                 fmt::format("\"{}\" is {}", member.key, name_of(member.node.kind())),
                                 fmt::format("head it with {}", table.header()));
        }
    }

    void read_entry(const KeyTable& table, TomlNode entry, std::size_t row) {
        TableMarks& marks = into_.marks.of(table);
        marks.entries.push_back(entry.place());
        if (entry.is(Kind::table))
            reader_.read(entry, table.keys, table.row(into_.draft, row), table.header(), &marks, row);
        else
            into_.complaints.add(entry.place(),
                                 fmt::format("an entry of \"{}\" is {}", table.name, name_of(entry.kind())),
                                 fmt::format("head every entry with {}", table.header()));
    }

    void unknown_table(const TomlMember& member) {
        NearestWord search(member.key);
        for (const KeyTable& table : all_tables()) search.offer(table.name);
        const std::string header = table_named(*search.nearest()).header();
        into_.complaints.add(member.place, fmt::format("unknown key \"{}\" in the survey file", member.key),
                             search.meant() ? fmt::format("did you mean {}?", header)
                                            : fmt::format("the nearest known table is {}", header));
    }

    static constexpr std::size_t most_entries = 1'000'000;
    Entries& into_;
    EntryReader reader_;
    std::size_t entries_ = 0;
};

}  // namespace

void read_entries(TomlNode root, Entries& into) { FileReader(into).read(root); }

}  // namespace doorcard
