// How large the page is, how soon it can be touched and what a frame costs, each held against a
// bound or a baseline of the same run. Starts are cold: a new browser profile each, no cache.
import { mkdtempSync, readFileSync, readdirSync, statSync } from "node:fs";
import { spawn } from "node:child_process";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { deflateSync } from "node:zlib";
import { Tablet, chanceOf, pause, until } from "./tablet.mjs";

const median = numbers => numbers.slice().sort((a, b) => a - b)[Math.floor(numbers.length / 2)];
const figure = (name, value, unit, baseline) => {
    const round = number => Math.round(number * 1000) / 1000;
    console.log(JSON.stringify({ name, value: round(value), unit, baseline: round(baseline), ratio: round(value / baseline) }));
};

/** As they travel: the page as the desk sends it to a browser that takes brotli (over https) or gzip
    (all others); the pack in pieces, each deflated before it is sealed (content/link/squeezed.hpp). */
export function sizes(page, pack) {
    const names = readdirSync(page), sent = ending => names.filter(name => !/\.(br|gz|txt)$/.test(name))
        .reduce((sum, name) => sum + statSync(join(page, names.includes(name + ending) ? name + ending : name)).size, 0);
    const bytes = readFileSync(pack), kPiece = 256 * 1024;
    let packed = 0;
    for (let from = 0; from < bytes.length; from += kPiece) packed += deflateSync(bytes.subarray(from, from + kPiece)).length;
    figure("page, gzip", sent(".gz") / 1e6, "MB", 3);
    figure("page, brotli", sent(".br") / 1e6, "MB", 3);
    figure("starter pack, deflated", packed / 1e6, "MB", 3);
    figure("page by gzip and one pack", (sent(".gz") + packed) / 1e6, "MB", 3);
    figure("page by brotli and one pack", (sent(".br") + packed) / 1e6, "MB", 3);
    return (Math.max(sent(".gz"), sent(".br")) + packed) / 1e6;
}

async function served(...args) {
    const program = spawn("node", ["assets/make/serve_page.mjs", ...args, "0"], { stdio: ["ignore", "pipe", "inherit"] });
    const line = (await createInterface({ input: program.stdout })[Symbol.asyncIterator]().next()).value;
    return { program, address: new URL(line).origin + "/" };
}

async function startOf(room, address) {
    const tablet = await Tablet.open(mkdtempSync(join(room, "start-")));
    await tablet.goto(address);
    const { ready } = await until(() => tablet.heard("ready")[0], "ready", 120_000);
    const touchable = tablet.heard("touchable")[0]?.touchable ?? ready;
    await tablet.close();
    return { touchable, ready };
}

/** The page with its starter, and the bare page, in turn: when the wren can be touched, and when the
    game behind it is laid out, which a touch before then waits for. */
export async function starts(page, bare, starter, room, times) {
    const ours = await served(page, starter), least = await served(bare, starter);
    const bares = [], touchable = [], ready = [];
    for (let i = 0; i < times; ++i) {
        bares.push((await startOf(room, least.address + "bare.html")).ready);
        const start = await startOf(room, ours.address + "?starter&announce");
        touchable.push(start.touchable);
        ready.push(start.ready);
    }
    figure("first touchable frame, against the bare page's first", median(touchable), "ms", median(bares));
    figure("game laid out, against the bare page's first frame", median(ready), "ms", median(bares));
    ours.program.kill();
    least.program.kill();
    return median(touchable) / median(bares);
}

/** Play with the processor slowed six times; the game tells what the steps cost that drew a frame, and
    what those that used an idle moment (a recording is decoded). */
export async function frames(page, starter, room) {
    const ours = await served(page, starter);
    const tablet = await Tablet.open(mkdtempSync(join(room, "frames-")));
    await tablet.goto(ours.address + "?starter&announce");
    await tablet.begin();
    await tablet.touchscreen.send("Emulation.setCPUThrottlingRate", { rate: 6 });
    const chance = chanceOf(5), kEnough = 400, told = () => tablet.heard("frame_ms").flatMap(what => what.frame_ms);
    for (const end = Date.now() + 240_000; Date.now() < end && told().length < kEnough; await pause(300)) await tablet.act(chance);
    const all = told();
    const between = tablet.heard("frame_ms").flatMap(what => what.between_ms);
    await tablet.close();
    ours.program.kill();
    if (all.length < kEnough) throw new Error(`only ${all.length} frames were drawn`);
    figure("CPU a frame, six times slowed, median", median(all), "ms", 4);
    figure("CPU a frame, six times slowed, 95th of 100", all.sort((a, b) => a - b)[Math.floor(all.length * 0.95)], "ms", 4);
    figure("CPU of a step between frames, six times slowed, median", median(between), "ms", 4);
    return median(all);
}
