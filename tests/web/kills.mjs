// The browser, the network and the desk are killed in turn and at random while a child plays; every
// answer whose feedback she could hear is on the desk once. "kept" is announced when the browser's
// transaction is complete, which is before the game goes on to the feedback.
import { join } from "node:path";
import { Tablet, chanceOf, pause, until } from "./tablet.mjs";
import { compare } from "./session.mjs";

export async function killed(desk, network, room, times, seed, expect) {
    const chance = chanceOf(seed), kept = [], folder = join(room, "killed");
    let tablet = await Tablet.open(folder, { scale: 1 }), name;
    const note = what => { if (what.kept !== undefined) kept.push(what.kept); };
    const code = await desk.code();
    await tablet.goto(`${network.address}?announce#${code}`, note);
    name = (await until(() => tablet.heard("joined")[0], "the tablet has joined")).joined;
    await tablet.begin();

    const how = { page: 0, network: 0, desk: 0 };
    for (let time = 0; time < times; ++time) {
        // As often as not just when an answer is being kept, brought and let go of.
        const had = kept.length, soonest = Date.now() + chance() * 6000, latest = Date.now() + 25_000;
        while (Date.now() < latest && (kept.length === had || Date.now() < soonest)) {
            await tablet.act(chance);
            await pause(120);
            if (kept.length > had && chance() < 0.5) break;
        }
        await pause(chance() * 400);
        const which = ["page", "network", "desk"][time % 3];
        ++how[which];
        if (which === "page") {
            await tablet.kill();
            tablet = await Tablet.open(folder, { scale: 1 });
            await tablet.goto(`${network.address}?announce`, note);
            await tablet.begin();
        } else if (which === "network") {
            network.cut();
            setTimeout(() => network.mend(), 200 + chance() * 4000);
        } else {
            await desk.stop("SIGKILL");
            await pause(chance() * 1500);
            await desk.start();
        }
        if (time % 10 === 9) console.log(`  killed ${time + 1} times, ${kept.length} answers kept`);
    }
    network.mend();
    await tablet.broughtAll(150_000);
    expect(tablet.trouble.length === 0, `killed: nothing went wrong in the page ${tablet.trouble.slice(0, 3).join("; ")}`);
    await tablet.close();
    await desk.stop();
    const all = [...new Set(kept)];
    expect(all.length === kept.length, "killed: no number was given out twice");
    expect(all.length >= times / 2, `killed ${times} times (${JSON.stringify(how)}): ${all.length} answers kept`);
    compare(desk, name, all, expect, `killed ${times} times`);
}
