// The desk's Windows program under wine beside the native one: a pack that both call good, the same
// words and papers about the same class, a window that opens where nobody sees it, and the game
// handed to a browser. (Packs are not the same byte for byte: what the demo voice says anew there
// comes out of another mathematical library. How Windows itself shows windows, sounds and prints,
// this can't say.)
//   node desk.mjs WINDOWS_PROGRAM NATIVE_FOLDER UNIT.json
import { execFileSync, spawn } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { get } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { setTimeout as sleep } from "node:timers/promises";

const [program, native, unit] = process.argv.slice(2);
const room = mkdtempSync(join(tmpdir(), "wrenlet-desk-windows-"));
const classroom = join(room, "R\u00e4ume 4");
let failed = 0;

function tell(what, holds, more = "") {
    console.log(`${holds ? "ok  " : "FAIL"} ${what}${more && ": " + more}`);
    failed += holds ? 0 : 1;
}

const page = join(room, "page");
mkdirSync(page);
writeFileSync(join(page, "index.html"), "<title>Wrenlet</title>");

const desks = { native: [join(native, "bin/wrenlet-desk")], windows: ["wine", program] };

function said(desk, ...args) {
    const [command, ...before] = desks[desk];
    const how = { encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] };
    return execFileSync(command, [...before, ...args], how).replaceAll("\r\n", "\n");
}

// Both are asked; what each prints, and leaves in FILE, is the same.
function same(what, args, file = "") {
    const [here, there] = ["native", "windows"].map((desk) => {
        rmSync(file || join(room, "none"), { force: true });
        const words = said(desk, ...args);
        return [words, file && readFileSync(file).toString("base64")];
    });
    const bytes = file ? Buffer.from(there[1], "base64").length : there[0].length;
    tell(what, here[0] === there[0] && here[1] === there[1] && bytes > 40, `${bytes} bytes`);
}

// The desk serves until `work` is done: `events` has what it printed, by the event's name.
async function serving(work, ...options) {
    const [command, ...before] = desks.windows;
    const desk = spawn(command, [...before, "serve", classroom, "--port", "0", "--page", page, "--json", ...options]);
    const events = {};
    createInterface(desk.stdout).on("line", (line) => {
        const event = JSON.parse(line);
        (events[event.event] ??= []).push(event);
    });
    const until = async (holds) => {
        for (let i = 0; i < 300 && !holds(); ++i) await sleep(100);
        return holds();
    };
    await until(() => events.code);
    await work(new URL(events.address?.[0].address ?? "http://nowhere:1"), desk, events, until);
    desk.kill();
    await new Promise((done) => desk.on("exit", done));
}

async function serves() {
    await serving(async ({ port }, desk, events, until) => {
        const answer = await fetch(`http://127.0.0.1:${port}/`);
        tell("a browser gets the page", (await answer.text()).includes("Wrenlet"), `port ${port}`);
        desk.stdin.write("\r\n");
        tell("a line opens a new code", await until(() => events.code.length === 2),
            events.code.map((shown) => shown.code).join(", "));
        let second = "";
        try {
            said("windows", "serve", classroom, "--port", "0", "--page", page);
        } catch (error) {
            second = error.stderr;
        }
        tell("a second desk is told apart", second.includes("served to tablets already"));
    });
}

// By a certificate that signs itself, and is trusted here alone.
async function servesByTls() {
    const [key, cert] = ["key.pem", "certificate.pem"].map((name) => join(room, name));
    execFileSync("openssl", ["req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2", "-subj", "/CN=desk",
        "-addext", "subjectAltName=IP:127.0.0.1", "-keyout", key, "-out", cert], { stdio: "ignore" });
    const got = (port, trusted) => new Promise((done) => get({ port, host: "127.0.0.1", path: "/", ca: trusted },
        (answer) => {
            let words = answer.socket.getProtocol() + " ";
            answer.on("data", (bytes) => words += bytes);
            answer.on("end", () => done(words));
        }).on("error", (error) => done(error.code)));
    await serving(async ({ port, protocol }) => {
        const trusting = await got(port, readFileSync(cert)), unknowing = await got(port);
        tell("over https too", protocol === "https:" && /^TLSv1\.[23] .*Wrenlet/.test(trusting), trusting);
        tell("who does not trust the certificate gets nothing", unknowing === "DEPTH_ZERO_SELF_SIGNED_CERT", unknowing);
        const plain = await fetch(`http://127.0.0.1:${port}/`).then((answer) => answer.status, () => "nothing");
        tell("nothing is said over plain http then", plain === "nothing", plain);
    }, "--cert", cert, "--key", key);
    writeFileSync(key, "not a key");
    let words = "";
    try {
        said("windows", "serve", classroom, "--port", "0", "--page", page, "--cert", cert, "--key", key);
    } catch (error) {
        words = error.stderr;
    }
    tell("a key that is none is told", words.includes("certificate and key"), words.trim());
}

async function opens() {
    const [command, ...before] = desks.windows;
    const desk = spawn(command, [...before, classroom],
        { env: { ...process.env, SDL_VIDEODRIVER: "dummy", SDL_AUDIODRIVER: "dummy" } });
    let ended = false, words = "";
    desk.stderr.on("data", (bytes) => words += bytes);
    desk.on("exit", () => ended = true);
    await sleep(8000);
    tell("the window opens and stays", !ended, words);
    desk.kill();
}

cpSync(join(native, "starter-classroom"), classroom, { recursive: true });
const [here, there] = ["native", "windows"].map((desk) =>
    said(desk, "build", unit, "--out", join(room, "pond.zip")).match(/\d+ items, \d+ clips, \d+ pictures/)?.[0]);
tell("a pack of the starter unit", here && here === there, there);
same("whether that pack is good", ["check", join(room, "pond.zip"), "--json"]);
same("how words are said", ["word", "wren", "zoologist", "blorf", "--json"]);
same("what a unit's words can ask", ["items", unit, "--skill", "onset-rime.rhyme-sort", "--json"]);
same("what the children's answers say", ["progress", classroom, "--json"]);
same("who belongs together", ["groups", classroom, "--json"]);
same("a lesson on paper", ["lesson", classroom, "--html", join(room, "le\u00e7on.html")], join(room, "le\u00e7on.html"));
same("answers for other programs", ["export", classroom, "--csv", join(room, "all.csv")], join(room, "all.csv"));
said("windows", classroom, "--picture", join(room, "map.png"));
tell("the map is drawn", existsSync(join(room, "map.png")) && statSync(join(room, "map.png")).size > 10000);
await serves();
await servesByTls();
await opens();
rmSync(room, { recursive: true, force: true });
process.exit(failed ? 1 : 0);
