// A teacher opens the page twice on one tablet: whichever tab was begun last plays, the other goes
// back to its start, and what was answered in either is on the desk once. Both talk with the desk
// by the tablet's one key, at once.
import { cpSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Tablet, chanceOf, pause, until } from "./tablet.mjs";
import { compare } from "./session.mjs";

export async function twoTabs(desk, network, room, seed, expect) {
    const one = await Tablet.open(join(room, "tabs"), { scale: 1 });
    await one.goto(`${network.address}?announce#${await desk.code()}`);
    const name = (await until(() => one.heard("joined")[0], "the tablet has joined")).joined;
    await one.begin();
    const two = one.another(), chance = chanceOf(seed), kept = tab => tab.heard("kept").length;
    // A tab that lies behind gets few frames; a child there would touch what is long past.
    const answer = async (tab, count) => {
        await tab.page.bringToFront();
        const until = kept(tab) + count;
        await tab.play(chance, () => kept(tab) >= until, 240_000);
    };
    await answer(one, 4);
    await two.goto(`${network.address}?announce`);
    await until(() => two.heard("ready").length, "the second tab is ready");
    await answer(one, 2); // with the other one there
    for (const [from, to] of [[one, two], [two, one], [one, two]]) {
        const starts = from.heard("touchable").length;
        await to.page.bringToFront();
        await to.begin();
        await until(() => from.heard("touchable").length > starts, "the other tab is at its start again");
        await answer(to, 4);
    }
    await Promise.all([one, two].map(tab => tab.broughtAll(90_000)));
    expect(!one.trouble.length && !two.trouble.length,
        `two tabs: nothing went wrong in either ${[...one.trouble, ...two.trouble].slice(0, 3).join("; ")}`);
    await one.close();
    await desk.stop();
    const all = [...one.heard("kept"), ...two.heard("kept")].map(what => what.kept);
    expect(new Set(all).size === all.length, `two tabs: of ${all.length} numbers none was given out twice`);
    compare(desk, name, all, expect, "two tabs");
}

/** With no desk in reach the page starts from what the browser keeps, plays, and brings it later. */
export async function offline(desk, network, room, seed, expect) {
    const tablet = await Tablet.open(join(room, "offline"), { scale: 1 });
    await tablet.goto(`${network.address}?announce#${await desk.code()}`);
    const name = (await until(() => tablet.heard("joined")[0], "the tablet has joined")).joined;
    await until(() => tablet.heard("ready").length, "ready", 90_000);
    const worker = await until(() => tablet.context.serviceWorkers()[0], "the service worker is there");
    await until(() => worker.evaluate("registration.active?.state === 'activated'"), "it keeps the page's files");
    network.cut();
    await desk.stop();
    const starts = tablet.heard("touchable").length;
    await tablet.page.reload();
    await until(() => tablet.heard("touchable").length > starts, "the page starts without a desk");
    await tablet.begin();
    await tablet.play(chanceOf(seed), () => tablet.heard("kept").length >= 4, 240_000);
    expect(true, `offline: started and played with no desk in reach, ${tablet.heard("kept").length} answers kept`);
    await desk.start();
    network.mend();
    await tablet.broughtAll(120_000);
    expect(!tablet.trouble.length, `offline: nothing went wrong in the page ${tablet.trouble.slice(0, 3).join("; ")}`);
    await tablet.close();
    await desk.stop();
    compare(desk, name, tablet.heard("kept").map(what => what.kept), expect, "offline");
}

/** The desk comes back with a newer page: a tablet at its start fetches it and goes over to it by
    itself, with what it kept. */
export async function newerPage(desk, network, room, seed, expect) {
    const page = join(room, "newer-page");
    cpSync(desk.page, page, { recursive: true });
    const tablet = await Tablet.open(join(room, "newer"), { scale: 1 });
    await tablet.goto(`${network.address}?announce#${await desk.code()}`);
    await until(() => tablet.heard("ready").length, "ready", 90_000);
    const worker = await until(() => tablet.context.serviceWorkers()[0], "the service worker is there");
    await until(() => worker.evaluate("registration.active?.state === 'activated'"), "it keeps the page's files");
    await desk.stop();
    const change = (name, from, to) => {
        const path = join(page, name), text = readFileSync(path, "utf8");
        if (!from.test(text)) throw new Error(`${name} has no ${from}`);
        writeFileSync(path, text.replace(from, to));
        for (const packed of [".gz", ".br"]) rmSync(path + packed);
    };
    change("index.html", /aria-label="Begin"/, 'aria-label="Newer"');
    change("worker.js", /wrenlet-[0-9a-f]{16}/, "wrenlet-0123456789abcdef");
    desk.page = page;
    const starts = tablet.heard("ready").length;
    await desk.start();
    await until(() => tablet.heard("ready").length > starts, "the page starts anew by itself", 180_000);
    expect(await tablet.page.locator("#begin[aria-label=Newer]").count() === 1, "newer page: a tablet at its start goes over to it by itself");
    await tablet.begin();
    await tablet.play(chanceOf(seed), () => tablet.heard("kept").length >= 2, 240_000);
    await tablet.broughtAll(120_000);
    expect(!tablet.trouble.length, `newer page: nothing went wrong ${tablet.trouble.slice(0, 3).join("; ")}`);
    await tablet.close();
}

/** The browser takes away what the page draws with, as tablets do that are short of memory or were put
    aside: the page is at its start again, and what was answered is on the desk once. */
export async function graphicsGone(desk, network, room, seed, expect) {
    const tablet = await Tablet.open(join(room, "graphics"), { scale: 1 });
    await tablet.goto(`${network.address}?announce#${await desk.code()}`);
    const name = (await until(() => tablet.heard("joined")[0], "the tablet has joined")).joined;
    const chance = chanceOf(seed), kept = () => tablet.heard("kept").length;
    for (const round of [1, 2]) {
        await tablet.begin();
        await tablet.play(chance, () => kept() >= 2 * round, 240_000);
        const starts = tablet.heard("touchable").length;
        await tablet.page.evaluate(() => {
            const canvas = document.getElementById("canvas");
            const drawing = canvas.getContext("webgl2") ?? canvas.getContext("webgl");
            drawing.getExtension("WEBGL_lose_context").loseContext();
        });
        await until(() => tablet.heard("touchable").length > starts, "the page is at its start again", 60_000);
    }
    await tablet.begin();
    await tablet.play(chance, () => kept() >= 6, 240_000);
    await tablet.broughtAll(90_000);
    expect(!tablet.trouble.length, `graphics gone: nothing else went wrong ${tablet.trouble.slice(0, 3).join("; ")}`);
    await tablet.close();
    await desk.stop();
    compare(desk, name, tablet.heard("kept").map(what => what.kept), expect, "graphics gone");
}
