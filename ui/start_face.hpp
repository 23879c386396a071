// SPDX-License-Identifier: MIT
#pragma once
#include <optional>

#include "desk/face_picture.hpp"
#include "file/new_survey.hpp"
#include "ui/painted.hpp"
#include "ui/seat.hpp"

namespace doorcard {

/// The face of a panel that is only being chosen.
class StartFace final : public Painted {
public:
    StartFace(wxWindow* parent, Seat&);
    void show(const NewSurvey&);

private:
    void draw(cairo_t*) override;
    void lay_out();

    Seat& seat_;
    std::optional<FaceFacts> facts_;
    FacePicture picture_;
};

}  // namespace doorcard
