// SPDX-License-Identifier: MIT
#pragma once
#include <map>
#include <string>
#include <string_view>
#include <variant>

#include "file/enum_words.hpp"
#include "survey/survey.hpp"

namespace doorcard {

/// A value as it stands in the file, checked, on its way into a member of a thing.
using Value = std::variant<bool, int, double, std::string, Ids, std::vector<int>, Moment, Photos,
                           std::map<std::string, Volts>, std::map<std::string, RecordingColumn>>;

// --- from a value into a member

template <class M>
struct OwnerOf;
template <class T, class V>
struct OwnerOf<V T::*> {
    using type = T;
    using value = V;
};

inline void assign(std::string& to, Value&& v) { to = std::get<std::string>(std::move(v)); }
inline void assign(std::optional<std::string>& to, Value&& v) { to = std::get<std::string>(std::move(v)); }
inline void assign(Ids& to, Value&& v) { to = std::get<Ids>(std::move(v)); }
inline void assign(std::optional<Ids>& to, Value&& v) { to = std::get<Ids>(std::move(v)); }
inline void assign(std::optional<bool>& to, Value&& v) { to = std::get<bool>(v); }
inline void assign(std::optional<int>& to, Value&& v) { to = std::get<int>(v); }
inline void assign(std::optional<double>& to, Value&& v) { to = std::get<double>(v); }
inline void assign(std::vector<int>& to, Value&& v) { to = std::get<std::vector<int>>(std::move(v)); }
inline void assign(std::optional<std::vector<int>>& to, Value&& v) { to = std::get<std::vector<int>>(std::move(v)); }
inline void assign(std::optional<Moment>& to, Value&& v) { to = std::get<Moment>(v); }
inline void assign(std::optional<Photos>& to, Value&& v) { to = std::get<Photos>(std::move(v)); }
inline void assign(std::optional<char>& to, Value&& v) { to = std::get<std::string>(v).front(); }
inline void assign(Address& to, Value&& v) { to = *parse_address(std::get<std::string>(v)); }
inline void assign(std::optional<Address>& to, Value&& v) { to = parse_address(std::get<std::string>(v)); }
inline void assign(std::map<std::string, Volts>& to, Value&& v) {
    to = std::get<std::map<std::string, Volts>>(std::move(v));
}
inline void assign(std::map<std::string, RecordingColumn>& to, Value&& v) {
    to = std::get<std::map<std::string, RecordingColumn>>(std::move(v));
}
inline void assign(std::vector<char>& to, Value&& v) {
    to.clear();
    for (const std::string& half : std::get<Ids>(v)) to.push_back(half.front());
}
template <int... Dimensions>
void assign(std::optional<Quantity<Dimensions...>>& to, Value&& v) {
    to = Quantity<Dimensions...>(std::get<double>(v));
}
template <class E>
E value_of_word(std::string_view word) {
    const auto& words = enum_words<E>;
    std::size_t index = 0;
    while (words.at(index) != word) ++index;
    return static_cast<E>(index);
}
template <class E>
requires std::is_enum_v<E>
void assign(std::optional<E>& to, Value&& v) { to = value_of_word<E>(std::get<std::string>(v)); }
inline void assign(Guards& to, Value&& v) {
    to.emplace();
    for (const std::string& word : std::get<Ids>(v)) to->push_back(value_of_word<Guard>(word));
}

// --- and from a member into a value: nullopt where there is nothing to write

template <class T>
std::optional<Value> held(const std::optional<T>& member);

inline std::optional<Value> held(const std::string& member) { return member; }
inline std::optional<Value> held(const Ids& member) { return member; }
inline std::optional<Value> held(const std::vector<int>& member) { return member; }
inline std::optional<Value> held(const Address& member) { return member.text(); }
inline std::optional<Value> held(const std::map<std::string, Volts>& member) {
    return member.empty() ? std::nullopt : std::optional<Value>(member);
}
inline std::optional<Value> held(const std::map<std::string, RecordingColumn>& member) {
    return member.empty() ? std::nullopt : std::optional<Value>(member);
}
inline std::optional<Value> held(const std::vector<char>& member) {
    Ids letters;
    for (const char half : member) letters.emplace_back(1, half);
    return letters;
}
template <int... Dimensions>
std::optional<Value> held(const Quantity<Dimensions...>& member) {
    return member.value;
}
inline std::optional<Value> held(bool member) { return member; }
inline std::optional<Value> held(int member) { return member; }
inline std::optional<Value> held(double member) { return member; }
inline std::optional<Value> held(char member) { return std::string(1, member); }
inline std::optional<Value> held(const Moment& member) { return member; }
inline std::optional<Value> held(const Photos& member) { return member; }
template <class E>
requires std::is_enum_v<E> std::optional<Value> held(E member) {
    return std::string(enum_words<E>.at(static_cast<std::size_t>(member)));
}
inline std::optional<Value> held(const std::vector<Guard>& member) {
    Ids words;
    for (const Guard guard : member) words.emplace_back(enum_words<Guard>.at(static_cast<std::size_t>(guard)));
    return words;
}
template <class T>
std::optional<Value> held(const std::optional<T>& member) {
    return member ? held(*member) : std::nullopt;
}

}  // namespace doorcard
