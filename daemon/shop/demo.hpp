// The demo shop: sentences of seeds/demo.txt, said through the same door as a person's.
#pragma once

#include "shop/run.hpp"

#include <functional>
#include <string>
#include <string_view>

namespace nutward::shop {

// The file's text, built into the program. One line, one sentence, with who says it in front: `Mara: what is
// said`. The first lines, `Mara (lead)`, say who there is. Empty lines and those that begin with # say
// nothing.
std::string_view demo_text();

using Say = std::function<Answer(const std::string& sentence, const Caller& who)>;

// Loads it into an empty shop. Throws Problem{state} where the shop is not empty, and Problem{broken} with
// the line where a sentence is not taken; the shop then holds what came before it.
void load_demo(Store& store, const Say& say, std::string_view text = demo_text());

} // namespace nutward::shop
