// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <optional>
#include <string>

#include "survey/names.hpp"

namespace doorcard {

/// Tells every name of an entry, changing nothing.
template <class Tell>
class NameReader {
public:
    explicit NameReader(Tell& tell) : tell_(tell) {}

    void operator()(std::uint32_t kinds, const char* key, const std::string& id) { tell_(kinds, key, id, false); }
    void operator()(std::uint32_t kinds, const char* key, const Ids& ids) {
        for (const std::string& id : ids) tell_(kinds, key, id, false);
    }
    template <class T>
    void operator()(std::uint32_t kinds, const char* key, const std::optional<T>& member) {
        if (member) (*this)(kinds, key, *member);
    }
    void operator()(Within within, const char* key, const std::string& text) {
        const NameWithin name = name_within(within, text);
        if (name.kinds) tell_(name.kinds, key, name.id, false);
    }
    void operator()(Within within, const char* key, const std::optional<std::string>& text) {
        if (text) (*this)(within, key, *text);
    }
    void operator()(Within within, const char* key, const std::optional<Ids>& texts) {
        for (const std::string& text : texts.value_or(Ids{})) (*this)(within, key, text);
    }
    void operator()(const char* key, const std::optional<Address>& of) {
        if (of) (*this)(named_by(of->kind), key, of->id);
    }
    void operator()(const char* key, const std::map<std::string, Volts>& members) {
        for (const auto& [address, volts] : members) (*this)(Within::address, key, address);
    }
    void operator()(const char* key, const std::map<std::string, RecordingColumn>& members) {
        for (const auto& [name, column] : members) (*this)(named_by(column.of.kind), key, column.of.id);
    }
    void needs(std::uint32_t kinds, const char* key, const std::string& id) { tell_(kinds, key, id, true); }
    void needs(const char* key, const Address& of) { needs(named_by(of.kind), key, of.id); }

private:
    Tell& tell_;
};

/// Calls `tell(kinds, key, id, is_needed)` for every name in an entry.
template <class T, class Tell>
void read_names_of(const T& row, Tell tell) {
    NameReader reader(tell);
    each_name(row, reader);
}

/// Calls `visit(place, row)` for rows of a table that name something of that id, and for some that do not.
template <class T, class Visit>
void each_near_name(const Table<T>& table, std::string_view id, Visit visit) {
    const auto marks_of = [](const T& row, std::vector<std::uint32_t>& marks) {
        read_names_of(row, [&](std::uint32_t kinds, const char*, const std::string& named, bool) {
            if (kinds != 0) marks.push_back(IdIndex::hash(named));
        });
    };
    table.each_near(IdIndex::hash(id), marks_of, visit);
}

/// What the entries of a table may name, whatever stands in them.
class NameableKinds {
public:
    template <class T>
    static std::uint32_t in() {
        NameableKinds all;
        const T row{};
        each_name(row, all);
        return all.kinds_;
    }
    template <class Member>
    void operator()(std::uint32_t kinds, const char*, const Member&) {
        kinds_ |= kinds;
    }
    template <class Member>
    void operator()(Within, const char*, const Member&) {
        kinds_ = anything;
    }
    template <class Member>
    void operator()(const char*, const Member&) {
        kinds_ = anything;
    }
    template <class... Parts>
    void needs(const Parts&... parts) {
        (*this)(parts...);
    }

private:
    static constexpr std::uint32_t anything = named_anything;
    std::uint32_t kinds_ = 0;
};

}  // namespace doorcard
