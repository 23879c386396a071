// SPDX-License-Identifier: MIT
#include "file/key_changes.hpp"

#include "file/write_value.hpp"

namespace doorcard {
namespace {

using What = KeyChange::What;

std::string address_of(const Survey& survey, const KeyTable& table, std::size_t row) {
    const std::string kind = std::string(table.name) + ":";
    if (table.shape == Shape::one) return kind;
    const std::string_view id = id_of(survey, table, row);
    return kind + (id.empty() ? std::to_string(row + 1) : std::string(id));
}

std::optional<std::string> written(const Field& field, const void* owner) {
    const auto value = owner ? value_of(field, owner) : std::nullopt;
    return value ? std::optional(written_value(field, *value)) : std::nullopt;
}

void add_keys(const std::string& of, const std::string& before_key, FieldList fields, const void* before,
              const void* after, std::vector<KeyChange>& changes) {
    for (const Field& field : fields) {
        const std::string key = before_key + std::string(field.name);
        if (field.form == Form::table) {
            const void* was = before ? field.look(before) : nullptr;
            const void* now = after ? field.look(after) : nullptr;
            if (was || now) add_keys(of, key + ".", field.keys, was, now, changes);
            continue;
        }
        auto was = written(field, before), now = written(field, after);
        if (was != now) changes.push_back({What::changed, of, key, std::move(was), std::move(now)});
    }
}

class Collector {
public:
    Collector(const Survey& before, const Survey& after) : before_(before), after_(after) {}

    void collect(const KeyTable& table, const TableDifference& difference) {
        for (const std::size_t row : difference.removed)
            changes_.push_back({What::removed, address_of(before_, table, row), {}, {}, {}});
        for (std::size_t row = 0; row < difference.was.size(); ++row)
            if (!difference.was[row]) changes_.push_back({What::added, address_of(after_, table, row), {}, {}, {}});
        for (const std::size_t row : difference.changed) {
            const std::size_t was = *difference.was[row];
            add_keys(address_of(before_, table, was), "", table.keys, table.thing(before_, was),
                     table.thing(after_, row), changes_);
        }
    }

    void collect_one(const KeyTable& table) {
        const bool was = table.count(before_) == 1, is = table.count(after_) == 1;
        const std::string of = address_of(after_, table, 0);
        if (was != is) changes_.push_back({is ? What::added : What::removed, of, {}, {}, {}});
        add_keys(of, "", table.keys, was ? table.thing(before_, 0) : nullptr, is ? table.thing(after_, 0) : nullptr,
                 changes_);
    }

    std::vector<KeyChange> changes_;

private:
    const Survey& before_;
    const Survey& after_;
};

}  // namespace

std::vector<KeyChange> key_changes(const Survey& before, const Survey& after) {
    const Difference all = difference(before, after);
    Collector collector(before, after);
    for (const KeyTable& table : all_tables())
        if (const TableDifference* rows = all.of(table.name))
            collector.collect(table, *rows);
        else if (table.shape == Shape::one)
            collector.collect_one(table);
    return std::move(collector.changes_);
}

}  // namespace doorcard
