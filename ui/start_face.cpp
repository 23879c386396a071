// SPDX-License-Identifier: MIT
#include "ui/start_face.hpp"

#include <cairo.h>

#include <algorithm>

#include "desk/screen_inks.hpp"
#include "file/read_survey.hpp"
#include "ui/accessible.hpp"

namespace doorcard {

StartFace::StartFace(wxWindow* parent, Seat& seat) : Painted(parent, seat.looks()), seat_(seat) {
    name_for_readers(this, seat.say(tr("The face of the new panel")));
    SetCanFocus(false);
    Bind(wxEVT_SIZE, [this](wxSizeEvent& event) {
        event.Skip();
        lay_out();
    });
}

void StartFace::show(const NewSurvey& known) {
    const auto read = read_survey({"", new_survey(known)});
    const auto book = built_in_book("NEC-2023");
    if (read && book) facts_.emplace(face_facts(assess_all(read->survey, *book), 0));
    lay_out();
}

void StartFace::lay_out() {
    if (!facts_) return;
    FaceLook look;
    look.width = std::max(90.0, GetClientSize().x / pixels_per_mm());
    look.height = GetClientSize().y / pixels_per_mm();
    picture_ = face_picture(*facts_, look, seat_.words());
    Refresh();
}

void StartFace::draw(cairo_t* cairo) {
    const double scale = pixels_per_mm() / (72 / 25.4);
    cairo_scale(cairo, scale, scale);
    paint_page(cairo, picture_.page, screen_inks(looks().ground()));
}

}  // namespace doorcard
