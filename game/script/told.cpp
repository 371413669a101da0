#include "game/script/told.hpp"

#include <nlohmann/json.hpp>

namespace wrenlet::game {

std::string told(const App& app) {
    nlohmann::json things = nlohmann::json::object();
    for (const std::string& name : app.touchables())
        if (const auto box = app.boxOf(name)) things[name] = {box->x, box->y, box->w, box->h};
    nlohmann::json line = {{"place", app.place()},
                           {"answers", app.newestAnswer()},
                           {"right", nullptr},
                           {"things", std::move(things)}};
    if (const auto right = app.rightTouch()) line["right"] = *right;
    return line.dump();
}

}  // namespace wrenlet::game
