// SPDX-License-Identifier: MIT
#pragma once
#include "base/message.hpp"
#include "network/network.hpp"

namespace doorcard {

/// One position in a panel: a space, or a half of it ('a', 'b'; ' ' for a full space).
struct Position {
    int space = 0;
    char half = ' ';
    auto operator<=>(const Position&) const = default;
};

/// "5", "13a"
std::string name_of(Position);
/// "5", "2+4", "13a+15b": poles of one handle.
std::string name_of(const std::vector<Position>&);
/// Positions of a breaker, ascending.
std::vector<Position> positions_of(const Breaker&);

/// What a row of a panel's directory is (contract 4, card).
enum class RowKind {
    circuits,       ///< at least one circuit names the breaker
    feeder,         ///< feeds another panel
    source,         ///< a source comes in through it
    main,           ///< serves as the panel's main
    off,            ///< kept off
    spare,          ///< only where `state = "spare"`
    space,          ///< only where looked: nothing there
    not_seen,       ///< nobody looked
    not_traced,     ///< no circuit names it: treat as live
    not_described,  ///< a circuit names it, and nobody wrote what it feeds
};

/// One row of the directory, as it would print, before it is put into a language.
struct DirectoryRow {
    RowKind kind = RowKind::not_seen;
    std::vector<Position> positions;
    std::optional<std::size_t> breaker;
    std::vector<std::size_t> circuits;
    std::vector<Message> circuit_texts;  ///< of each circuit alone; empty: nothing is known of it
    Message text;
    Message under;            ///< smaller, below the text: volts, where a panel or a switch is; may be empty
    bool claimed = false;     ///< only told, found by a tracer, or from an old directory
    bool fire_alarm = false;  ///< named so, and printed in red
};

/// The directory of one panel: every position once, by number; several breakers in one position each have a row.
struct PanelDirectory {
    std::size_t panel = 0;
    std::vector<DirectoryRow> rows;
    int traced = 0;      ///< breakers whose row is proved by switching, test load or sight; feeders too
    int claimed = 0;     ///< breakers whose row is only claimed
    int not_traced = 0;  ///< breakers that nobody traced or described
    int in_use() const { return traced + claimed + not_traced; }
};

/// A text that says of a breaker that it feeds nothing: 'spare', 'blank'. It describes no circuit.
bool says_spare(const Message& text);

PanelDirectory directory_of(const Network&, std::size_t panel);

/// A source that feeds a panel, or comes in at or below it, and where it is shut off.
struct PanelSource {
    std::size_t source = 0;
    std::optional<std::size_t> through;  ///< breaker it comes in through; nullopt: it feeds the panel's main
};

/// The sources that can make this panel's bus live, without those of what feeds it: with two or more, the card carries
/// its caution.
std::vector<PanelSource> sources_at(const Network&, std::size_t panel);

}  // namespace doorcard
