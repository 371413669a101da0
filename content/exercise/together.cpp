#include "content/exercise/together.hpp"

#include <algorithm>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "content/speech/accent.hpp"

namespace wrenlet::exercise {

namespace {

/// Made by hand: pictures of one thing, or of things that young children name alike.
using Groups = std::vector<std::vector<std::string_view>>;

const Groups& groups() {
    static const Groups kGroups = {
        {"dog", "puppy", "pup"},
        {"cat", "kitten"},
        {"mouse", "rat"},
        {"hen", "chicken", "rooster", "chick"},
        {"bird", "chick", "robin", "sparrow", "wren"},
        {"duck", "duckling"},
        {"rabbit", "bunny", "hare"},
        {"pig", "hog", "piglet"},
        {"frog", "toad"},
        {"sheep", "lamb", "ram"},
        {"cow", "calf", "bull", "ox"},
        {"horse", "pony", "foal"},
        {"bee", "wasp", "fly", "bug"},
        {"bug", "beetle", "ladybug", "ant", "cricket"},
        {"crocodile", "alligator", "lizard"},
        {"boat", "ship"},
        {"boat", "sailboat"},
        {"boat", "canoe", "rowboat"},
        {"ship", "sailboat"},
        {"car", "taxi", "van"},
        {"truck", "lorry", "van"},
        {"bike", "bicycle"},
        {"plane", "airplane", "jet"},
        {"motorcycle", "scooter", "bike"},
        {"cup", "mug", "teacup"},
        {"pot", "pan"},
        {"bucket", "pail"},
        {"jug", "pitcher", "jar"},
        {"bag", "sack", "purse", "handbag"},
        {"hat", "cap"},
        {"coat", "jacket"},
        {"shoe", "sneaker", "boot"},
        {"pants", "jeans", "trousers"},
        {"couch", "sofa"},
        {"rug", "mat"},
        {"bath", "tub", "bathtub"},
        {"log", "wood", "stick"},
        {"rock", "stone"},
        {"hill", "mountain"},
        {"sea", "ocean", "wave"},
        {"pond", "lake"},
        {"tree", "pine", "oak"},
        {"shell", "seashell"},
        {"web", "spider"},
        {"sun", "sunrise", "sunset"},
        {"moon", "moonlight"},
        {"light", "lamp", "bulb", "flashlight"},
        {"baby", "child", "kid"},
        {"girl", "woman", "mom", "mother", "lady"},
        {"boy", "man", "dad", "father"},
        {"king", "crown"},
        {"hen", "rooster"},
        {"pen", "pencil", "crayon"},
        {"brush", "paintbrush", "paint"},
        {"map", "globe"},
        {"book", "notebook"},
        {"cupcake", "cake", "muffin"},
        {"ice", "cube"},
        {"house", "home", "hut", "cottage"},
        {"church", "castle"},
        {"peach", "plum", "apricot"},
        {"jam", "jelly", "jar"},
        {"sweet", "candy", "lollipop"},
        {"lips", "lip", "mouth"},
        {"leaf", "leaves", "plant"},
        {"flower", "rose", "sunflower", "daisy"},
        {"guitar", "violin"},
        {"fish", "goldfish"},
        {"wheel", "tire"},
        {"net", "web"},
    };
    return kGroups;
}

/// For each name the groups it stands in: asked for each two words of each item.
std::unordered_map<std::string_view, std::vector<std::size_t>> groupsByName() {
    std::unordered_map<std::string_view, std::vector<std::size_t>> places;
    for (std::size_t i = 0; i < groups().size(); ++i)
        for (const std::string_view name : groups()[i]) places[name].push_back(i);
    return places;
}

bool isNamedAlike(std::string_view a, std::string_view b) {
    static const auto kPlaces = groupsByName();
    const auto of_a = kPlaces.find(a);
    if (of_a == kPlaces.end()) return false;
    const auto of_b = kPlaces.find(b);
    if (of_b == kPlaces.end()) return false;
    return std::find_first_of(of_a->second.begin(), of_a->second.end(), of_b->second.begin(),
                              of_b->second.end()) != of_a->second.end();
}

}  // namespace

bool looksAlike(std::string_view word, std::string_view other) {
    return word == other || isNamedAlike(word, other);
}

bool areHeardApart(const Word& a, const Word& b) {
    return a.id != b.id && a.text != b.text && !speech::saidAlikeByMany(a.sounds, b.sounds);
}

bool mayStandTogether(const Word& a, const Word& b) {
    if (!a.picture.empty() && a.picture == b.picture) return false;
    return !looksAlike(a.text, b.text) && areHeardApart(a, b);
}

}  // namespace wrenlet::exercise
