// SPDX-License-Identifier: MIT
// fuzz_NAME SEEDS [COUNT [FIRST]]: the target on COUNT inputs, made from the surveys of a folder by changes that
// follow from the number of the input alone, so that `fuzz_NAME SEEDS 1 N` repeats input N.
#include <sys/resource.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <random>
#include <string>
#include <vector>

#include "fuzz/seeds.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

namespace {

constexpr unsigned most_seconds_an_input = 20;
volatile std::sig_atomic_t current = 0;

extern "C" void say_which(int signal) {
    std::fprintf(stderr, "%s: input %ld: %s\n", program_invocation_short_name, static_cast<long>(current),
                 signal == SIGALRM ? "takes too long" : "crashed");
    std::signal(signal, SIG_DFL);
    std::raise(signal == SIGALRM ? SIGABRT : signal);
}

const Texts& odd_words() {
    static const Texts words = {"\"",
                                "'",
                                "\"\"\"",
                                "[",
                                "]",
                                "[[",
                                "{",
                                "}",
                                "=",
                                ".",
                                ",",
                                "#",
                                "\n",
                                "\r",
                                "\r\n",
                                std::string(1, '\0'),
                                "\xEF\xBB\xBF",
                                "\xFF",
                                "\xC3",
                                "\xED\xA0\x80",
                                "\\u0000",
                                "\\x",
                                "1e999",
                                "99999999999999999999",
                                "2026-02-30",
                                "9999-12-31T23:59:60Z",
                                "format = 2\n",
                                "[[breaker]]\n",
                                "[survey]\n",
                                "half = \"a\"\n",
                                "upstream = \"1\"\n",
                                "id = \"A\"\n"};
    return words;
}

/// Values that TOML allows, whatever the reader thinks of them.
const Texts& odd_values() {
    static const Texts values = {"-1",
                                 "0",
                                 "1",
                                 "-0.0",
                                 "nan",
                                 "inf",
                                 "0x7fffffffffffffff",
                                 "1e308",
                                 "2.5",
                                 "true",
                                 "07:32:00",
                                 "2026-01-01",
                                 "0000-01-01T00:00:00+23:59",
                                 "9999-12-31T23:59:59Z",
                                 "\"\"",
                                 "\"own\"",
                                 "\"home-run\"",
                                 "\"survey:\"",
                                 "\"panel:MAIN/AB\"",
                                 "\"1\"",
                                 "\"A\"",
                                 "\"A:7a+9b\"",
                                 "\"A:1+3+5\"",
                                 "[]",
                                 "{}",
                                 "[5, 5]",
                                 "[1]",
                                 "[7, 9, 11]",
                                 "[999999999]",
                                 "[\"a\", \"b\"]",
                                 "[\"A:7a+9b\", \"utility\"]",
                                 "{ size = \"14\" }",
                                 "[[1], {}]"};
    return values;
}

/// Makes an input out of the seeds.
class Changes {
public:
    Changes(const Texts& seeds, std::uint64_t number) : seeds_(seeds), random_(number) {}

    /// Three of four keep to what TOML allows, for the most part.
    std::string input() {
        std::string text = pick(seeds_);
        const bool keeps_form = below(4) != 0;
        for (std::size_t left = 1 + below(6); left > 0; --left) keeps_form ? change_entries(text) : change_bytes(text);
        text.resize(std::min<std::size_t>(text.size(), 1u << 20));
        return text;
    }

private:
    std::size_t below(std::size_t bound) { return bound == 0 ? 0 : static_cast<std::size_t>(random_() % bound); }
    const std::string& pick(const Texts& texts) { return texts[below(texts.size())]; }

    /// From the start of a line to the end of one.
    std::pair<std::size_t, std::size_t> some_lines(const std::string& text) {
        const std::size_t begin = text.rfind('\n', below(text.size())) + 1;
        std::size_t end = begin;
        for (std::size_t lines = 1 + below(5); lines > 0 && end < text.size(); --lines)
            end = std::min(text.find('\n', end), text.size() - 1) + 1;
        return {std::min(begin, end), end - std::min(begin, end)};
    }
    /// A text in quotes, without them; {npos, 0} where there is none.
    std::pair<std::size_t, std::size_t> some_quoted(const std::string& text) {
        const std::size_t open = text.find('"', below(text.size()));
        const std::size_t close = open == std::string::npos ? open : text.find('"', open + 1);
        if (close == std::string::npos) return {std::string::npos, 0};
        return {open + 1, close - open - 1};
    }

    /// From one header to the next; all where there is none.
    std::pair<std::size_t, std::size_t> some_entry(const std::string& text) {
        const std::size_t header = text.find("\n[", below(text.size()));
        if (header == std::string::npos) return {0, 0};
        const std::size_t next = std::min(text.find("\n[[", header + 1), text.size() - 1);
        return {header + 1, next > header ? next - header : 0};
    }

    void change_entries(std::string& text) {
        if (text.empty()) return;
        switch (below(8)) {
            case 0:
                return repeat(text, some_entry(text), below(40) == 0 ? 3000 : 1 + below(2));
            case 1:
                return move(text, some_entry(text));
            case 2:
                return splice(text);
            case 3: {
                const auto [begin, size] = some_entry(text);
                text.erase(begin, size);
                return;
            }
            case 4:
            case 5:
                return replace_value(text, pick(odd_values()));
            default:
                return exchange_quoted(text);
        }
    }
    void change_bytes(std::string& text) {
        if (text.empty()) return;
        switch (below(8)) {
            case 0:
                text[below(text.size())] = static_cast<char>(random_());
                return;
            case 1:
                text.insert(below(text.size()), pick(odd_words()));
                return;
            case 2: {
                const auto [begin, size] = some_lines(text);
                text.erase(begin, size);
                return;
            }
            case 3:
                return repeat(text, some_lines(text), 1 + below(3));
            case 4:
                return move(text, some_lines(text));
            case 5:
                return replace_value(text, pick(odd_words()));
            case 6:
                return repeat_word(text);
            default:
                text.resize(below(text.size()));
        }
    }
    static void repeat(std::string& text, std::pair<std::size_t, std::size_t> part, std::size_t times) {
        const std::string lines = text.substr(part.first, part.second);
        std::string all;
        while (times-- > 0) all += lines;
        text.insert(part.first, all);
    }
    void splice(std::string& text) {
        const std::string& other = pick(seeds_);
        const auto [begin, size] = some_entry(other);
        text.insert(some_entry(text).first, other, begin, size);
    }
    void move(std::string& text, std::pair<std::size_t, std::size_t> part) {
        const std::string lines = text.substr(part.first, part.second);
        text.erase(part.first, part.second);
        text.insert(text.empty() ? 0 : some_entry(text).first, lines);
    }
    void exchange_quoted(std::string& text) {
        const auto [begin, size] = some_quoted(text);
        const auto [from, length] = some_quoted(text);
        if (begin == std::string::npos || from == std::string::npos) return;
        text.replace(begin, size, std::string(text, from, length));
    }
    void replace_value(std::string& text, const std::string& value) {
        const std::size_t equals = text.find("= ", below(text.size()));
        if (equals == std::string::npos) return;
        text.replace(equals + 2, std::min(text.find('\n', equals), text.size()) - equals - 2, value);
    }
    void repeat_word(std::string& text) {
        static constexpr std::array<std::string_view, 8> words = {"a.",   "[",       "{ a = ", ".",
                                                                  "'a'.", "[[a]]\n", "x",      "\"a\","};
        const std::string_view word = words[below(words.size())];
        std::string all;
        for (std::size_t times = below(1u << below(13)); times > 0; --times) all += word;
        text.insert(below(text.size()), all);
    }

    const Texts& seeds_;
    std::mt19937_64 random_;
};

/// A sanitizer needs all addresses for itself.
void hold_memory() {
#if !defined(__SANITIZE_ADDRESS__)
    constexpr rlim_t most_bytes = rlim_t{1} << 30;
    const rlimit limit{most_bytes, most_bytes};
    ::setrlimit(RLIMIT_AS, &limit);
#endif
}

void run_one(const Texts& seeds, long number) {
    current = static_cast<std::sig_atomic_t>(number);
    const std::string input = Changes(seeds, static_cast<std::uint64_t>(number)).input();
    ::alarm(most_seconds_an_input);
    LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(input.data()), input.size());
}

}  // namespace

int main(int count_of_words, char** words) {
    if (count_of_words < 2) return std::fprintf(stderr, "usage: %s SEEDS [COUNT [FIRST]]\n", words[0]), 2;
    const Texts seeds = seeds_in(words[1]);
    const long count = count_of_words > 2 ? std::atol(words[2]) : 3000;
    const long first = count_of_words > 3 ? std::atol(words[3]) : 1;
    if (seeds.empty() || count < 1) return std::fprintf(stderr, "%s: no seeds, or no inputs\n", words[0]), 2;
    for (const int signal : {SIGALRM, SIGABRT, SIGSEGV}) std::signal(signal, say_which);
    hold_memory();
    for (const std::string& seed : seeds)
        LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(seed.data()), seed.size());
    for (long number = first; number < first + count; ++number) run_one(seeds, number);
    std::printf("%s: %ld inputs, none broke it\n", program_invocation_short_name, count);
    return 0;
}
