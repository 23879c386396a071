// SPDX-License-Identifier: MIT
#include <fmt/format.h>

#include "file/enum_words.hpp"
#include "file/read_list.hpp"

namespace doorcard {
namespace {

std::string quoted(std::string_view text) {
    std::string code = "\"";
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\') code += '\\';
        if (byte < 0x20 || byte == 0x7F)
            code += fmt::format("\\u{:04X}", byte);
        else
            code += c;
    }
    return code + '"';
}

template <class Item, class Write>
std::string list_of(const std::vector<Item>& items, Write write) {
    std::string code;
    for (const Item& item : items) code += (code.empty() ? "" : ", ") + write(item);
    return "[" + code + "]";
}

std::string code_of(const std::string& text) { return quoted(text); }
std::string code_of(bool flag) { return flag ? "true" : "false"; }
std::string code_of(int number) { return fmt::format("{}", number); }
std::string code_of(double number) { return fmt::format("{}", number); }
template <int A, int V, int T, int L, int R, int M>
std::string code_of(Quantity<A, V, T, L, R, M> quantity) {
    return code_of(quantity.value);
}
template <class Word>
requires std::is_enum_v<Word> std::string code_of(Word word) {
    return quoted(enum_words<Word>[static_cast<std::size_t>(word)]);
}
template <class Item>
std::string code_of(const std::vector<Item>& items) {
    return list_of(items, [](const Item& item) { return code_of(item); });
}

/// Lines `key = value`, and the same between braces.
class Keys {
public:
    template <class T>
    Keys& add(std::string_view key, const std::optional<T>& value) {
        if (value) put(key, code_of(*value));
        return *this;
    }
    Keys& put(std::string_view key, std::string code) {
        lines_.push_back(fmt::format("{} = {}", key, code));
        return *this;
    }
    Keys& put_braced(std::string_view key, const Keys& inner) {
        if (inner.lines_.empty()) return *this;
        std::string code;
        for (const std::string& line : inner.lines_) code += (code.empty() ? "" : ", ") + line;
        return put(key, "{ " + code + " }");
    }
    std::string entry(std::string_view header) const {
        std::string text = fmt::format("\n[[{}]]\n", header);
        for (const std::string& line : lines_) text += line + "\n";
        return text;
    }

private:
    std::vector<std::string> lines_;
};

std::string one_or_list(const Ids& ids) { return ids.size() == 1 ? quoted(ids[0]) : code_of(ids); }

std::string text_of(const Source& source) {
    Keys keys;
    keys.put("id", quoted(source.id)).add("kind", source.kind).add("system", source.system);
    return keys.entry("source");
}

std::string text_of(const Panel& panel) {
    Keys keys;
    keys.put("id", quoted(panel.id));
    if (!panel.fed_by.empty()) keys.put("fed_by", one_or_list(panel.fed_by));
    keys.add("system", panel.system).add("main_a", panel.main_a).add("spaces", panel.spaces);
    keys.add("empty_spaces", panel.empty_spaces).add("note", panel.note);
    return keys.entry("panel");
}

std::string text_of(const Breaker& breaker) {
    Keys keys;
    keys.put("panel", quoted(breaker.panel)).put("spaces", code_of(breaker.spaces));
    if (!breaker.halves.empty())
        keys.put("half", breaker.halves.size() == 1
                             ? quoted(std::string(1, breaker.halves[0]))
                             : list_of(breaker.halves, [](char c) { return quoted(std::string(1, c)); }));
    keys.add("legs", breaker.legs)
        .add("amps", breaker.amps)
        .add("device", breaker.device)
        .add("guards", breaker.guards);
    keys.add("tied_with", breaker.tied_with).add("state", breaker.state).add("off_why", breaker.off_why);
    keys.add("old_label", breaker.old_label).add("note", breaker.note);
    return keys.entry("breaker");
}

Keys keys_of(const Wire& wire) {
    Keys keys;
    keys.add("size", wire.size).add("metal", wire.metal).add("insulation", wire.insulation);
    if (wire.length) keys.put(wire.length->in_metres ? "length_m" : "length_ft", code_of(wire.length->written));
    keys.add("method", wire.method);
    return keys;
}

std::string text_of(const Circuit& circuit) {
    Keys keys;
    keys.put("id", quoted(circuit.id));
    if (!circuit.breakers.empty()) keys.put("breaker", one_or_list(circuit.breakers));
    keys.add("neutral", circuit.neutral);
    if (circuit.wire) keys.put_braced("wire", keys_of(*circuit.wire));
    if (circuit.ground)
        keys.put_braced("ground", Keys().add("size", circuit.ground->size).add("kind", circuit.ground->kind));
    if (circuit.traced) keys.put_braced("traced", Keys().add("how", circuit.traced->how));
    keys.add("note", circuit.note);
    return keys.entry("circuit");
}

std::string text_of(const Load& load) {
    Keys keys;
    keys.put("id", quoted(load.id)).add("circuit", load.circuit).add("title", load.title).add("va", load.va);
    keys.add("watts", load.watts).add("duty", load.duty).add("continuous", load.continuous).add("note", load.note);
    return keys.entry("load");
}

std::string text_of(const Reading& reading) {
    Keys keys;
    keys.put("of", quoted(reading.of.text())).add("amps", reading.amps).add("note", reading.note);
    return keys.entry("reading");
}

constexpr std::string_view heading =
    R"(# A survey for doorcard, begun from an old list. All in it is a claim: amperes, poles and guards as the list says
# them, its texts as old labels, its circuits as the old directory names them. Look, trace, and write what you find.
# What is left out is not seen or not known, never a fact. All keys: docs/survey-file.md
format = 1
)";

template <class Things>
void add_all(std::string& text, const Things& things) {
    for (const auto& thing : things) text += text_of(thing);
}

}  // namespace

std::string listed_survey_text(const Survey& survey) {
    std::string text(heading);
    add_all(text, survey.sources);
    add_all(text, survey.panels);
    add_all(text, survey.breakers);
    add_all(text, survey.circuits);
    add_all(text, survey.loads);
    add_all(text, survey.readings);
    return text;
}

}  // namespace doorcard
