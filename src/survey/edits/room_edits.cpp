// SPDX-License-Identifier: MIT
#include "survey/edits/room_edits.hpp"

#include "survey/edits/thing_edits.hpp"

namespace doorcard {

Edit add_room(const Room& room) { return add_thing<Room>({tr("add room {0}"), {room.id}}, &Survey::rooms, room); }

Edit change_room(const Room& room) {
    std::string id = room.id;
    Message name{tr("change room {0}"), {id}};
    return change_thing<Room>(std::move(name), &Survey::rooms, std::move(id), [=](Room& it) { it = room; });
}

Edit remove_room(std::string id) {
    return remove_thing<Room>({tr("take out room {0}"), {id}}, &Survey::rooms, 0, id, Mentions::refuse);
}

}  // namespace doorcard
