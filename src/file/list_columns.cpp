// SPDX-License-Identifier: MIT
#include "file/list_columns.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <set>

#include "base/folded.hpp"
#include "file/list_spaces.hpp"

namespace doorcard {
namespace {

struct ColumnWord {
    Column column;
    std::string_view word;
};

// Words of `--columns`.
constexpr std::array<ColumnWord, 16> names = {{{Column::space, "space"},
                                               {Column::description, "description"},
                                               {Column::amps, "amps"},
                                               {Column::poles, "poles"},
                                               {Column::type, "type"},
                                               {Column::guards, "guards"},
                                               {Column::room, "room"},
                                               {Column::wire, "wire"},
                                               {Column::va, "va"},
                                               {Column::kva, "kva"},
                                               {Column::watts, "watts"},
                                               {Column::kilowatts, "kilowatts"},
                                               {Column::leg, "leg"},
                                               {Column::panel, "panel"},
                                               {Column::note, "note"},
                                               {Column::ignored, "ignored"}}};

// Words at the head of a column, folded, what is no letter or digit as a blank ('#' stays). Common practice, no source.
constexpr std::pair<Column, std::string_view> heads[] = {
    {Column::space,
     "space|spaces|circuit|circuits|ckt|ckts|cct|cir|circ|no|nr|#|num|number|ckt no|ckt #|"
     "circuit no|circuit #|circuit number|breaker no|breaker #|breaker number|pos|position|"
     "slot|pole space|space no|space #|cb no|cb #|espacio|espacios|circuito|circuitos|"
     "numero|posicion|n o|no circuito"},
    {Column::description,
     "description|descriptions|desc|descr|label|labels|load|loads|load served|loads served|"
     "load description|circuit description|description of load|serves|serving|served|feeds|"
     "use|name|circuit name|designation|directory|descripcion|etiqueta|carga|cargas|sirve|"
     "sirve a|alimenta|uso|nombre"},
    {Column::amps,
     "amps|amp|ampere|amperes|a|breaker|breakers|brkr|bkr|size|trip|rating|breaker size|"
     "breaker amps|breaker a|breaker rating|trip amps|trip a|ocpd|cb|cb size|cb amps|"
     "amps poles|breaker amps poles|amp trip|interruptor|amperios|amperaje|capacidad"},
    {Column::poles, "poles|pole|p|# poles|no poles|no of poles|number of poles|# of poles|polos|polo"},
    {Column::type, "type|breaker type|kind|device|tipo"},
    {Column::guards, "guards|guard|gfci|afci|gfci afci|afci gfci|protection|proteccion"},
    {Column::room, "room|rooms|area|location|cuarto|habitacion|lugar|ubicacion"},
    {Column::wire, "wire|wire size|conductor|conductors|conductor size|cable|awg|calibre"},
    {Column::va, "va|load va|va load|connected va|volt amperes|carga va"},
    {Column::kva, "kva|load kva|connected kva|carga kva"},
    {Column::watts, "watts|watt|w|load w|load watts|vatios|carga w"},
    {Column::kilowatts, "kw|load kw|carga kw"},
    {Column::leg, "leg|legs|phase|phases|ph|fase|fases|pierna"},
    {Column::panel, "panel|panelboard|panel name|panel id|loadcenter|load center|tablero"},
    {Column::note, "notes|note|remarks|remark|comments|comment|notas|nota|observaciones|comentarios"},
};

const std::map<std::string_view, Column>& head_words() {
    static const auto words = [] {
        std::map<std::string_view, Column> all;
        for (const auto& [column, list] : heads)
            for (std::size_t from = 0; from <= list.size();) {
                const std::size_t bar = std::min(list.find('|', from), list.size());
                all.emplace(list.substr(from, bar - from), column);
                from = bar + 1;
            }
        return all;
    }();
    return words;
}

std::string head_of(std::string_view cell) {
    constexpr std::size_t longest = 60;
    if (cell.size() > longest) return {};
    std::string head;
    for (const char c : folded(cell)) {
        const auto byte = static_cast<unsigned char>(c);
        const bool kept = byte >= 0x80 || std::isalnum(byte) != 0 || c == '#';
        if (kept)
            head += c;
        else if (!head.empty() && head.back() != ' ')
            head += ' ';
    }
    return std::string(trimmed(head));
}

std::optional<Column> column_of(const ListCell& cell, std::size_t index, const NamedColumns& named) {
    const std::string head = head_of(cell.text);
    for (const NamedColumn& given : named)
        if ((!head.empty() && head_of(given.head) == head) || given.head == std::to_string(index + 1))
            return given.column;
    const auto known = head_words().find(head);
    return known == head_words().end() ? std::nullopt : std::optional(known->second);
}

using Heads = std::vector<std::optional<Column>>;

std::vector<std::size_t> where(const Heads& heads, Column column) {
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < heads.size(); ++i)
        if (heads[i] == column) found.push_back(i);
    return found;
}

/// 'No., Circuit, Amps': where nothing else says what it feeds, the second word for a space does. 'Breaker,
/// Description, Amps': where nothing else says the space, 'Breaker' does.
void settle_heads(Heads& heads) {
    auto spaces = where(heads, Column::space);
    auto texts = where(heads, Column::description);
    const auto amps = where(heads, Column::amps);
    const std::size_t sides = spaces.size() / 2;
    if (texts.empty() && spaces.size() >= 2 && spaces.size() % 2 == 0)
        for (std::size_t side = 0; side < sides; ++side) heads[spaces[2 * side + 1]] = Column::description;
    if (spaces.empty() && !texts.empty() && amps.size() == 2 * texts.size())
        for (std::size_t side = 0; side < texts.size(); ++side) heads[amps[2 * side]] = Column::space;
}

/// The first column that belongs to the right half; all where the list is one-sided.
std::size_t right_begin(const Heads& heads) {
    const auto spaces = where(heads, Column::space);
    const auto texts = where(heads, Column::description);
    if (spaces.size() != 2 || texts.size() != 2) return heads.size();
    std::size_t left_end = 0;
    std::size_t right = heads.size();
    for (const auto& [column, name] : names) {
        const auto found = where(heads, column);
        if (found.size() != 2) continue;
        left_end = std::max(left_end, found[0]);
        right = std::min(right, found[1]);
    }
    return right > left_end ? right : std::max(spaces[1], texts[1]);
}

bool both_sides(Column column) { return column == Column::leg || column == Column::panel; }

void put(Side& side, const ListRow& row, const Heads& heads, std::size_t index) {
    const auto column = heads[index];
    if (column == Column::ignored) return;
    if (column && side.at.emplace(*column, index).second) return;
    const std::string head(trimmed(row[index].text));
    side.others.emplace_back(head, index);
}

Sides sides_from(const ListRow& row, Heads heads) {
    settle_heads(heads);
    const std::size_t right = right_begin(heads);
    Sides sides(right < heads.size() ? 2 : 1);
    for (std::size_t i = 0; i < heads.size(); ++i) {
        const bool shared =
            sides.size() == 2 && heads[i] && both_sides(*heads[i]) && where(heads, *heads[i]).size() == 1;
        if (shared)
            for (Side& side : sides) put(side, row, heads, i);
        else
            put(sides[i < right ? 0 : 1], row, heads, i);
    }
    return sides;
}

using Pattern = std::vector<Column>;

/// Orders of columns that lists without a header have.
const std::vector<std::vector<Pattern>>& orders() {
    using enum Column;
    static const std::vector<std::vector<Pattern>> all = {{{space, description, amps}},
                                                          {{space, description, amps}, {space, description, amps}},
                                                          {{description, amps, space}, {space, amps, description}},
                                                          {{amps, description, space}, {space, description, amps}},
                                                          {{space, amps, description}, {description, amps, space}},
                                                          {{space, description}, {space, description}},
                                                          {{description, space}, {space, description}},
                                                          {{space, description}, {description, space}},
                                                          {{space, amps, description}}};
    return all;
}

Sides sides_in_order(const std::vector<Pattern>& order) {
    Sides sides;
    std::size_t index = 0;
    for (const Pattern& pattern : order) {
        Side side;
        for (const Column column : pattern) side.at.emplace(column, index++);
        sides.push_back(std::move(side));
    }
    return sides;
}

std::string_view text_at(const ListRow& row, std::size_t index) {
    return index < row.size() ? trimmed(row[index].text) : std::string_view();
}

/// Points for what stands where it should, against those for what does not.
int fits(const Sides& sides, const ListRow& row) {
    int points = 0;
    for (const Side& side : sides)
        for (const auto& [column, index] : side.at) {
            if (index >= row.size()) points -= 2;
            const std::string_view text = text_at(row, index);
            if (text.empty()) continue;
            const bool digit = std::isdigit(static_cast<unsigned char>(text[0])) != 0;
            if (column == Column::space) points += are_spaces(text) ? 2 : -3;
            if (column == Column::amps) points += digit ? 1 : -1;
            if (column == Column::description) points += digit ? -1 : 1;
        }
    return points;
}

std::size_t columns_of(const Sides& sides) {
    std::size_t count = 0;
    for (const Side& side : sides) count += side.at.size();
    return count;
}

void name_the_rest(Sides& sides, const std::vector<ListRow>& rows, const NamedColumns& named) {
    std::size_t widest = 0;
    for (const ListRow& row : rows) widest = std::max(widest, row.size());
    for (std::size_t i = columns_of(sides); i < std::min<std::size_t>(widest, 100); ++i)
        sides.back().others.emplace_back(fmt::format("column {}", i + 1), i);
    for (const NamedColumn& given : named) {
        std::size_t number = 0;
        for (const char c : given.head)
            number = std::isdigit(static_cast<unsigned char>(c)) ? number * 10 + static_cast<std::size_t>(c - '0') : 0;
        if (number == 0 || number > widest) continue;
        for (Side& side : sides) std::erase_if(side.at, [&](const auto& at) { return at.second == number - 1; });
        for (Side& side : sides) std::erase_if(side.others, [&](const auto& at) { return at.second == number - 1; });
        if (given.column != Column::ignored) sides.front().at[given.column] = number - 1;
    }
}

}  // namespace

std::optional<Column> column_named(std::string_view word) {
    const auto found = std::ranges::find(names, folded(word), &ColumnWord::word);
    return found == names.end() ? std::nullopt : std::optional(found->column);
}

std::string column_names() {
    std::string all;
    for (const ColumnWord& name : names) all.append(all.empty() ? "" : ", ").append(name.word);
    return all;
}

tl::expected<NamedColumns, std::string> named_columns(std::string_view text) {
    NamedColumns named;
    std::size_t begin = 0;
    while (begin <= text.size()) {
        const std::size_t end = std::min(text.find(',', begin), text.size());
        const std::string_view part = trimmed(text.substr(begin, end - begin));
        const std::size_t equals = part.rfind('=');
        const auto column =
            equals == std::string_view::npos ? std::nullopt : column_named(trimmed(part.substr(equals + 1)));
        if (!column || equals == 0) return tl::unexpected(std::string(part));
        named.push_back({std::string(trimmed(part.substr(0, equals))), *column});
        begin = end + 1;
    }
    return named;
}

bool is_named(const std::vector<ListRow>& rows, const NamedColumn& column) {
    const std::string head = head_of(column.head);
    const bool is_number = std::ranges::all_of(column.head, [](unsigned char c) { return std::isdigit(c) != 0; });
    return is_number || std::ranges::any_of(rows, [&](const ListRow& row) {
               return std::ranges::any_of(row, [&](const ListCell& cell) { return head_of(cell.text) == head; });
           });
}

std::optional<Sides> sides_of_header(const ListRow& row, const NamedColumns& named) {
    Heads heads;
    std::size_t known = 0;
    for (std::size_t i = 0; i < row.size(); ++i) {
        if (are_spaces(row[i].text)) return std::nullopt;
        heads.push_back(column_of(row[i], i, named));
        if (heads.back() && !trimmed(row[i].text).empty()) ++known;
    }
    const bool says_space = !where(heads, Column::space).empty() || !where(heads, Column::amps).empty();
    if (known < 2 || !says_space) return std::nullopt;
    Sides sides = sides_from(row, std::move(heads));
    if (!sides.front().at.contains(Column::space)) return std::nullopt;
    return sides;
}

Sides sides_of_rows(const std::vector<ListRow>& rows, const NamedColumns& named) {
    constexpr std::size_t enough = 200;
    Sides best = sides_in_order(orders().front());
    int most = 0;
    for (const auto& order : orders()) {
        const Sides sides = sides_in_order(order);
        int points = 0;
        for (std::size_t i = 0; i < std::min(rows.size(), enough); ++i) points += fits(sides, rows[i]);
        if (points > most) best = sides;
        most = std::max(most, points);
    }
    name_the_rest(best, rows, named);
    return best;
}

}  // namespace doorcard
