// SPDX-License-Identifier: MIT
// Measures doorcard beside the least that the same work needs, each as a process of its own, the best of some runs.
// Usage: bench BIN [small]; BIN holds doorcard and the bare programs. `small` runs all once at a small size.
#include <fmt/format.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;
using Command = std::vector<std::string>;

struct Measure {
    double seconds = 0;  // wall clock, process start included
    double peak_mib = 0;
};

[[noreturn]] void become(const Command& command, const fs::path& output) {
    std::vector<char*> arguments;
    for (const std::string& word : command) arguments.push_back(const_cast<char*>(word.c_str()));  // NOLINT: execv asks
    arguments.push_back(nullptr);
    if (std::freopen(output.c_str(), "w", stdout)) execv(arguments[0], arguments.data());
    _exit(127);
}

// Findings make `check` exit with 1: that is no failure.
Measure run(const Command& command, const fs::path& output = "/dev/null") {
    const auto began = std::chrono::steady_clock::now();
    std::fflush(stdout);  // or the child says it again
    const pid_t child = fork();
    if (child == 0) become(command, output);
    int status = 0;
    rusage used{};
    if (child < 0 || wait4(child, &status, 0, &used) != child) throw std::runtime_error("no process");
    const std::chrono::duration<double> took = std::chrono::steady_clock::now() - began;
    if (!WIFEXITED(status) || WEXITSTATUS(status) > 1)
        throw std::runtime_error(fmt::format("{} failed", fmt::join(command, " ")));
    return {took.count(), static_cast<double>(used.ru_maxrss) / 1024};
}

Measure best(int runs, const Command& command) {
    Measure least = run(command);
    for (int i = 1; i < runs; ++i) {
        const Measure next = run(command);
        least.seconds = std::min(least.seconds, next.seconds);
        least.peak_mib = std::max(least.peak_mib, next.peak_mib);
    }
    return least;
}

class Bench {
public:
    Bench(fs::path bin, int runs) : bin_(std::move(bin)), folder_(bin_.parent_path() / "bench"), runs_(runs) {
        fs::create_directories(folder_);
    }

    // Seconds of `check` on a building of that size.
    double check(const char* title, int panels, int outlets, int readings) {
        const fs::path survey = building(panels, outlets, readings);
        const Measure whole = best(runs_, {bin_ / "doorcard", "check", survey, "--json"});
        const Measure bare = best(runs_, {bin_ / "bare_parse", survey});
        const double megabytes = static_cast<double>(fs::file_size(survey)) / 1e6;
        fmt::print("{}: {:.2f} MB, {} circuits, {} outlets and loads, {} readings\n", title, megabytes, panels * 42,
                   outlets, readings);
        say("doorcard check --json", whole);
        say("bare toml++ parse", bare);
        fmt::print("  ratio {:.2f}\n\n", whole.seconds / bare.seconds);
        return whole.seconds;
    }

    // Edits of that building, one after another.
    void edits(int panels, int outlets, int readings) {
        fmt::print("edits of it, process start and reading apart\n");
        run({bin_ / "reassess_edits", building(panels, outlets, readings)}, folder_ / "edits.txt");
        fmt::print("{}\n", text_of(folder_ / "edits.txt"));
    }

    // The same building on a desk: what is drawn after an edit, and from panel to panel.
    void frames(int panels, int outlets, int readings) {
        fmt::print("its faces on a screen, painted into memory\n");
        run({bin_ / "frames", building(panels, outlets, readings)}, folder_ / "frames.txt");
        fmt::print("{}\n", text_of(folder_ / "frames.txt"));
    }

    void card() {
        const fs::path survey = building(1, 250, 42);
        const Measure whole =
            best(runs_, {bin_ / "doorcard", "card", survey, "--panel", "P001", "-o", folder_ / "card.pdf"});
        const Measure bare = best(runs_, {bin_ / "bare_page", folder_ / "page.pdf"});
        fmt::print("card of 42 circuits to PDF\n");
        say("doorcard card", whole);
        say("bare Pango and Cairo page", bare);
        fmt::print("  ratio {:.2f}\n", whole.seconds / bare.seconds);
    }

private:
    fs::path building(int panels, int outlets, int readings) const {
        const fs::path survey = folder_ / fmt::format("{}.survey.toml", panels);
        const auto word = [](int number) { return std::to_string(number); };
        run({bin_ / "large_survey", word(panels), word(outlets), word(readings)}, survey);
        return survey;
    }

    static std::string text_of(const fs::path& file) {
        std::ifstream in(file);
        return {std::istreambuf_iterator<char>(in), {}};
    }

    static void say(const char* what, const Measure& measure) {
        fmt::print("  {:<26} {:8.3f} s   peak {:6.1f} MiB\n", what, measure.seconds, measure.peak_mib);
    }

    fs::path bin_, folder_;
    int runs_;
};

void measure(const fs::path& bin, bool small) {
    Bench bench(bin, small ? 1 : 5);
    const double hundredth = bench.check("a hundredth of the large building", 2, 500, 100);
    if (!small) {
        const double large = bench.check("the large building", 200, 50'000, 10'000);
        fmt::print("100 times the building took {:.0f} times as long\n\n", large / hundredth);
        bench.edits(200, 50'000, 10'000);
        bench.frames(200, 50'000, 10'000);
    } else {
        bench.edits(2, 500, 100);
        bench.frames(2, 500, 100);
    }
    bench.card();
}

}  // namespace

int main(int count, char** arguments) {
    if (count < 2) return std::fputs("usage: bench BIN [small]\n", stderr), 2;
    try {
        measure(fs::absolute(arguments[1]), count > 2 && std::string(arguments[2]) == "small");
        return 0;
    } catch (const std::exception& error) {
        fmt::print(stderr, "bench: {}\n", error.what());
        return 1;
    }
}
