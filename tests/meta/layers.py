"""Who may include whom.

1. The bench knows only the bench. 2. shop sees the bench; store and remind see shop; talk sees shop, never store; serve
sees talk and shop; only main.cpp sees everything. 3. cli includes nothing of daemon except units.
"""

from tree import BENCH, PARTS, cpp, includes, judge, part

MAY = {name: set(BENCH) for name in BENCH}
MAY["shop"] = {*BENCH, "shop"}
MAY["store"] = {*BENCH, "shop", "store"}
MAY["talk"] = {*BENCH, "shop", "talk"}
MAY["remind"] = {*BENCH, "shop", "remind"}
MAY["serve"] = {*BENCH, "shop", "talk", "serve"}
MAY["page"] = {"page"}


def rule(tree):
    complaints = []
    for path, text in cpp(tree, "daemon", "cli"):
        own = part(path)
        for line, name, quoted in includes(text):
            where = f"{path}:{line}"
            first = name.split("/")[0] if "/" in name else None
            if name.startswith(("/", ".")) or "/../" in name:
                complaints.append(f"{where}: include {name} by its folder, not by a path")
            elif path.startswith("cli/"):
                if first in PARTS and first != "units":
                    complaints.append(f"{where}: cli may include nothing of daemon except units, not {name}")
            elif own is not None and own not in MAY:
                complaints.append(f"{where}: {own} is no folder of the design, so nothing says what it may include")
            elif first in PARTS and own is not None and first not in MAY[own]:
                complaints.append(f"{where}: {own} may not include {name}")
            elif quoted and first not in PARTS:
                complaints.append(f"{where}: include {name} as \"folder/file.hpp\", outside libraries in <>")
    return complaints


judge(
    rule,
    lawful={
        "daemon/main.cpp": '#include "store/open.hpp"\n#include "serve/serve.hpp"\n',
        "daemon/board/slots.cpp": '#include "board/slots.hpp"\n#include "units/length.hpp"\n// #include "shop/x.hpp"\n',
        "daemon/serve/serve.cpp": '#include "talk/say.hpp"\n#include "shop/run.hpp"\n#include <vector>\n',
        "daemon/store/open.cpp": '#include "shop/store.hpp"\n',
        "daemon/shop/questions/fit.cpp": '#include "pieces/fit.hpp"\n#include "shop/model.hpp"\n',
        "cli/main.cpp": '#include "say.hpp"\n#include "units/print.hpp"\n',
    },
    planted=[
        *((f"daemon/{name}/a.cpp", '#include "shop/store.hpp"\n', f"{name} may not include shop/") for name in BENCH),
        ("daemon/units/a.hpp", '#pragma once\n#include "store/open.hpp"\n', ":2: units may not"),
        ("daemon/units/a.hpp", "#include <talk/say.hpp>\n", "units may not"),
        ("daemon/shop/run.cpp", '#include "store/open.hpp"\n', "shop may not"),
        ("daemon/shop/questions/fit.cpp", '#include "talk/say.hpp"\n', "shop may not"),
        ("daemon/store/open.cpp", '#include "talk/say.hpp"\n', "store may not"),
        ("daemon/talk/say.cpp", '#  include "store/open.hpp"\n', "talk may not"),
        ("daemon/serve/serve.cpp", '#include "store/open.hpp"\n', "serve may not"),
        ("daemon/serve/serve.cpp", '#include "remind/outbox.hpp"\n', "serve may not"),
        ("daemon/remind/outbox.cpp", '#include "serve/serve.hpp"\n', "remind may not"),
        ("daemon/talk/say.cpp", '#include "../store/open.hpp"\n', "by its folder"),
        ("daemon/talk/say.cpp", '#include "say.hpp"\n', "folder/file.hpp"),
        ("daemon/gossip/a.cpp", '#include "units/length.hpp"\n', "no folder of the design"),
        ("cli/main.cpp", '#include "shop/model.hpp"\n', "nothing of daemon except units"),
        ("cli/main.cpp", '#include "board/slots.hpp"\n', "nothing of daemon except units"),
    ],
)
