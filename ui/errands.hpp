// SPDX-License-Identifier: MIT
#pragma once
#include <condition_variable>
#include <deque>
#include <functional>
#include <mutex>
#include <thread>

#include "desk/actions.hpp"
#include "desk/effects.hpp"

namespace doorcard {

/// Carries out what a desk wants done on the disk, one after the other on a thread of its own, so that the window never
/// waits: journals, saves. What comes back is handed to `back` on that thread. No wx in it.
class Errands {
public:
    /// `unnamed` is where the journal of a survey without a file is kept.
    Errands(std::string unnamed, std::function<void(Action)> back);
    ~Errands();  ///< when all is done
    void add(Effect);
    /// Returns when all that was added is on the disk.
    void finish();

private:
    void work();
    void carry_out(const Effect&);
    void keep(const KeepJournal&);
    void drop(const DropJournal&);
    void save(const SaveFile&);
    void note(const KeepNotes&);
    const std::string& named(const std::string& path) const { return path.empty() ? unnamed_ : path; }

    std::string unnamed_;
    std::function<void(Action)> back_;
    std::mutex mutex_;
    std::condition_variable changed_;
    std::deque<Effect> waiting_;
    bool is_busy_ = false, is_over_ = false;
    std::thread thread_;
};

}  // namespace doorcard
