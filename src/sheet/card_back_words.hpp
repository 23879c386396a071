// SPDX-License-Identifier: MIT
#pragma once
#include <map>

#include "assess/room_directory.hpp"
#include "base/words.hpp"

namespace doorcard {

/// What handles are called on the card of one panel: its own by their number, those of others with a letter before it:
/// '5', 'S2+S4'. '+' joins poles of one handle, 'and' two handles.
class HandleNames {
public:
    HandleNames(const Network&, const RoomDirectory&, const Words&);

    std::string name(std::size_t breaker) const;
    /// 'S1 and S2+S4'
    std::string names(const std::vector<std::size_t>& breakers) const;
    bool any_fuse(const std::vector<std::size_t>& breakers) const;
    /// 'Numbers are handles in MAIN, cellar stair. S: handles in SHOP, garage.'
    std::string key() const;

private:
    std::string place_of(std::size_t panel) const;

    const Network& network_;
    const RoomDirectory& directory_;
    const Words& words_;
    std::map<std::size_t, std::string> codes_;  // by panel, with what parts it from the number
};

/// What stands at the right edge of a line.
struct RoomAnswer {
    std::string text;     ///< '5 and 7', 'said to be 11', 'not traced: treat as live'
    bool number = false;  ///< handles to throw: the only ones printed bold and large
    HandleTrust trust = HandleTrust::not_traced;
};

RoomAnswer answer_of(const RoomLine&, const HandleNames&, const Words&);
/// What the line is, within a sentence: 'lights'.
std::string what_of(const RoomPart&, const RoomLine&, const Words&);
std::string heading_of(const RoomDirectory&, const RoomPart&, const Words&);

/// The sentences around the table, alike on paper and in plain text.
struct BackWords {
    std::string off_title, off_reasons;  ///< 'Do not switch on 18'; empty where nothing is kept off
    std::string claimed;                 ///< empty where nothing is
    std::string not_traced;              ///< of handles; empty where none is
    std::string danger_title, danger_text;
    std::vector<std::string> trip_steps;  ///< before the picture of a reset
    std::vector<std::string> after_reset;
    bool resets = true;     ///< false where the panel has fuses alone: nothing to reset
    bool two_sided = true;  ///< handles left and right of the legs
    std::string reset_note;
    std::vector<std::string> off_steps;
    std::string off_note;
    std::string receptacles;          ///< where the RESET buttons are; empty where none is known
    std::string receptacles_shortly;  ///< where a small card has no room for the places
    std::string off_is_not_dead;
};

BackWords back_words(const Network&, const RoomDirectory&, const HandleNames&, const Words&);

/// One thing on the tag.
struct TagItem {
    std::string handles;  ///< empty: nobody knows which
    std::string why;
    bool claimed = false;
};
std::vector<TagItem> tag_items(const RoomDirectory&, const HandleNames&, const Words&);

}  // namespace doorcard
