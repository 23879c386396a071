// SPDX-License-Identifier: MIT
#include "desk/appliances.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/folded.hpp"
#include "desk/new_ids.hpp"
#include "desk/typed_words.hpp"
#include "file/enum_words.hpp"
#include "survey/edits/load_edits.hpp"

namespace doorcard {
namespace {

constexpr const char* typical = tr("typical, not from the nameplate; {0}");

template <class E>
std::optional<E> word_in(const std::string& word) {
    const auto& words = enum_words<E>;
    const auto found = std::ranges::find(words, word);
    return found == words.end() ? std::nullopt : std::optional(static_cast<E>(found - words.begin()));
}

std::optional<bool> flag_in(const std::string& word) {
    return word == "by-duty" ? std::nullopt : std::optional(word == "yes");
}

/// A row of one of the tables of appliances.
class ApplianceRow {
public:
    ApplianceRow(const RuleTable& table, std::size_t row) : table_(table), row_(row) {}

    std::string title(const Words& words) const { return text(words.language() == "es" ? "es" : "en"); }

    Load load() const {
        Load load;
        rate(load);
        if (const double volts = number("volts"); volts > 0) load.volts = Volts(volts);
        if (const double h = number("third_harmonic"); h > 0) load.third_harmonic = h;
        load.duty = word_in<Duty>(text("duty"));
        load.connection = word_in<Connection>(text("connection"));
        load.continuous = flag_in(text("continuous"));
        return load;
    }

private:
    const std::string& text(std::string_view column) const { return table_.text(row_, table_.column(column)); }
    double number(std::string_view column) const { return table_.number(row_, table_.column(column)); }

    void rate(Load& load) const {
        if (std::ranges::find(table_.columns, "hp") != table_.columns.end()) {
            load.hp = text("hp");
            return;
        }
        const std::string& unit = text("unit");
        const double figure = number("figure");
        if (unit == "W") load.watts = Watts(figure);
        if (unit == "VA") load.va = VoltAmperes(figure);
        if (unit == "A") load.amps = Amperes(figure);
    }

    const RuleTable& table_;
    std::size_t row_;
};

struct Listed {
    std::string title;
    const RuleTable* table;
    std::size_t row;
};

std::vector<Listed> listed(const RuleBook& book, const Words& words) {
    std::vector<Listed> all;
    for (const auto& [id, table] : book.tables()) {
        if (!id.starts_with("appliances-")) continue;
        for (std::size_t row = 0; row < table.rows.size(); ++row)
            all.push_back({ApplianceRow(table, row).title(words), &table, row});
    }
    std::ranges::sort(all, {}, [](const Listed& one) { return folded(one.title); });
    return all;
}

Appliance appliance_of(const Listed& one) {
    return {verbatim(one.title), ApplianceRow(*one.table, one.row).load(), one.table->source};
}

bool has_word_like(const std::string& title, const std::string& typed) {
    for (std::size_t at = 0; at != std::string::npos; at = title.find_first_of(" ,", at + 1)) {
        const std::size_t from = title.find_first_not_of(" ,", at);
        if (from != std::string::npos && std::string_view(title).substr(from).starts_with(typed)) return true;
    }
    return false;
}

bool has_figure(const Load& load) { return load.va || load.watts || load.amps || load.hp; }

/// What an appliance says where a load says nothing.
Load completed(Load load, const Load& typical_one) {
    const bool takes_figure = !has_figure(load);
    const auto fill = [](auto& key, const auto& from) {
        if (!key) key = from;
    };
    if (takes_figure) {
        load.va = typical_one.va, load.watts = typical_one.watts;
        load.amps = typical_one.amps, load.hp = typical_one.hp;
        fill(load.note, typical_one.note);
    }
    fill(load.title, typical_one.title);
    fill(load.volts, typical_one.volts);
    fill(load.phases, typical_one.phases);
    fill(load.duty, typical_one.duty);
    fill(load.connection, typical_one.connection);
    fill(load.continuous, typical_one.continuous);
    fill(load.third_harmonic, typical_one.third_harmonic);
    return load;
}

}  // namespace

std::vector<Appliance> appliances_like(const RuleBook& book, std::string_view typed, const Words& words) {
    const std::string wanted = folded(trimmed(typed));
    std::vector<Appliance> first, others;
    for (const Listed& one : listed(book, words)) {
        const std::string title = folded(one.title);
        if (title.starts_with(wanted))
            first.push_back(appliance_of(one));
        else if (has_word_like(title, wanted))
            others.push_back(appliance_of(one));
    }
    first.insert(first.end(), others.begin(), others.end());
    return first;
}

std::optional<Appliance> appliance_called(const RuleBook& book, std::string_view title, const Words& words) {
    for (const Listed& one : listed(book, words))
        if (folded(one.title) == folded(trimmed(title))) return appliance_of(one);
    return std::nullopt;
}

Load load_of(const Appliance& appliance, std::string id, const Words& words) {
    Load load = appliance.load;
    load.id = std::move(id);
    load.title = words.say(appliance.title);
    load.note = words.say({typical, {appliance.source.message()}});
    return load;
}

std::optional<std::string> without_typical_note(std::string_view note) {
    for (const std::string& language : Words::languages()) {
        const std::string pattern = Words::in(language)(typical);
        const std::string begin = pattern.substr(0, pattern.find('{'));
        if (!note.starts_with(begin)) continue;
        const std::size_t end = note.find('\n');
        return end == std::string_view::npos ? "" : std::string(trimmed(note.substr(end)));
    }
    return std::nullopt;
}

Outcome<Edit> appliance_chosen(const Survey& survey, const Grid& grid, std::size_t row, const Appliance& appliance,
                               const Words& words) {
    if (grid.table != "load" || row >= grid.rows.size()) return refused("there is no such row", "choose one");
    const std::string title = words.say(appliance.title);
    const std::string& address = grid.rows[row].address;
    if (address.empty()) return add_load(load_of(appliance, new_thing_id(survey, title), words));
    const Load* there = survey.loads.find(address.substr(address.find(':') + 1));
    if (!there) return refused("there is no such load", "choose one that is there");
    return change_load(completed(*there, load_of(appliance, there->id, words)));
}

}  // namespace doorcard
