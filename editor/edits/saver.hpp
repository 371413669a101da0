// Saving a document some time after it changed, aside, so that no key waits for the disk and no
// more than two seconds of work are ever unsaved.
#pragma once

#include <algorithm>
#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <utility>
#include <vector>

#include "content/common/result.hpp"
#include "editor/unit/aside.hpp"

namespace wrenlet::desk {

/// What became of one try to save.
template <class Document>
struct SaveOutcome {
    bool is_saved = false;
    std::vector<Problem> problems;
    std::optional<Document> found{};  // what is saved now, where it is more than was to be saved
};

/// Milliseconds are those of any steady clock.
template <class Document>
class SaverOf {
  public:
    static constexpr std::int64_t kQuietMs = 400;     // after the last change
    static constexpr std::int64_t kLongestMs = 1000;  // after the first that is not saved
    static constexpr std::int64_t kAgainMs = 2000;    // after a try that did not work

    using Outcome = SaveOutcome<Document>;
    using Write = std::function<Outcome(const Document&)>;

    /// `write` is called aside, from one thread at a time. `aside` must outlive this; `done` is
    /// called there when a try has ended.
    SaverOf(Write write, Aside& aside, std::function<void()> done = {})
        : write_(std::make_shared<Write>(std::move(write))), newest_(aside, std::move(done)) {}

    /// The document changed for the `changes`th time.
    void changed(std::uint64_t changes, std::int64_t now_ms) {
        if (changes == changes_) return;
        if (changes_ == tried_changes_) first_ms_ = now_ms;
        last_ms_ = now_ms;
        changes_ = changes;
    }
    /// When step() has something to do next.
    std::optional<std::int64_t> due() const {
        if (isSaved() || newest_.isBusy()) return std::nullopt;
        if (failed_ && tried_changes_ == changes_) return tried_ms_ + kAgainMs;
        const std::int64_t wanted = std::min(last_ms_ + kQuietMs, first_ms_ + kLongestMs);
        return failed_ ? std::max(wanted, tried_ms_ + kAgainMs) : wanted;
    }
    /// Takes in what became of the last try, and tries again if that is due.
    void step(const Document& document, std::int64_t now_ms) {
        takeOutcome();
        const auto when = due();
        if (!when || now_ms < *when) return;
        tryNow(document, now_ms);
        takeOutcome();
    }
    /// Saves what is not saved, and waits for it: at the end.
    void finish(const Document& document, std::int64_t now_ms) {
        newest_.wait();
        takeOutcome();
        if (isSaved()) return;
        tryNow(document, now_ms);
        newest_.wait();
        takeOutcome();
    }

    bool isSaved() const { return changes_ == saved_changes_; }
    /// When it was last saved; none: not since it was opened.
    std::optional<std::int64_t> savedAt() const { return saved_at_; }
    /// Why the last try did not work, or what to know of it.
    const std::vector<Problem>& problems() const { return problems_; }
    /// What a try found beside what it was to save, and what that was: once.
    struct Found {
        Document tried, found;
    };
    std::optional<Found> takeFound() { return std::exchange(found_, std::nullopt); }
    /// The document in hand, changed for the `changes`th time, is what is saved.
    void isSavedAs(std::uint64_t changes) { changes_ = saved_changes_ = tried_changes_ = changes; }

  private:
    struct Tried {
        std::uint64_t changes;
        std::int64_t at_ms;
        Outcome outcome;
        std::optional<Found> found;
    };
    void tryNow(const Document& document, std::int64_t now_ms) {
        tried_changes_ = changes_;
        tried_ms_ = now_ms;
        newest_.ask([write = write_, document, changes = changes_, now_ms] {
            Tried tried{changes, now_ms, (*write)(document), {}};
            if (tried.outcome.found) tried.found = Found{document, *tried.outcome.found};
            return tried;
        });
    }
    void takeOutcome() {
        std::optional<Tried> tried = newest_.take();
        if (!tried) return;
        problems_ = std::move(tried->outcome.problems);
        failed_ = !tried->outcome.is_saved;
        if (failed_) return;
        saved_changes_ = tried->changes;
        saved_at_ = tried->at_ms;
        if (tried->found) found_ = std::move(tried->found);
    }

    std::shared_ptr<Write> write_;
    Newest<Tried> newest_;
    std::uint64_t changes_ = 0, saved_changes_ = 0, tried_changes_ = 0;
    std::int64_t first_ms_ = 0, last_ms_ = 0, tried_ms_ = 0;
    bool failed_ = false;
    std::optional<std::int64_t> saved_at_;
    std::vector<Problem> problems_;
    std::optional<Found> found_;
};

}  // namespace wrenlet::desk
