// SPDX-License-Identifier: MIT
// Paints faces and feed lines as PNG into FOLDER, in the three looks of a screen, at 1x and 2x.
#include <cairo.h>
#include <fmt/format.h>

#include <chrono>
#include <cstdio>

#include "desk/face_panels.hpp"
#include "desk/face_picture.hpp"
#include "desk/feed_line.hpp"
#include "desk/screen_inks.hpp"
#include "file/new_survey.hpp"
#include "file/read_survey.hpp"
#include "file/read_text.hpp"

using namespace doorcard;

namespace {

constexpr double px_per_mm = 96 / 25.4;

void paint(const Page& page, const std::string& path, Ground ground, double scale) {
    const auto pixels = [&](double mm) { return static_cast<int>(mm * px_per_mm * scale + 0.5); };
    cairo_surface_t* surface =
        cairo_image_surface_create(CAIRO_FORMAT_RGB24, pixels(page.paper.width), pixels(page.paper.height));
    cairo_t* cairo = cairo_create(surface);
    const Ink back = ground_ink(ground);
    cairo_set_source_rgb(cairo, back.red, back.green, back.blue);
    cairo_paint(cairo);
    cairo_scale(cairo, 96.0 / 72 * scale, 96.0 / 72 * scale);
    paint_page(cairo, page, screen_inks(ground));
    cairo_surface_write_to_png(surface, path.c_str());
    cairo_destroy(cairo);
    cairo_surface_destroy(surface);
}

struct Shown {
    std::string name;
    Survey survey;
    std::string panel = "MAIN";
    double width_px = 600, height_px = 800;
    FaceLook look{};
    std::string language = "en";
};

Survey from_file(const std::string& path) {
    auto text = read_text(path);
    return read_survey(std::move(*text)).value().survey;
}

std::vector<Shown> all_shown(const std::string& examples) {
    const Survey alder = from_file(examples + "/alder-row.survey.toml");
    const Survey kiln = from_file(examples + "/kiln-yard.survey.toml");
    FaceLook chosen, planned, round;
    chosen.selected = Position{13, ' '};
    chosen.selected_has_focus = true;
    chosen.state = "as found, locked";
    planned.selected = Position{3, ' '};
    planned.planned = {{{{3, ' '}}, {{20, ' '}}, 20, "3 moves to 20"}, {{{9, ' '}}, {{9, ' '}}, 15, "20 A to 15 A"}};
    planned.dragged = {{5, ' '}};
    planned.drop_target = Position{23, ' '};
    round.off_now = {{5, ' '}, {7, ' '}, {14, ' '}};
    round.to_throw = {{5, ' '}, {7, ' '}, {1, ' '}};
    std::vector<Shown> all{
        {"alder", alder, "MAIN", 600, 800, chosen},
        {"alder-shop", alder, "SHOP", 600, 500},
        {"alder-narrow", alder, "MAIN", 430, 700, chosen},
        {"alder-low", alder, "MAIN", 600, 400, chosen},
        {"alder-wide", alder, "MAIN", 760, 900, chosen},
        {"alder-es", alder, "MAIN", 600, 800, {}, "es"},
        {"alder-planned", alder, "MAIN", 600, 800, planned},
        {"alder-round", alder, "MAIN", 600, 800, round},
        {"tandems", example::tandems(), "MAIN", 600, 500},
        {"twenty-tandems", example::twenty_tandems(), "MAIN", 600, 500},
        {"spaces-84", example::full_panel(84), "MAIN", 600, 700},
        {"column", example::column(12), "MAIN", 500, 600},
        {"nested", example::nested_neutrals(), "MAIN", 600, 700},
        {"nested-narrow", example::nested_neutrals(), "MAIN", 430, 500},
        {"three-phase", example::three_phases(), "MAIN", 600, 600},
        {"long-es", example::long_texts(24), "MAIN", 430, 800, {}, "es"},
        {"house", example::house(), "MAIN", 600, 800},
        {"new", read_survey({"new", new_survey({System::split_120_240, 24, 200.0})}).value().survey, "MAIN", 600, 800}};
    for (const Panel& panel : kiln.panels) all.push_back({"kiln-" + panel.id, kiln, panel.id, 640, 800});
    all.push_back({"feeds", example::many_panels(9), "MAIN", 900, 800});
    return all;
}

double milliseconds(std::chrono::steady_clock::time_point since) {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - since).count();
}

void paint_all(Shown shown, const std::string& folder, const std::string& only) {
    if (!only.empty() && shown.name.find(only) == std::string::npos) return;
    const Words words = Words::in(shown.language);
    const Assessed assessed = example::assessed(shown.survey);
    const std::size_t panel = shown.survey.panels.position(shown.panel);
    shown.look.width = shown.width_px / px_per_mm;
    shown.look.height = shown.height_px / px_per_mm;
    const auto began = std::chrono::steady_clock::now();
    const FaceFacts facts = face_facts(assessed, panel);
    const double for_facts = milliseconds(began);
    const auto drawn = std::chrono::steady_clock::now();
    const FacePicture picture = face_picture(facts, shown.look, words);
    fmt::print("{:<20} facts {:6.2f} ms  picture {:6.2f} ms\n", shown.name, for_facts, milliseconds(drawn));
    const FeedLine feeds = feed_line(shown.survey, panel, 900 / px_per_mm, words);
    for (const auto& [ground, name] :
         {std::pair{Ground::day, "day"}, {Ground::night, "night"}, {Ground::contrast, "contrast"}})
        for (const int scale : {1, 2}) {
            const std::string tail = fmt::format("{}-{}-{}x.png", shown.name, name, scale);
            paint(picture.page, folder + "/" + tail, ground, scale);
            paint(feeds.page, folder + "/feed-" + tail, ground, scale);
        }
}

}  // namespace

int main(int count, char** arguments) {
    if (count < 3) return std::fputs("usage: face_pictures EXAMPLES FOLDER [NAME]\n", stderr), 2;
    for (Shown& shown : all_shown(arguments[1]))
        paint_all(std::move(shown), arguments[2], count > 3 ? arguments[3] : "");
}
