// SPDX-License-Identifier: MIT
#include "ui/errands.hpp"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <system_error>

#include "file/journal.hpp"
#include "file/rewrite_survey.hpp"
#include "file/save_survey.hpp"

namespace doorcard {

namespace {

std::string bytes_of(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

}  // namespace

Errands::Errands(std::string unnamed, std::function<void(Action)> back)
    : unnamed_(std::move(unnamed)), back_(std::move(back)), thread_([this] { work(); }) {}

Errands::~Errands() {
    {
        const std::lock_guard lock(mutex_);
        is_over_ = true;
    }
    changed_.notify_all();
    thread_.join();
}

void Errands::add(Effect effect) {
    {
        const std::lock_guard lock(mutex_);
        // Of several states to keep only the last one matters.
        const bool replaces = std::holds_alternative<KeepJournal>(effect) && !waiting_.empty() &&
                              std::holds_alternative<KeepJournal>(waiting_.back());
        if (replaces)
            waiting_.back() = std::move(effect);
        else
            waiting_.push_back(std::move(effect));
    }
    changed_.notify_all();
}

void Errands::finish() {
    std::unique_lock lock(mutex_);
    changed_.wait(lock, [this] { return waiting_.empty() && !is_busy_; });
}

void Errands::work() {
    std::unique_lock lock(mutex_);
    while (true) {
        changed_.wait(lock, [this] { return !waiting_.empty() || is_over_; });
        if (waiting_.empty()) return;
        const Effect effect = std::move(waiting_.front());
        waiting_.pop_front();
        is_busy_ = true;
        lock.unlock();
        carry_out(effect);
        lock.lock();
        is_busy_ = false;
        changed_.notify_all();
    }
}

void Errands::carry_out(const Effect& effect) {
    if (const auto* journal = std::get_if<KeepJournal>(&effect)) keep(*journal);
    if (const auto* journal = std::get_if<DropJournal>(&effect)) drop(*journal);
    if (const auto* notes = std::get_if<KeepNotes>(&effect)) note(*notes);
    if (const auto* wanted = std::get_if<SaveFile>(&effect)) save(*wanted);
}

// A journal that cannot be kept is said once an edit; the edit itself stands.
void Errands::keep(const KeepJournal& journal) {
    try {
        if (journal.path.empty()) std::filesystem::create_directories(std::filesystem::path(unnamed_).parent_path());
        write_journal(named(journal.path), journal.path.empty() ? std::string() : journal.text,
                      spliced(journal.text, journal.on_file, journal.now));
    } catch (const std::system_error& error) {
        back_(SaveFailed{{tr("Nothing is kept beside the file, save often: {0}"), {error.what()}}});
    }
}

void Errands::drop(const DropJournal& journal) {
    try {
        drop_journal(named(journal.path));
    } catch (const std::system_error&) {  // a journal that stays says what the file says: it is not offered
    }
}

void Errands::note(const KeepNotes& wanted) {
    try {
        if (wanted.path.empty()) std::filesystem::create_directories(std::filesystem::path(unnamed_).parent_path());
        keep_side_notes(named(wanted.path), wanted.notes);
    } catch (const std::system_error& error) {
        back_(SaveFailed{{tr("The plan is not kept: {0}"), {error.what()}}});
    }
}

void Errands::save(const SaveFile& wanted) {
    try {
        std::string text = rewrite(wanted.text, wanted.on_file, wanted.now);
        const bool is_there = wanted.is_new && std::filesystem::exists(wanted.path);
        if (wanted.is_new && !is_there)
            save_new_survey(wanted.path, text);
        else  // over a file that is there the user was asked: it is what it was at that moment
            save_survey(wanted.path, is_there ? bytes_of(wanted.path) : wanted.was, text);
        back_(Saved{wanted.path, std::move(text), wanted.now});
    } catch (const NotSaved& refusal) {
        back_(SaveFailed{refusal.why});
    } catch (const std::system_error& error) {
        back_(SaveFailed{{tr("Not saved: {0}"), {error.what()}}});
    } catch (const NotWhatWasMeant& mistake) {
        back_(SaveFailed{{tr("Not saved, the file is as it was: {0}"), {mistake.what()}}});
    }
}

}  // namespace doorcard
