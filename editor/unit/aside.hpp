// Work that takes longer than a frame, done aside on copies, so that no key waits for it. Whoever
// asks again before it is done gets the newest alone.
#pragma once

#include <condition_variable>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>
#include <utility>

namespace wrenlet::desk {

/// Where work is run.
class Aside {
  public:
    virtual ~Aside() = default;
    /// Runs `work` some time, after what was given before. What has not begun when this goes is
    /// dropped; what has is waited for.
    virtual void run(std::function<void()> work) = 0;
};

/// At once, in the caller's turn: for tests and pictures.
class AtOnce final : public Aside {
  public:
    void run(std::function<void()> work) override { work(); }
};

/// On a thread of its own.
class OnThread final : public Aside {
  public:
    OnThread();
    ~OnThread() override;
    void run(std::function<void()> work) override;

  private:
    struct State;
    std::unique_ptr<State> state_;
};

/// The newest result of a work that is asked for again and again. `done` is told, on the thread
/// where it happened, that there is one to take.
template <class Value>
class Newest {
  public:
    explicit Newest(Aside& aside, std::function<void()> done = {})
        : aside_(aside), shared_(std::make_shared<Shared>()) {
        shared_->done = std::move(done);
    }

    /// REQUIRES: `work` needs nothing that may be gone when it runs.
    void ask(std::function<Value()> work) {
        bool must_run = false;
        {
            const std::lock_guard lock(shared_->mutex);
            must_run = !shared_->next && !shared_->running;
            shared_->next = std::move(work);
            if (must_run) shared_->running = true;
        }
        if (must_run) aside_.run([shared = shared_] { shared->runAll(); });
    }
    /// What came since the last call.
    std::optional<Value> take() {
        const std::lock_guard lock(shared_->mutex);
        return std::exchange(shared_->value, std::nullopt);
    }
    bool isBusy() const {
        const std::lock_guard lock(shared_->mutex);
        return shared_->running;
    }
    /// Until nothing is asked for any more.
    void wait() {
        std::unique_lock lock(shared_->mutex);
        shared_->idle.wait(lock, [&] { return !shared_->running; });
    }

  private:
    struct Shared {
        mutable std::mutex mutex;
        std::condition_variable idle;
        std::function<Value()> next;
        std::optional<Value> value;
        std::function<void()> done;
        bool running = false;

        void runAll() {
            for (;;) {
                std::function<Value()> work;
                {
                    const std::lock_guard lock(mutex);
                    if (!next) {
                        running = false;
                        idle.notify_all();
                        break;
                    }
                    work = std::exchange(next, {});
                }
                Value made = work();
                {
                    const std::lock_guard lock(mutex);
                    value = std::move(made);
                }
                if (done) done();
            }
            if (done) done();
        }
    };

    Aside& aside_;
    std::shared_ptr<Shared> shared_;
};

}  // namespace wrenlet::desk
