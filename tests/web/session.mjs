// A tablet joins by the code and a child plays a whole session by touch, with sound; what she
// answered lies in the classroom, each answer once, and on the class map.
import { execFileSync } from "node:child_process";
import { join } from "node:path";
import { Tablet, chanceOf, pause, until } from "./tablet.mjs";

export async function wholeSession(desk, network, room, shape, seed, minutes, expect) {
    const tablet = await (shape.open ?? (() => Tablet.open(join(room, shape.name), shape)))();
    const shots = [];
    const shot = async name => {
        const file = join(room, `${shape.name}-${name}.png`);
        await tablet.page.screenshot({ path: file }).then(() => shots.push(file), () => {});
    };
    const code = await desk.code();
    await tablet.goto(`${network.address}?announce#${code}`);
    const joined = await until(() => tablet.heard("joined")[0], "the tablet has joined");
    await until(() => tablet.heard("ready").length, "ready", 120_000);
    await shot("start");
    const silent = tablet.heard("ready")[0];
    expect(silent.sound === "suspended" && silent.seconds === 0, `${shape.name}: no sound before the first touch (${silent.sound})`);
    if (shape.isHasty) {
        expect(await tablet.beginInHaste(), `${shape.name}: one touch before the game was laid out began it`);
    } else {
        await tablet.begin();
    }
    const soundSince = () => tablet.said.slice(tablet.said.findIndex(what => what.begun)).filter(what => "sound" in what);
    const [first, second] = await until(() => soundSince().length > 1 && soundSince(), "sound is told of");
    expect(first.sound === "running" && second.seconds > first.seconds + 0.5,
        `${shape.name}: the audio context runs after it, from ${first.seconds} to ${second.seconds} s`);
    await until(() => tablet.state?.place === "badges", "the badges");
    await pause(600);
    await shot("badges");

    const chance = chanceOf(seed), pictured = new Set();
    const isOver = () => tablet.heard("place").some(what => what.place.startsWith("ending"));
    const end = Date.now() + minutes * 60_000;
    while (!isOver() && Date.now() < end) {
        const place = tablet.state.place.split(" ").slice(0, 2).join(" ");
        if (!pictured.has(place) && pictured.size < 12) {
            pictured.add(place);
            await shot(place.replace(/\W+/g, "-"));
        }
        await tablet.act(chance);
        await pause(250);
    }
    expect(isOver(), `${shape.name}: the session came to its end`);
    await pause(1500);
    await shot("end");
    const kept = tablet.heard("kept").map(what => what.kept);
    expect(kept.length > 5, `${shape.name}: ${kept.length} answers were given`);
    await tablet.broughtAll(60_000);
    expect(tablet.trouble.length === 0, `${shape.name}: nothing went wrong in the page ${tablet.trouble.join("; ")}`);
    await tablet.close();
    return { tablet: joined.joined, kept, shots };
}

/** Each answer that was kept on a tablet is in the classroom once. REQUIRES: the desk is stopped. */
export function compare(desk, tablet, kept, expect, what) {
    const rows = desk.answers().filter(row => row.startsWith(tablet + " ")).map(row => Number(row.split(" ")[1]));
    const lost = kept.filter(key => !rows.includes(key));
    expect(lost.length === 0, `${what}: of ${kept.length} answers that were kept, ${lost.length} were lost ${lost}`);
    expect(new Set(rows).size === rows.length, `${what}: ${rows.length} answers on the desk, none twice`);
}

/** The class map counts the first tries of every answer that was kept, and no more; second tries are
    practice (content/practice/response.hpp). REQUIRES: compare() was well, so the rows are the answers. */
export function onClassMap(desk, count, expect) {
    const progress = JSON.parse(execFileSync(join(desk.build, "bin/wrenlet-desk"), ["progress", desk.room, "--json"],
        { encoding: "utf8" }));
    const given = desk.answers(), first = given.filter(row => row.split(" ")[3] === "1");
    const counted = progress.children.reduce((sum, child) => sum + child.answers, 0);
    expect(given.length === count && counted === first.length && counted > count / 2,
        `the class map counts ${counted} of ${first.length} first tries among ${count} answers`);
}
