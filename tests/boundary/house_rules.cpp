// SPDX-License-Identifier: MIT
#include "boundary/house_rules.hpp"

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <sstream>
#include <string_view>

namespace boundary {
namespace {

// A file of `src` includes only from its own folder and from those before it; `ui` stands below all of them.
constexpr std::array stages{"base",    "survey", "file",  "rules",  "network", "records", "assess",
                            "mapping", "hunt",   "sheet", "bundle", "desk",    "cli"};
constexpr std::size_t most_lines = 500;

using Breaches = std::vector<std::string>;

struct Include {
    std::size_t line;
    std::string named;
};

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) lines.push_back(line);
    return lines;
}

std::vector<Include> includes_of(const SourceFile& file) {
    static const std::regex directive(R"(^\s*#\s*include\s*["<]([^">]+)[">])");
    std::vector<Include> found;
    std::size_t number = 0;
    for (const std::string& line : lines_of(file.text)) {
        ++number;
        if (std::smatch match; std::regex_search(line, match, directive)) found.push_back({number, match[1]});
    }
    return found;
}

std::string breach(const SourceFile& file, std::size_t line, const std::string& what) {
    return file.path + ":" + std::to_string(line) + ": " + what;
}

bool is_cpp(const SourceFile& file) { return file.path.ends_with(".cpp") || file.path.ends_with(".hpp"); }
bool is_header(const SourceFile& file) { return file.path.ends_with(".hpp"); }

std::string folder_in(std::string_view path, std::string_view top) {
    if (!path.starts_with(top)) return {};
    path.remove_prefix(top.size());
    const auto slash = path.find('/');
    return slash == std::string_view::npos ? std::string() : std::string(path.substr(0, slash));
}

// Place in the order; stages.size() for a folder that is none of them.
std::size_t stage_of(const std::string& folder) {
    return static_cast<std::size_t>(std::find(stages.begin(), stages.end(), folder) - stages.begin());
}

void check_order(const SourceFile& file, Breaches& out) {
    if (!file.path.starts_with("src/")) return;
    const std::string own = folder_in(file.path, "src/");
    if (stage_of(own) == stages.size()) out.push_back(breach(file, 1, "folder '" + own + "' is no stage"));
    for (const Include& include : includes_of(file)) {
        const std::string folder = folder_in(include.named, "");
        const bool against = stage_of(folder) < stages.size() && stage_of(folder) > stage_of(own);
        if (against || folder == "ui" || folder == "tests")
            out.push_back(breach(file, include.line, "'" + own + "' may not include '" + include.named + "'"));
    }
}

bool starts_with_any(const std::string& text, std::initializer_list<std::string_view> starts) {
    return std::any_of(starts.begin(), starts.end(), [&](auto start) { return text.starts_with(start); });
}

void check_libraries(const SourceFile& file, Breaches& out) {
    const bool ours = file.path.starts_with("src/") || file.path.starts_with("ui/");
    for (const Include& include : includes_of(file)) {
        if (file.path.starts_with("src/") && include.named.starts_with("wx/"))
            out.push_back(breach(file, include.line, "no wx in src"));
        else if (ours && is_header(file) &&
                 starts_with_any(include.named, {"toml++/", "boost/graph/", "cairo", "pango/", "gtk/"}))
            out.push_back(breach(file, include.line, "'" + include.named + "' belongs in a .cpp file"));
    }
}

void check_licence(const SourceFile& file, Breaches& out) {
    const auto lines = lines_of(file.text);
    const std::string wanted = is_cpp(file) ? "// SPDX-License-Identifier: MIT" : "# SPDX-License-Identifier: MIT";
    const auto last = lines.begin() + static_cast<std::ptrdiff_t>(std::min<std::size_t>(2, lines.size()));
    if (std::find(lines.begin(), last, wanted) == last) out.push_back(breach(file, 1, "no licence line"));
}

void check_length(const SourceFile& file, Breaches& out) {
    const std::size_t count = lines_of(file.text).size();
    if (count > most_lines) out.push_back(breach(file, count, "over 500 lines"));
}

void check_finished(const SourceFile& file, Breaches& out) {
    static const std::regex note(
        "\\b(TO"
        "DO|FIX"
        "ME)\\b");
    std::size_t number = 0;
    for (const std::string& line : lines_of(file.text)) {
        ++number;
        if (std::regex_search(line, note)) out.push_back(breach(file, number, "a note of unfinished work"));
    }
}

// Which of the files an include names: as written from src, from tests or from the top.
std::string resolved(const std::map<std::string, const SourceFile*>& files, const std::string& named) {
    for (const char* top : {"src/", "tests/", ""})
        if (files.contains(top + named)) return top + named;
    return {};
}

class CycleSearch {
public:
    CycleSearch(const std::map<std::string, const SourceFile*>& files, Breaches& out) : files_(files), out_(out) {}

    void from(const std::string& path) {
        if (!state_.emplace(path, open).second) return;
        for (const Include& include : includes_of(*files_.at(path))) follow(path, include);
        state_[path] = done;
    }

private:
    enum State { open, done };

    void follow(const std::string& path, const Include& include) {
        const std::string next = resolved(files_, include.named);
        if (next.empty()) return;
        const auto seen = state_.find(next);
        if (seen != state_.end() && seen->second == open)
            out_.push_back(breach(*files_.at(path), include.line, "closes a cycle of includes: '" + next + "'"));
        from(next);
    }

    const std::map<std::string, const SourceFile*>& files_;
    Breaches& out_;
    std::map<std::string, State> state_;
};

void check_cycles(const std::vector<SourceFile>& all, Breaches& out) {
    std::map<std::string, const SourceFile*> files;
    for (const SourceFile& file : all)
        if (is_cpp(file)) files[file.path] = &file;
    CycleSearch search(files, out);
    for (const auto& [path, file] : files) search.from(path);
}

bool begins_with_shebang(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return in.get() == '#' && in.get() == '!';
}

bool is_source(const std::filesystem::directory_entry& entry) {
    if (!entry.is_regular_file()) return false;
    const std::string extension = entry.path().extension();
    return extension == ".cpp" || extension == ".hpp" || begins_with_shebang(entry.path());
}

std::string text_of(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

}  // namespace

std::vector<std::string> breaches(const std::vector<SourceFile>& files) {
    Breaches found;
    for (const SourceFile& file : files) {
        if (is_cpp(file)) check_order(file, found);
        if (is_cpp(file)) check_libraries(file, found);
        check_licence(file, found);
        check_length(file, found);
        check_finished(file, found);
    }
    check_cycles(files, found);
    return found;
}

std::vector<SourceFile> sources_below(const std::string& top) {
    std::vector<SourceFile> files;
    for (const char* folder : {"src", "ui", "tests", "examples", "docs", ".ci"})
        for (const auto& entry : std::filesystem::recursive_directory_iterator(std::filesystem::path(top) / folder))
            if (is_source(entry))
                files.push_back({std::filesystem::relative(entry.path(), top).string(), text_of(entry.path())});
    return files;
}

}  // namespace boundary
