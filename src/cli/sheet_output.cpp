// SPDX-License-Identifier: MIT
#include "cli/sheet_output.hpp"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <map>
#include <ostream>

#include "base/write_whole.hpp"

namespace doorcard {
namespace {

Bytes paint_png_usual(const Sheet& sheet) { return paint_png(sheet); }

std::string panel_ids(const Survey& survey) {
    std::string ids;
    for (const Panel& panel : survey.panels) ids += (ids.empty() ? "" : ", ") + panel.id;
    return ids;
}

/// Seconds since 1970 in SOURCE_DATE_EPOCH, as RFC 3339.
std::optional<std::string> date_of_environment() {
    const char* value = std::getenv("SOURCE_DATE_EPOCH");
    if (value == nullptr) return std::nullopt;
    const std::string_view text(value);
    std::time_t seconds = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), seconds);
    std::tm utc{};
    if (error != std::errc() || end != text.data() + text.size() || gmtime_r(&seconds, &utc) == nullptr)
        return std::nullopt;
    char date[32];
    if (std::strftime(date, sizeof date, "%Y-%m-%dT%H:%M:%SZ", &utc) == 0) return std::nullopt;
    return std::string(date);
}

}  // namespace

std::string ending_of(const std::string& output) {
    std::string ending = std::filesystem::path(output).extension().string();
    std::transform(ending.begin(), ending.end(), ending.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return ending;
}

Painter painter_for(const std::string& output) {
    static const std::map<std::string, Painter> painters = {{".pdf", paint_pdf},
                                                            {".svg", paint_svg},
                                                            {".png", paint_png_usual},
                                                            {".html", paint_html},
                                                            {".txt", paint_text}};
    const auto found = painters.find(ending_of(output));
    return found == painters.end() ? nullptr : found->second;
}

bool is_stdout(const std::string& output) { return output.empty() || output == "-"; }

bool all_panels_known(const std::vector<std::string>& panels, const Survey& survey, const std::string& file,
                      std::ostream& err, const Words& words) {
    for (const std::string& id : panels) {
        if (survey.panels.contains(id)) continue;
        err << words.say({tr("{0}: no panel '{1}'; panels are {2}"), {file, id, panel_ids(survey)}}) << '\n';
        return false;
    }
    return true;
}

void date_by_environment(Sheet& sheet) {
    if (const auto date = date_of_environment()) sheet.created = *date;
}

void deliver(const Sheet& sheet, const std::string& output, bool json, std::ostream& out) {
    if (!is_stdout(output)) write_whole(output, painter_for(output)(sheet));
    if (is_stdout(output) && !json) out << paint_text(sheet);
}

}  // namespace doorcard
