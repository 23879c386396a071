// SPDX-License-Identifier: MIT
#include <algorithm>

#include "file/patterns.hpp"
#include "property/layout.hpp"

using namespace doorcard;

namespace {

const std::vector<std::string> odd_texts = {
    "plain",        "with \"quotes\"", "it's",        "back\\slash",       "two\nlines", "tab\there", "",
    "# no comment", "= no key",        "[no] {list}", "\xC3\xA9t\xC3\xA9", "\x01\x7F",   " ends "};

std::string numbered(std::string_view name, std::size_t i) {
    static const std::vector<std::string> ends = {"", " b", ".c", "#d", "\xC3\xA9"};
    return std::string(name) + std::to_string(i) + (name == "panel" ? "" : ends[i % ends.size()]);
}

/// Fills the entries of a draft, key by key; names what was made before.
class DraftMaker {
public:
    DraftMaker(Draft& draft, Draw& draw) : draft_(draft), draw_(draw) {}

    void fill(const KeyTable& table, std::size_t row) {
        void* owner = table.row(draft_, row);
        std::vector<std::string_view> groups;
        for (const Field& field : table.keys) {
            const bool taken = !field.group.empty() && std::ranges::find(groups, field.group) != groups.end();
            if (field.is_required || (!taken && draw_.one_in(4))) {
                set(table, field, owner, row);
                if (!field.group.empty()) groups.push_back(field.group);
            }
        }
    }

    void set(const KeyTable& table, const Field& field, void* owner, std::size_t row) {
        if (field.name == "id") return set_id(table, field, owner, row);
        if (table.name == "breaker" && field.name == "spaces") return set_spaces(owner, row);
        static const std::vector<std::string_view> bound_to_others = {"half", "legs", "stands_for", "units",
                                                                      "neutral_size"};
        if (std::ranges::find(bound_to_others, field.name) != bound_to_others.end()) return;
        if (table.name == "dwelling" && field.name == "panels") return;
        const bool time_is_order = field.name == "at" && (table.name == "round" || table.name == "trial");
        if (time_is_order) return;
        if (field.form == Form::table) return fill_inner(field, owner);
        if (auto value = value_for(field, row)) field.set(owner, std::move(*value));
    }

private:
    void fill_inner(const Field& field, void* owner) {
        void* inner = field.open(owner);
        for (const Field& key : field.keys)
            if (draw_.one_in(2) && key.group.empty()) key.set(inner, *value_for(key, 0));
    }

    void set_id(const KeyTable& table, const Field& field, void* owner, std::size_t row) {
        if (table.name == "breaker" && draw_.one_in(2)) return;
        field.set(owner, numbered(table.name, row));
        if (table.name == "breaker") static_cast<Breaker*>(owner)->id_given = true;
    }

    /// Spaces that no other breaker has, so that ids differ.
    static void set_spaces(void* owner, std::size_t row) {
        auto& breaker = *static_cast<Breaker*>(owner);
        const int first = static_cast<int>(row) * 4 + 1;
        breaker.spaces = row % 3 == 0 ? std::vector{first + 2, first} : std::vector{first};
        if (row % 5 == 0) breaker.halves.assign(breaker.spaces.size(), row % 2 == 0 ? 'a' : 'b');
        if (!breaker.id_given) breaker.id = breaker.default_id();
    }

    std::optional<std::string> id_among(std::uint32_t refers, std::size_t row) {
        std::vector<std::string> ids;
        const auto add = [&](std::uint32_t bit, const auto& rows, std::size_t most) {
            if (refers & bit)
                for (std::size_t i = 0; i < std::min(most, rows.size()); ++i) ids.push_back(rows[i].id);
        };
        add(to_source, draft_.sources, 99);
        add(to_panel, draft_.panels, 99);
        add(to_breaker, draft_.breakers, 99);
        add(to_circuit, draft_.circuits, 99);
        add(to_outlet, draft_.outlets, row);
        add(to_load, draft_.loads, 99);
        add(to_managed, draft_.managed, 99);
        std::erase(ids, "");
        if (ids.empty()) return std::nullopt;
        return draw_.of(ids);
    }

    std::optional<std::string> address() {
        const auto circuit = id_among(to_circuit, 99), panel = id_among(to_panel, 99), outlet = id_among(to_outlet, 99);
        if (circuit && draw_.one_in(3)) return "circuit:" + *circuit;
        if (outlet && draw_.one_in(2)) return "outlet:" + *outlet;
        return panel ? std::optional("panel:" + *panel) : std::nullopt;
    }

    std::optional<std::string> text_for(const Field& field, std::size_t row) {
        if (field.refers & to_hunt_place)
            return id_among(to_outlet, 99) ? "run:" + *id_among(to_outlet, 99) : "home-run";
        if (field.refers >= to_address) return address();
        if (!field.also.empty() && draw_.one_in(3)) return std::string(field.also);
        if (field.refers != to_nothing)
            return id_among(field.refers & ~(field.refers & to_source ? to_breaker : 0u), row);
        if (!field.words.empty()) return std::string(draw_.of(std::vector(field.words.begin(), field.words.end())));
        if (field.pattern == &leg_letters || field.pattern == &load_legs)
            return draw_.of<std::string>({"A", "B", "AB"});
        if (field.pattern == &hp_pattern) return draw_.of<std::string>({"3/4", "1.5", "5"});
        if (field.pattern == &slash_volts) return draw_.of<std::string>({"240", "120/240"});
        if (field.pattern) return numbered("n", static_cast<std::size_t>(draw_.number(0, 9)));
        if (field.name == "key") return draw_.of<std::string>({"amps", "volts"});
        return field.is_required ? draw_.of<std::string>({"a.csv", "b c.csv"}) : draw_.of(odd_texts);
    }

    Ids texts_for(const Field& field, std::size_t row) {
        Ids texts;
        for (int i = draw_.number(field.form == Form::text_or_texts ? 1 : 0, 4); i > 0; --i)
            if (auto text = text_for(field, row); text && std::ranges::find(texts, *text) == texts.end())
                texts.push_back(*text);
        return texts;
    }

    double number_for(const Field& field) {
        const double number = draw_.of(std::vector<double>{1, 20, 7.5, 0.1, 1234567.25, 1e-7, 0.30000000000000004});
        return std::clamp(number, std::max(field.least, field.above_least ? 0.5 : 0), field.most);
    }

    Moment moment(bool with_time) {
        Moment moment{draw_.number(1990, 2030), draw_.number(1, 12), draw_.number(1, 28), {}, {}};
        if (with_time)
            moment.nanosecond_of_day = draw_.number(0, 86399) * 1'000'000'000LL + (draw_.one_in(3) ? 250'000'000 : 0);
        if (with_time && draw_.one_in(2)) moment.offset_minutes = draw_.of(std::vector{0, -300, 330, -30});
        return moment;
    }

    Photos photos() {
        Photos all;
        for (int i = draw_.number(0, 3); i > 0; --i) {
            all.push_back({"p" + std::to_string(i) + ".jpg", {}, {}, {}});
            if (draw_.one_in(2)) all.back().note = draw_.of(odd_texts);
        }
        return all;
    }

    std::optional<Value> map_for(const Field& field) {
        std::map<std::string, Volts> volts;
        std::map<std::string, RecordingColumn> columns;
        for (int i = draw_.number(1, 3); i > 0; --i)
            if (const auto of = address()) {
                volts[*of] = Volts(number_for(field));
                RecordingColumn& column = columns["L" + std::to_string(i) + (draw_.one_in(2) ? " (A)" : "")];
                column.of = *parse_address(*of);
                if (draw_.one_in(2)) column.unit = "kW";
                if (draw_.one_in(3)) column.scale = 0.5;
            }
        if (volts.empty()) return std::nullopt;
        return field.form == Form::columns ? Value(columns) : Value(volts);
    }

    std::optional<Value> value_for(const Field& field, std::size_t row) {
        switch (field.form) {
            case Form::text:
            case Form::text_or_number: {
                const auto text = text_for(field, row);
                return text ? std::optional<Value>(*text) : std::nullopt;
            }
            case Form::texts:
                return texts_for(field, row);
            case Form::text_or_texts: {
                const Ids texts = texts_for(field, row);
                return texts.empty() ? std::nullopt : std::optional<Value>(texts);
            }
            case Form::flag:
                return draw_.one_in(2);
            case Form::number:
                return number_for(field);
            case Form::whole:
                return field.name == "spaces" ? 999 : field.name == "phases" ? 3 : draw_.number(1, 12);
            case Form::wholes:
                return std::vector{draw_.number(1, 9), draw_.number(10, 19)};
            case Form::date:
                return moment(draw_.one_in(2));
            case Form::clock:
                return moment(true);
            case Form::photos:
                return photos();
            case Form::volts_by_address:
            case Form::columns:
                return map_for(field);
            case Form::table:
                break;
        }
        return std::nullopt;
    }

    Draft& draft_;
    Draw& draw_;
};

std::size_t rows_of(const Draft& draft, const KeyTable& table);

template <class Rows>
void disturb(Rows& rows, Draw& draw) {
    if (rows.size() > 1 && draw.one_in(6)) draw.shuffle(rows);
}

/// The rows of every list that nothing names.
template <class Visit>
void each_free_list(Draft& draft, Visit visit) {
    visit(draft.readings), visit(draft.recordings), visit(draft.waveforms), visit(draft.demands), visit(draft.limits);
    visit(draft.rounds), visit(draft.trips), visit(draft.hunts), visit(draft.trials), visit(draft.accepted);
    visit(draft.photos), visit(draft.occupancies), visit(draft.rooms);
}

void remove_some(Draft& draft, Draw& draw) {
    each_free_list(draft, [&](auto& rows) {
        if (!rows.empty() && draw.one_in(5))
            rows.erase(rows.begin() + draw.number(0, static_cast<int>(rows.size()) - 1));
        if (!rows.empty() && draw.one_in(8)) rows.push_back(rows.front());
    });
    if (!draft.loads.empty() && draw.one_in(4)) draft.loads.pop_back();
    std::size_t numbers = 100;
    for (Room& room : draft.rooms) room.id = numbered("room", numbers++);  // a copied one has an id of its own
}

void shuffle_some(Draft& draft, Draw& draw) {
    each_free_list(draft, [&](auto& rows) { disturb(rows, draw); });
    disturb(draft.panels, draw), disturb(draft.breakers, draw), disturb(draft.circuits, draw);
    disturb(draft.outlets, draw), disturb(draft.loads, draw), disturb(draft.sources, draw);
}

bool may_change(const Field& field) { return field.name != "id" && field.name != "spaces" && !field.is_required; }

void change_key(Draft& draft, Draw& draw, const KeyTable& table, std::size_t row) {
    std::vector<const Field*> fields;
    for (const Field& field : table.keys)
        if (may_change(field) && field.group.empty()) fields.push_back(&field);
    const Field& field = *draw.of(fields);
    void* owner = table.row(draft, row);
    if (draw.one_in(3))
        field.clear(owner);
    else
        DraftMaker(draft, draw).set(table, field, owner, row);
}

std::vector<std::pair<const KeyTable*, std::size_t>> all_rows(const Draft& draft) {
    std::vector<std::pair<const KeyTable*, std::size_t>> rows;
    for (const KeyTable& table : all_tables())
        for (std::size_t row = 0; row < rows_of(draft, table); ++row) rows.emplace_back(&table, row);
    return rows;
}

std::size_t rows_of(const Draft& draft, const KeyTable& table) { return row_count(draft, table); }

}  // namespace

std::size_t row_count(const Draft& d, const KeyTable& table) {
    const std::size_t counts[] = {1,
                                  d.dwellings.size(),
                                  d.occupancies.size(),
                                  d.grounding ? 1u : 0u,
                                  d.sources.size(),
                                  d.panels.size(),
                                  d.breakers.size(),
                                  d.circuits.size(),
                                  d.rooms.size(),
                                  d.outlets.size(),
                                  d.loads.size(),
                                  d.managed.size(),
                                  d.readings.size(),
                                  d.recordings.size(),
                                  d.waveforms.size(),
                                  d.demands.size(),
                                  d.limits.size(),
                                  d.rounds.size(),
                                  d.mapping ? 1u : 0u,
                                  d.trips.size(),
                                  d.hunts.size(),
                                  d.trials.size(),
                                  d.accepted.size(),
                                  d.photos.size()};
    return counts[&table - all_tables().data()];
}

Draft random_draft(Draw& draw) {
    Draft draft;
    DraftMaker maker(draft, draw);
    for (const KeyTable& table : all_tables()) {
        const int least = table.name == "source" || table.name == "panel" || table.name == "circuit" ? 1 : 0;
        const int count = table.shape == Shape::one ? draw.number(0, 1) : draw.number(least, 4);
        if (table.name != "survey" && count == 0) continue;
        table.make_rows(draft, static_cast<std::size_t>(count));
        for (int row = 0; row < std::max(count, 1); ++row) maker.fill(table, static_cast<std::size_t>(row));
    }
    return draft;
}

void edit_one_key(Draft& draft, Draw& draw) {
    const auto [table, row] = draw.of(all_rows(draft));
    change_key(draft, draw, *table, row);
}

void edit_at_random(Draft& draft, Draw& draw) {
    for (int i = draw.number(0, 6); i > 0; --i) edit_one_key(draft, draw);
    if (draw.one_in(2)) remove_some(draft, draw);
    if (draw.one_in(2)) shuffle_some(draft, draw);
    if (draw.one_in(6)) draft.grounding.reset();
    if (draw.one_in(6)) draft.mapping.emplace();
    if (draw.one_in(6)) draft.managed.emplace_back().id = "new one";
}
