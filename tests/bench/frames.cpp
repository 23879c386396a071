// SPDX-License-Identifier: MIT
// Works at the desk of the survey FILE as a window does, without one: edits of all kinds, each until the face is
// painted again; and a walk through all panels, painted one after the other. Prints the middle and the 99th percentile,
// in milliseconds: after an edit the screen is to be painted within 33.
#include <cairo.h>
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <functional>
#include <vector>

#include "desk/face_picture.hpp"
#include "desk/feed_line.hpp"
#include "desk/screen_inks.hpp"
#include "desk/typed_breaker.hpp"
#include "desk/update.hpp"
#include "file/read_survey.hpp"
#include "file/read_text.hpp"

using namespace doorcard;

namespace {

constexpr int width = 640, height = 760;  // of the face on a usual screen, pixels
constexpr double mm = 25.4 / 96;

double milliseconds(const std::function<void()>& work) {
    const auto began = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - began).count();
}

class Screen {
public:
    Screen()
        : surface_(cairo_image_surface_create(CAIRO_FORMAT_RGB24, width, height)), cairo_(cairo_create(surface_)) {}
    ~Screen() {
        cairo_destroy(cairo_);
        cairo_surface_destroy(surface_);
    }
    Screen(const Screen&) = delete;
    Screen& operator=(const Screen&) = delete;

    void paint(const Desk& desk, double scrolled) {
        const auto panel = shown_panel(desk);
        if (!panel) return;
        FaceLook look;
        look.width = width * mm;
        look.height = height * mm;
        const FacePicture face = face_picture(face_facts(desk.assessed, *panel), look, words_);
        const FeedLine feeds = feed_line(desk.survey, *panel, width * mm, words_);
        cairo_save(cairo_);
        cairo_set_source_rgb(cairo_, 1, 1, 1);
        cairo_paint(cairo_);
        cairo_translate(cairo_, 0, -scrolled);
        cairo_scale(cairo_, 96.0 / 72, 96.0 / 72);
        paint_page(cairo_, feeds.page, inks_);
        paint_page(cairo_, face.page, inks_);
        cairo_restore(cairo_);
        cairo_surface_flush(surface_);
    }

private:
    cairo_surface_t* surface_;
    cairo_t* cairo_;
    Words words_ = Words::in("en");
    InkMap inks_ = screen_inks(Ground::day);
};

void print(const char* what, std::vector<double> times) {
    std::ranges::sort(times);
    const auto at = [&](double share) {
        return times[static_cast<std::size_t>(share * static_cast<double>(times.size() - 1))];
    };
    fmt::print("  {:<34} {:4} frames   middle {:6.1f} ms   99th percentile {:6.1f} ms\n", what, times.size(), at(0.5),
               at(0.99));
}

void act(Desk& desk, Action action) { desk = update(std::move(desk), std::move(action)).first; }

/// What is typed on rows of many panels, one after another.
std::vector<double> edit_frames(Desk& desk, Screen& screen) {
    constexpr const char* typed[] = {"20 Bench", "15", "Hall and stair", "20 gf", "30 Heater?"};
    std::vector<double> times;
    for (std::size_t n = 0; n < 120; ++n) {
        act(desk, ShowPanel{desk.survey.panels[(n * 7) % desk.survey.panels.size()].id});
        const Position row{static_cast<int>(n % 5) * 2 + 1, ' '};
        times.push_back(milliseconds([&] {
            auto entered = typed_breaker(desk.survey, desk.spot.panel, row, typed[n % 5]);
            if (entered) act(desk, Apply{std::move(entered->edit)});
            screen.paint(desk, 0);
        }));
    }
    return times;
}

std::vector<double> walk_frames(Desk& desk, Screen& screen) {
    std::vector<double> times;
    for (const Panel& panel : Table<Panel>(desk.survey.panels))
        times.push_back(milliseconds([&] {
            act(desk, ShowPanel{panel.id});
            screen.paint(desk, static_cast<double>(times.size() % 40));
        }));
    return times;
}

}  // namespace

int main(int count, char** arguments) {
    if (count < 2) return 2;
    auto text = read_text(arguments[1]);
    if (!text) return 3;
    const std::string bytes = text->bytes;
    auto read = read_survey(*std::move(text));
    if (!read) return 3;
    Desk desk;
    act(desk, Opened{arguments[1], bytes, std::move(read->survey),
                     std::make_shared<const RuleBook>(*built_in_book("NEC-2023")), std::nullopt});
    Screen screen;
    screen.paint(desk, 0);
    print("edit to painted screen", edit_frames(desk, screen));
    print("from panel to panel", walk_frames(desk, screen));
}
