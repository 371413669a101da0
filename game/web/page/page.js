// The page: a start that a child touches, the game behind it, and what goes on beside it: joining
// the desk by a code, bringing it each response, taking a new pack in when nobody plays.
import { openKeep } from "./keep.js";
import { loadProgram } from "./wasm.js";
import { Desk, join } from "./talk.js";

const kHelloMs = 20_000, kMostWaitMs = 60_000, kQuietMs = 15_000;

const asked = new URLSearchParams(location.search);
const isStarter = asked.has("starter"); // the starter classroom, with no desk: ./play --web
const announces = asked.has("announce"); // what happens, to the console, for a test
const byId = id => document.getElementById(id);
const announce = what => { if (announces) console.log(JSON.stringify(what)); };

let keep, program, desk, game = 0, isLaid = false; // game: its address in the program, once it is open
let touched = false, begun = false; // she touched the wren; the game goes on
let isStale = false, removed = false, lastTouch = 0, reached;
let keeper; // the service worker's registration, where a browser allows one
let isFetched = false; // all that this page is made of is here

function say(words, more) {
    byId("words").textContent = words;
    if (more !== undefined) byId("more").textContent = more;
}

/** Sound begins with a touch, and only then; Safari takes it away again when it likes. A first touch
    may come before the game has opened its sound: it finds this context then, and takes it. */
function resumeSound() {
    const Context = window.AudioContext ?? window.webkitAudioContext;
    if (touched && window.Module && Context) (window.Module.SDL2 ??= {}).audioContext ??= new Context();
    const context = window.Module?.SDL2?.audioContext;
    if (context && context.state !== "running") context.resume().catch(() => {});
}
const sound = () => {
    const context = window.Module?.SDL2?.audioContext;
    return { sound: context?.state ?? "none", seconds: context?.currentTime ?? 0 };
};
for (const kind of ["pointerup", "touchend", "click", "keydown"])
    addEventListener(kind, () => { lastTouch = Date.now(); resumeSound(); }, { capture: true });

/** What the game calls. */
const calls = {
    open(address) { game = address; },
    failed(words) { say(words.trim()); },
    over() { location.reload(); },
    settings(bytes) { keep.put({ settings: bytes.slice() }).catch(console.error); },
    session(number, text) { keep.session(number, text); },
    end(number, playedMs) { keep.end(number, playedMs).catch(console.error).then(bringSoon); },
    response(address, number, text, playedMs) {
        keep.response(number, text, playedMs).then(key => announce({ kept: key }), error => {
            console.error(error);
            byId("more").textContent = "This browser could not keep an answer: its memory may be full.";
        }).finally(() => {
            program.call("wrenlet_kept", address);
            bringSoon();
        });
    },
};

/** The browser shows what is new and takes in a touch. */
const breath = () => new Promise(over => requestAnimationFrame(() => setTimeout(over, 0)));

/** Lays the class, its pack and what was kept out as files, and the game from them: in two steps, and
    a touch is taken in between. */
async function layOut() {
    const has = await keep.things("identity", "class", "pack", "pack_name", "pack_hash", "checked", "settings", "behind_ms");
    const kept = await keep.all();
    const files = program.files, name = has.pack_name.replace(/[^\w.-]/g, "_");
    for (const folder of ["/classroom/packs", "/tablet"]) files.mkdirTree(folder);
    files.writeFile("/classroom/class.json", has.class);
    files.writeFile(`/classroom/packs/${has.pack_name === name ? name : "-"}`, has.pack);
    // A pack that was looked into once is known again by its bytes.
    if (has.checked === has.pack_hash) files.symlink(`/classroom/packs/${name}`, "/tablet/pack.zip");
    if (has.settings) files.writeFile("/tablet/settings.json", has.settings);
    files.writeFile("/kept.json", JSON.stringify(kept));
    const tablet = has.identity ? JSON.parse(has.identity).tablet : "t-starter";
    await breath();
    program.run(tablet, has.behind_ms ?? 0, ...(announces ? ["--announce"] : []));
    if (!game) return false;
    await breath();
    if (!program.call("wrenlet_lay", game)) return false;
    isLaid = true;
    if (has.checked !== has.pack_hash) await keep.put({ checked: has.pack_hash });
    return true;
}

/** The child's button: to be touched as soon as there is something to play. What is not laid out yet
    she waits for, the wren hopping, and then the game begins by itself. */
function offerStart() {
    const button = byId("begin");
    button.disabled = false;
    button.addEventListener("click", () => {
        if (isStale) return location.reload();
        touched = true;
        resumeSound();
        tabs?.postMessage("begun");
        if (isLaid) return begin();
        button.classList.add("waiting");
        button.ariaBusy = "true";
    }, { once: true });
    announce({ touchable: Math.round(performance.now()) });
}

/** What was said tells why. */
function noStart() {
    const button = byId("begin");
    button.classList.remove("waiting");
    button.ariaBusy = "false";
    button.disabled = true;
}

function begin() {
    begun = true;
    byId("start").hidden = true;
    byId("canvas").focus();
    program.call("wrenlet_begin", game);
    announce({ begun: true });
    if (announces) for (const later of [500, 1500]) setTimeout(() => announce(sound()), later);
}

async function tellAdult() {
    if (begun) return;
    const waiting = isStarter ? 0 : await keep.countUnsent();
    const here = waiting === 1 ? "1 answer is" : `${waiting} answers are`;
    const words = ["Touch the wren to begin."];
    if (isStarter) words.push("This is the starter classroom; answers stay in this browser.");
    if (removed) words.push("The teacher took this tablet off her list; it joins again by a new code.");
    else if (desk && reached) words.push("Joined to the desk.");
    else if (desk) words.push("The desk is not in reach now; the game goes on without it.");
    if (waiting) words.push(`${here} still on this tablet alone, and go to the desk as soon as it can be reached.`);
    const installed = matchMedia("(display-mode: standalone), (display-mode: fullscreen)").matches || navigator.standalone;
    say(words.join(" "), installed ? "" : "Put this page on the home screen (Share, then Add to Home Screen): "
        + "a browser may clear what a page keeps when it was not used for a week.");
}

/** This page can't go on. At once it is at its start again, with all that was kept; or, if it has not
    begun, when it is touched. */
function startAnew() {
    isStale = true;
    if (touched) location.reload();
}

/** A second tab: the one that was begun last plays. */
const tabs = "BroadcastChannel" in window ? new BroadcastChannel("wrenlet") : null;
if (tabs) tabs.onmessage = startAnew;

/** A browser that was put aside for long, or is short of memory, may take away what is drawn with. */
byId("canvas").addEventListener("webglcontextlost", startAnew);

/** The worker keeps the page's files, so a newer page is seen only when it has fetched that: at each
    start, and when the desk is in reach again. It takes over once all of this page was fetched, so
    that no page is of two halves; and this one makes way as for a new pack. */
async function keepPage() {
    const workers = navigator.serviceWorker;
    if (!workers) return;
    let isFirst = !workers.controller; // this page came from the desk itself
    workers.addEventListener("controllerchange", () => {
        if (isFirst) return void (isFirst = false);
        isStale = true;
        if (game && !touched) location.reload();
    });
    keeper = await workers.register("worker.js").catch(() => undefined);
    keeper?.addEventListener("updatefound",
        () => keeper.installing?.addEventListener("statechange", letNewerIn));
    letNewerIn();
}

function letNewerIn() {
    if (isFetched) keeper?.waiting?.postMessage("take over");
}

const playing = () => begun && game !== 0 && !program.call("wrenlet_at_rest", game);

/** Takes in what the desk said; true when the class, the pack or a deletion made the game another. */
async function learn(welcome) {
    const had = await keep.things("class", "pack_hash", "behind_ms");
    const behind = welcome.clock_ms - Date.now();
    const behind_ms = Math.abs(behind) > 120_000 ? behind : 0;
    let changed = await keep.forget(welcome.deleted);
    if (welcome.pack_hash && welcome.pack_hash !== had.pack_hash) {
        const pack = await desk.pack(welcome.pack_hash, welcome.pack_bytes);
        if (!pack) return changed;
        await keep.put({ class: welcome.class, pack, pack_name: welcome.pack, pack_hash: welcome.pack_hash, behind_ms });
        return true;
    }
    if (welcome.class !== had.class || behind_ms === 0 !== ((had.behind_ms ?? 0) === 0)) {
        await keep.put({ class: welcome.class, behind_ms });
        changed ||= welcome.class !== had.class;
    }
    return changed;
}

/** One round of talk with the desk; false when it could not be had. */
async function talk() {
    try {
        await keep.again();
        const all = await desk.bring();
        const had = await keep.things("pack_hash");
        const welcome = await desk.hello(playing(), had.pack_hash ?? "");
        removed = welcome.kind === "removed";
        if (!reached && !removed) keeper?.update().catch(() => {});
        reached = !removed;
        if (welcome.kind === "welcome" && await learn(welcome)) isStale = true;
        announce({ talked: welcome.kind, unsent: await keep.countUnsent() });
        return all && welcome.kind === "welcome";
    } catch (error) {
        reached = false;
        announce({ talked: String(error.message ?? error) });
        return false;
    }
}

let timer, waitMs = kHelloMs, talking = false, wanted = false;

async function keepTalking() {
    clearTimeout(timer);
    if (talking) return void (wanted = true);
    talking = true;
    wanted = false;
    const well = await talk();
    talking = false;
    waitMs = well ? kHelloMs : Math.min(kMostWaitMs, Math.max(2000, waitMs * 2 % (2 * kMostWaitMs)));
    // What is new begins when nobody plays and nobody touches: at once, or between two children.
    const isFree = !begun || (!playing() && Date.now() - lastTouch > kQuietMs);
    if (isStale && game && isFree) return location.reload();
    await tellAdult();
    timer = setTimeout(keepTalking, wanted ? 0 : removed ? kMostWaitMs : waitMs);
}

function bringSoon() {
    if (!desk || removed) return;
    clearTimeout(timer);
    timer = setTimeout(keepTalking, 300);
}
addEventListener("online", bringSoon);
document.addEventListener("visibilitychange", () => { if (!document.hidden) bringSoon(); });

/** Shows the field for the code until the tablet has joined. */
async function joinByCode() {
    const form = byId("join"), field = byId("code");
    const inAddress = decodeURIComponent(location.hash.slice(1));
    form.hidden = false;
    for (let typed = inAddress; ; typed = null) {
        if (!typed) {
            if (!byId("words").dataset.says) say("This tablet does not belong to a class yet.");
            typed = await new Promise(given => form.addEventListener("submit", event => {
                event.preventDefault();
                given(field.value);
            }, { once: true }));
        }
        say("One moment: joining.");
        await new Promise(painted => setTimeout(painted, 50));
        try {
            const identity = await join(program, typed);
            await keep.put({ identity });
            form.hidden = true;
            history.replaceState(null, "", location.pathname + location.search);
            announce({ joined: JSON.parse(identity).tablet });
            return identity;
        } catch (error) {
            say(error.message);
            byId("words").dataset.says = "wrong";
        }
    }
}

/** A first hello, again and again, until there is a class with a pack to play from. */
async function firstClass() {
    for (let wait = 1000; ; wait = Math.min(wait * 2, 20_000)) {
        if ((await keep.things("pack")).pack) return;
        say("One moment: the class is being fetched from the desk.");
        await talk();
        if ((await keep.things("pack")).pack) return void (isStale = false);
        say(removed ? "The teacher took this tablet off her list."
            : reached ? "The desk has no pack for this class yet: hand one out at the desk."
                : "The desk is not in reach. See that this tablet is on the classroom's network.");
        await new Promise(later => setTimeout(later, wait));
    }
}

async function fetchStarter() {
    if ((await keep.things("pack")).pack) return;
    const get = async path => {
        const answer = await fetch(path);
        if (!answer.ok) throw new Error("The starter classroom is not here: start ./play --web.");
        return answer;
    };
    const text = await (await get("starter/class.json")).text(), name = JSON.parse(text).pack;
    const pack = new Uint8Array(await (await get("starter/packs/" + name)).arrayBuffer());
    await keep.put({ class: text, pack, pack_name: name, pack_hash: program.text("link_hash", pack) });
}

async function start() {
    keepPage();
    navigator.storage?.persist?.();
    const loading = loadProgram(calls);
    try {
        keep = await openKeep(isStarter ? "wrenlet-starter" : "wrenlet");
    } catch {
        return say("This browser keeps nothing for a page, so no answer would last. "
            + "Open the page in a window that is not private, or allow it to store data.");
    }
    let { identity, pack } = await keep.things("identity", "pack");
    const has = isStarter || (identity && pack);
    if (has) offerStart();
    program = await loading;
    isFetched = true;
    letNewerIn();
    if (isStarter) {
        await fetchStarter();
    } else {
        identity ??= await joinByCode();
        desk = new Desk(program, keep, identity);
        await firstClass();
    }
    if (!has) offerStart();
    if (!await layOut()) return void noStart();
    await tellAdult();
    announce({ ready: Math.round(performance.now()), ...sound() });
    if (touched && !begun) begin(); // the button begins by itself what is laid out already
    if (desk) keepTalking();
}

start().catch(error => {
    console.error(error);
    isFetched = true; // what there is of it: a newer page may do better
    letNewerIn();
    say(`The page could not start (${error.message ?? error}).`, "Reload it. A browser from before 2021 may be too old.");
});
