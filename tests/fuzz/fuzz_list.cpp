// SPDX-License-Identifier: MIT
// fuzz_list SEEDS [COUNT [FIRST]]: the reader of lists on COUNT inputs that follow from their numbers alone. Whatever
// the bytes: what was read, written as a survey file, reads as the same survey and can be assessed; complaints have
// places and words.
#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <random>

#include "assess/assessment.hpp"
#include "file/read_list.hpp"
#include "file/read_survey.hpp"
#include "fuzz/seeds.hpp"

namespace {

using namespace doorcard;
constexpr unsigned most_seconds_an_input = 20;
long current = 0;

void demand(bool holds, const char* what, const std::string& input) {
    if (holds) return;
    std::fprintf(stderr, "fuzz_list: input %ld: broken: %s\n%s\n", current, what, input.c_str());
    std::abort();
}

/// Cells and pieces that lists have, and some that they should not.
const Texts& odd_cells() {
    static const Texts cells = {"\"",
                                "\"\"\"\"",
                                ",",
                                ";",
                                "\t",
                                "\n",
                                "\r\n",
                                "ditto",
                                "-",
                                "1",
                                "2",
                                "4",
                                "2,4",
                                "2-4",
                                "2/4",
                                "13a",
                                "13b,15a",
                                "1-999",
                                "4-Feb",
                                "2/4/2026",
                                "999",
                                "1000",
                                "-1",
                                "0",
                                "1e9",
                                "20/2",
                                "30/3P",
                                "15/20",
                                "2P30",
                                "Spare",
                                "Space",
                                "GFCI",
                                "AFCI/GFCI",
                                "DF",
                                "Total",
                                "Ckt",
                                "Load",
                                "Amps",
                                "panel",
                                "A:1",
                                "MAIN",
                                "utility",
                                "'=1",
                                "=1+1",
                                "\xF1",
                                "\xC3\xB1",
                                "\xEF\xBB\xBF",
                                "\xE2\x80\xAE",
                                "\\",
                                "''",
                                "a b",
                                "N3",
                                "own",
                                "MAIN:7",
                                "arc+ground",
                                "12/2 Cu",
                                "1,200",
                                "1.2 kVA",
                                std::string(1, '\0'),
                                std::string(300, 'x')};
    return cells;
}

class Changes {
public:
    Changes(const Texts& seeds, long number) : seeds_(seeds), random_(static_cast<std::uint64_t>(number)) {}

    std::string input() {
        std::string text = pick(seeds_);
        for (std::size_t left = below(8); left > 0; --left) change(text);
        return text;
    }

private:
    std::size_t below(std::size_t bound) { return bound == 0 ? 0 : static_cast<std::size_t>(random_() % bound); }
    const std::string& pick(const Texts& texts) { return texts[below(texts.size())]; }

    std::pair<std::size_t, std::size_t> some(const std::string& text, std::string_view ends) {
        const std::size_t before = text.find_last_of(ends, below(text.size()));
        const std::size_t begin = before == std::string::npos ? 0 : before + 1;
        return {begin, std::min(text.find_first_of(ends, begin), text.size()) - begin};
    }
    void change(std::string& text) {
        const auto [cell, cell_size] = some(text, ",;\t\n");
        const auto [line, line_size] = some(text, "\n");
        const std::string row = text.substr(line, line_size) + "\n";
        switch (below(8)) {
            case 0:
            case 1:
                text.replace(cell, cell_size, pick(odd_cells()));
                return;
            case 2:
                text.insert(below(text.size() + 1), pick(odd_cells()));
                return;
            case 3:
                text.erase(line, line_size);
                return;
            case 4:
                text.insert(some(text, "\n").first, row);
                return;
            case 5:
                text.insert(some(text, "\n").first, some_row());
                return;
            case 6:
                if (!text.empty()) text[below(text.size())] = static_cast<char>(random_());
                return;
            default:
                text.resize(below(text.size() + 1));
        }
    }
    std::string some_row() {
        const std::string& seed = pick(seeds_);
        const auto [line, size] = some(seed, "\n");
        return seed.substr(line, size) + "\n";
    }

    const Texts& seeds_;
    std::mt19937_64 random_;
};

ListOptions some_options(std::size_t number) {
    ListOptions options;
    if (number % 3 == 0) options.spaces = 24;
    if (number % 4 == 0) options.panel = "LP-1";
    if (number % 5 == 0) options.system = System::split_120_240;
    if (number % 7 == 0) options.columns = {{"Ckt", Column::space}, {"2", Column::description}};
    return options;
}

void demand_complaints(const std::vector<Complaint>& complaints, const std::string& input) {
    const auto lines = static_cast<std::size_t>(std::ranges::count(input, '\n') + std::ranges::count(input, '\r')) + 1;
    demand(std::ranges::is_sorted(complaints, {}, &Complaint::place), "complaints by place", input);
    for (const Complaint& complaint : complaints) {
        demand(complaint.place.line >= 1 && complaint.place.line <= lines, "a complaint's line", input);
        demand(complaint.place.column >= 1 && complaint.place.column <= input.size() + 1, "a complaint's column",
               input);
        demand(!complaint.wrong.empty() && !complaint.right.empty(), "a complaint's words", input);
    }
}

void run_one(const std::string& input, const ListOptions& options) {
    ::alarm(most_seconds_an_input);
    const ListRead list = read_list(input, options);
    demand_complaints(list.refused, input);
    const auto read = read_survey({"fuzz", listed_survey_text(list.survey)});
    demand(read.has_value(), "what is written is read", input);
    demand(read->survey == list.survey, "and is the same survey", input);
    for (const Circuit& circuit : list.survey.circuits) {
        demand(!circuit.purpose, "a text that became a purpose", input);
        demand(circuit.traced && circuit.traced->how == "old-directory", "a circuit that is no claim", input);
    }
    const Network network = network_of(read->survey);
    static const RuleBook book = *built_in_book("NEC-2023");
    demand(!assess(network, book).panels.empty() || read->survey.panels.empty(), "it is assessed", input);
}

extern "C" void say_which(int signal) {
    std::fprintf(stderr, "fuzz_list: input %ld: %s\n", current, signal == SIGALRM ? "takes too long" : "crashed");
    std::signal(signal, SIG_DFL);
    std::raise(signal == SIGALRM ? SIGABRT : signal);
}

}  // namespace

int main(int count_of_words, char** words) {
    if (count_of_words < 2) return std::fprintf(stderr, "usage: fuzz_list SEEDS [COUNT [FIRST]]\n"), 2;
    const Texts seeds = seeds_in(words[1]);
    const long count = count_of_words > 2 ? std::atol(words[2]) : 3000;
    const long first = count_of_words > 3 ? std::atol(words[3]) : 1;
    if (seeds.empty() || count < 1) return std::fprintf(stderr, "fuzz_list: no seeds, or no inputs\n"), 2;
    for (const int signal : {SIGALRM, SIGSEGV}) std::signal(signal, say_which);
    for (const std::string& seed : seeds) run_one(seed, {});
    for (current = first; current < first + count; ++current)
        run_one(Changes(seeds, current).input(), some_options(static_cast<std::size_t>(current)));
    std::printf("fuzz_list: %ld inputs, none broke it\n", count);
    return 0;
}
