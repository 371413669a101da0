// The web page in Chromium: node check.mjs BUILD KILLS [PART...], of sizes, starts, frames, session,
// webkit (in WebKitGTK), tls, tabs, offline, newer (a newer page), graphics (taken away) and kills; all,
// when none is named.
// A line for each thing that was looked at; figures as JSON lines; ends with 1 when something is not
// as it must be. Pictures stay in BUILD/web-pictures.
import { cpSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { TeachersDesk, Network } from "./desk.mjs";
import { frames, sizes, starts } from "./figures.mjs";
import { killed } from "./kills.mjs";
import { compare, onClassMap, wholeSession } from "./session.mjs";
import { graphicsGone, newerPage, offline, twoTabs } from "./tabs.mjs";
import { overTls } from "./tls.mjs";
import { WebKitTablet } from "./webkit.mjs";

const [build, kills, ...parts] = process.argv.slice(2);
const room = mkdtempSync(join(tmpdir(), "wrenlet-web-"));
const page = join(build, "share/wrenlet/page"), starter = join(build, "starter-classroom");
let wrong = 0;
const expect = (holds, what) => {
    console.log((holds ? "well: " : "NOT WELL: ") + what);
    wrong += holds ? 0 : 1;
};
const wanted = part => !parts.length || parts.includes(part);

async function withDesk(name, work) {
    const desk = new TeachersDesk(build, join(room, name)), network = new Network(desk);
    await desk.start();
    await network.start();
    try {
        await work(desk, network);
    } finally {
        network.stop();
        if (desk.program.exitCode === null) await desk.stop();
    }
}

const kChromium = [{ name: "landscape", width: 1024, height: 768 },
    { name: "portrait", width: 768, height: 1024, isHasty: true }];
const kWebKit = [{ name: "webkit", open: () => WebKitTablet.open() }];

async function sessions(name, shapes) {
    await withDesk(name, async (desk, network) => {
        const played = [];
        for (const [i, shape] of shapes.entries())
            played.push(await wholeSession(desk, network, room, shape, 7 + i, 12, expect));
        await desk.stop();
        for (const one of played) compare(desk, one.tablet, one.kept, expect, "session");
        onClassMap(desk, played.reduce((sum, one) => sum + one.kept.length, 0), expect);
        const pictures = join(build, "web-pictures");
        mkdirSync(pictures, { recursive: true });
        for (const one of played) for (const shot of one.shots) cpSync(shot, join(pictures, shot.split("/").at(-1)));
    });
}

try {
    if (wanted("sizes")) expect(sizes(page, join(starter, "packs/by-the-pond-1.zip")) < 3, "page and pack are under 3 MB, by gzip too");
    if (wanted("starts")) {
        const ratio = await starts(page, join(build, "../web/bin"), starter, room, 5);
        expect(ratio <= 2, "the first touchable frame comes within twice the bare page's");
    }
    if (wanted("frames")) expect(await frames(page, starter, room) < 4, "a frame costs less than 4 ms, six times slowed");
    if (wanted("session")) await sessions("session", kChromium);
    if (wanted("webkit")) await sessions("webkit", kWebKit);
    if (wanted("tls")) await overTls(build, room, 41, expect);
    if (wanted("tabs")) await withDesk("tabs", (desk, network) => twoTabs(desk, network, room, 21, expect));
    if (wanted("offline")) await withDesk("offline", (desk, network) => offline(desk, network, room, 31, expect));
    if (wanted("newer")) await withDesk("newer", (desk, network) => newerPage(desk, network, room, 51, expect));
    if (wanted("graphics")) await withDesk("graphics", (desk, network) => graphicsGone(desk, network, room, 61, expect));
    if (wanted("kills"))
        await withDesk("kills", (desk, network) => killed(desk, network, room, Number(kills), 11, expect));
} catch (error) {
    expect(false, error.stack);
}
rmSync(room, { recursive: true, force: true, maxRetries: 5 });
console.log(wrong === 0 ? "all well" : `${wrong} not well`);
process.exit(wrong === 0 ? 0 : 1);
