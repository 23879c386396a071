// SPDX-License-Identifier: MIT
#include "survey/references.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>
#include <unordered_set>

#include "survey/each_table.hpp"
#include "survey/name_reader.hpp"

namespace doorcard {

std::uint32_t named_by(ThingKind kind) {
    switch (kind) {
        case ThingKind::source:
            return named_source;
        case ThingKind::panel:
            return named_panel;
        case ThingKind::breaker:
            return named_breaker;
        case ThingKind::circuit:
        case ThingKind::ground:
            return named_circuit;
        case ThingKind::neutral:
            return named_neutral;
        case ThingKind::outlet:
            return named_outlet;
        case ThingKind::load:
            return named_load;
        case ThingKind::survey:
            break;
    }
    return 0;
}

NameWithin name_within(Within within, const std::string& text) {
    if (within == Within::place && text.starts_with("run:")) return {named_outlet, text.substr(4)};
    const auto address = parse_address(text);
    return address ? NameWithin{named_by(address->kind), address->id} : NameWithin{};
}

std::string NameWithin::with(const std::string& text, const std::string& other) const {
    return text.substr(0, text.find(':') + 1) + other + text.substr(text.find(':') + 1 + id.size());
}

namespace {

/// Gives what a name shall be: the same, another, or nullopt: the name goes, and with it an entry that needs it.
using NewName = std::function<std::optional<std::string>(std::uint32_t kinds, const std::string& id)>;

/// Changes the names of an entry.
class NameChanger {
public:
    explicit NameChanger(const NewName& rename) : rename_(rename) {}
    bool entry_stays() const { return entry_stays_; }

    bool operator()(std::uint32_t kinds, const char*, std::string& id) {
        if (kinds == 0) return true;
        const auto other = rename_(kinds, id);
        if (other) id = *other;
        return other.has_value();
    }
    void operator()(std::uint32_t kinds, const char* key, Ids& ids) {
        keep(ids, [&](std::string& id) { return (*this)(kinds, key, id); });
    }
    /// A list that loses its last name is absent: an empty one would say that somebody looked.
    void operator()(std::uint32_t kinds, const char* key, std::optional<Ids>& ids) {
        if (!ids || ids->empty()) return;
        (*this)(kinds, key, *ids);
        if (ids->empty()) ids.reset();
    }
    void operator()(std::uint32_t kinds, const char* key, std::optional<std::string>& id) {
        if (id && !(*this)(kinds, key, *id)) id.reset();
    }
    bool operator()(Within within, const char* key, std::string& text) {
        const NameWithin name = name_within(within, text);
        std::string id = name.id;
        if (!(*this)(name.kinds, key, id)) return false;
        if (id != name.id) text = name.with(text, id);
        return true;
    }
    void operator()(Within within, const char* key, std::optional<std::string>& text) {
        if (text && !(*this)(within, key, *text)) text.reset();
    }
    void operator()(Within within, const char* key, std::optional<Ids>& texts) {
        if (!texts || texts->empty()) return;
        keep(*texts, [&](std::string& text) { return (*this)(within, key, text); });
        if (texts->empty()) texts.reset();
    }
    void operator()(const char* key, std::optional<Address>& of) {
        if (of && !(*this)(named_by(of->kind), key, of->id)) of.reset();
    }
    void operator()(const char* key, std::map<std::string, Volts>& members) {
        std::map<std::string, Volts> kept;
        for (const auto& [address, volts] : members)
            if (std::string text = address; (*this)(Within::address, key, text)) kept.emplace(text, volts);
        members = std::move(kept);
    }
    void operator()(const char* key, std::map<std::string, RecordingColumn>& members) {
        for (auto at = members.begin(); at != members.end();)
            at = (*this)(named_by(at->second.of.kind), key, at->second.of.id) ? std::next(at) : members.erase(at);
    }
    void needs(std::uint32_t kinds, const char* key, std::string& id) {
        if (!(*this)(kinds, key, id)) entry_stays_ = false;
    }
    void needs(const char* key, Address& of) { needs(named_by(of.kind), key, of.id); }

private:
    template <class Stays>
    static void keep(Ids& ids, Stays stays) {
        Ids kept;
        for (std::string& id : ids)
            if (stays(id) && std::ranges::find(kept, id) == kept.end()) kept.push_back(id);
        ids = std::move(kept);
    }

    const NewName& rename_;
    bool entry_stays_ = true;
};

template <class T>
bool may_name(const Table<T>&, std::uint32_t kinds) {
    return (NameableKinds::in<T>() & kinds) != 0;
}

/// The rows that name it.
template <class T>
std::vector<std::size_t> rows_naming(const Table<T>& rows, std::uint32_t kinds, const std::string& id) {
    std::vector<std::size_t> found;
    if (!may_name(rows, kinds)) return found;
    each_near_name(rows, id, [&](std::size_t at, const T& row) {
        bool names_it = false;
        read_names_of(row, [&](std::uint32_t may_be, const char*, const std::string& named, bool) {
            names_it = names_it || ((may_be & kinds) && named == id);
        });
        if (names_it) found.push_back(at);
    });
    return found;
}

std::unordered_set<std::string_view> neutrals_of(const Survey& survey) {
    std::unordered_set<std::string_view> neutrals;
    for (const Circuit& circuit : survey.circuits)
        if (circuit.names_neutral()) neutrals.insert(*circuit.neutral);
    return neutrals;
}

}  // namespace

bool is_there(const Survey& s, std::uint32_t kinds, const std::string& id) {
    return ((kinds & named_source) && s.sources.contains(id)) || ((kinds & named_panel) && s.panels.contains(id)) ||
           ((kinds & named_breaker) && s.breakers.contains(id)) ||
           ((kinds & named_circuit) && s.circuits.contains(id)) || ((kinds & named_outlet) && s.outlets.contains(id)) ||
           ((kinds & named_load) && s.loads.contains(id)) || ((kinds & named_managed) && s.managed.contains(id));
}

std::vector<Reference> references_to(const Survey& survey, std::uint32_t kinds, const std::string& id) {
    std::vector<Reference> found;
    each_table([&](std::string_view table, auto member) {
        for (const std::size_t at : rows_naming(survey.*member, kinds, id))
            read_names_of((survey.*member)[at],
                          [&](std::uint32_t may_be, const char* key, const std::string& named, bool is_needed) {
                              if ((may_be & kinds) && named == id)
                                  found.push_back({std::string(table), at, key, may_be, named, is_needed});
                          });
    });
    return found;
}

std::vector<Reference> dangling_references(const Survey& survey) {
    std::vector<Reference> found;
    const auto neutrals = neutrals_of(survey);
    each_table([&](std::string_view table, auto member) {
        std::size_t at = 0;
        for (const auto& row : survey.*member) {
            read_names_of(row, [&](std::uint32_t kinds, const char* key, const std::string& id, bool is_needed) {
                const bool there =
                    kinds == 0 || (kinds == named_neutral ? neutrals.contains(id) : is_there(survey, kinds, id));
                if (!there) found.push_back({std::string(table), at, key, kinds, id, is_needed});
            });
            ++at;
        }
    });
    return found;
}

void rename_all(Survey& survey, std::uint32_t kinds, const std::string& id, const std::optional<std::string>& other) {
    const NewName rename = [&](std::uint32_t may_be, const std::string& named) {
        return (may_be & kinds) && named == id ? other : std::optional(named);
    };
    each_table([&](std::string_view, auto member) {
        auto& table = survey.*member;
        const auto naming = rows_naming(table, kinds, id);
        for (auto at = naming.rbegin(); at != naming.rend(); ++at) {
            auto row = table[*at];
            NameChanger changer(rename);
            each_name(row, changer);
            table = changer.entry_stays() ? table.with_row(*at, std::move(row)) : table.without_row(*at);
        }
    });
}

std::string entry_words(const Survey& survey, const Reference& reference) {
    std::string words = fmt::format("{} {}", reference.table, reference.row + 1);
    each_table([&](std::string_view table, auto member) {
        const auto& rows = survey.*member;
        if constexpr (requires { rows[0].id; })
            if (table == reference.table) words = fmt::format("{} \"{}\"", table, rows[reference.row].id);
    });
    return words;
}

}  // namespace doorcard
