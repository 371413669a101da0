#include "editor/unit/aside.hpp"

#include <deque>
#include <utility>

namespace wrenlet::desk {

struct OnThread::State {
    std::mutex mutex;
    std::condition_variable wake;
    std::deque<std::function<void()>> works;
    bool ends = false;
    std::thread thread;

    void loop() {
        for (;;) {
            std::function<void()> work;
            {
                std::unique_lock lock(mutex);
                wake.wait(lock, [&] { return ends || !works.empty(); });
                if (ends) return;
                work = std::move(works.front());
                works.pop_front();
            }
            work();
        }
    }
};

OnThread::OnThread() : state_(std::make_unique<State>()) {
    state_->thread = std::thread([state = state_.get()] { state->loop(); });
}

OnThread::~OnThread() {
    {
        const std::lock_guard lock(state_->mutex);
        state_->ends = true;
    }
    state_->wake.notify_all();
    state_->thread.join();
}

void OnThread::run(std::function<void()> work) {
    {
        const std::lock_guard lock(state_->mutex);
        state_->works.push_back(std::move(work));
    }
    state_->wake.notify_all();
}

}  // namespace wrenlet::desk
