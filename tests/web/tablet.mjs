// A touch tablet in Chromium, and a child at it who looks where the game stands (?announce) and
// touches the glass as a finger does. Nothing is run inside the page: a driver's evaluate() counts
// as a gesture and would hide that sound does not begin.
import { chromium } from "../../assets/node_modules/playwright-core/index.mjs";

export const pause = ms => new Promise(over => setTimeout(over, ms));

/** Waits until `holds()`, or throws `what` after `ms`. */
export async function until(holds, what, ms = 30_000) {
    for (const end = Date.now() + ms; ;) {
        const value = await holds();
        if (value) return value;
        if (Date.now() > end) throw new Error("waited in vain: " + what);
        await pause(20);
    }
}

export class Tablet {
    /** `folder`: where the browser keeps what it keeps; opened again, it is the same tablet. */
    static async open(folder, { width = 1024, height = 768, scale = 2, args = [] } = {}) {
        const context = await chromium.launchPersistentContext(folder, {
            executablePath: process.env.CHROMIUM ?? "/usr/bin/chromium", chromiumSandbox: false,
            viewport: { width, height }, deviceScaleFactor: scale, hasTouch: true, isMobile: true,
            ignoreDefaultArgs: ["--mute-audio"],
            args: ["--autoplay-policy=document-user-activation-required", "--enable-unsafe-swiftshader",
                "--disable-dev-shm-usage", ...args],
        });
        const tablet = new Tablet(context, scale);
        tablet.folder = folder;
        return tablet;
    }

    constructor(context, scale) {
        this.context = context;
        this.scale = scale;
        this.said = []; // every announcement, oldest first
        this.trouble = [];
        this.state = null; // the last of where the game stands
    }

    /** A second tab of the same browser. */
    another() {
        const tab = new Tablet(this.context, this.scale);
        tab.isSecond = true;
        return tab;
    }

    async goto(address, seen = () => {}) {
        this.page = this.isSecond ? await this.context.newPage() : this.context.pages()[0] ?? await this.context.newPage();
        this.touchscreen = await this.context.newCDPSession(this.page);
        this.page.on("console", message => {
            const text = message.text();
            if (!text.startsWith("{")) {
                if (message.type() === "error" && !/Failed to load resource/.test(text)) this.trouble.push(text);
                return;
            }
            const what = JSON.parse(text);
            this.said.push(what);
            if (what.place) this.state = what;
            seen(what);
        });
        this.page.on("pageerror", error => this.trouble.push(String(error)));
        await this.page.goto(address, { timeout: 60_000 });
    }

    heard(key) { return this.said.filter(what => key in what); }

    touch(type, points) {
        return this.touchscreen.send("Input.dispatchTouchEvent", { type, touchPoints: points });
    }

    async tap(x, y) {
        await this.touch("touchStart", [{ x, y, id: 1 }]);
        await pause(60);
        await this.touch("touchEnd", []);
    }

    /** The child's button, as soon as it can be touched, be the game laid out yet or not; its place is
        asked of the browser, not of the page. */
    async begin() {
        await until(() => this.heard("touchable").length, "the wren can be touched", 90_000);
        const box = await this.page.locator("#begin").boundingBox(), before = this.heard("begun").length;
        await this.tap(box.x + box.width / 2, box.y + box.height / 2);
        await until(() => this.heard("begun").length > before, "the game has begun", 90_000);
    }

    /** The page anew, and the wren touched once, in the first moment: a child who knows where it comes.
        True when the game was not laid out yet as her finger went down. */
    async beginInHaste() {
        const box = await this.page.locator("#begin").boundingBox();
        const count = this.heard("touchable").length, before = this.heard("begun").length;
        const loading = this.page.reload();
        await until(() => this.heard("touchable").length > count, "the wren can be touched again", 90_000);
        const touching = this.tap(box.x + box.width / 2, box.y + box.height / 2);
        const lastOf = key => this.said.findLastIndex(what => key in what);
        const isEarly = lastOf("ready") < lastOf("touchable");
        await touching;
        await until(() => this.heard("begun").length > before, "the game has begun", 90_000);
        await loading;
        return isEarly;
    }

    middle(name) {
        const box = this.state?.things[name];
        return box && { x: (box[0] + box[2] / 2) / this.scale, y: (box[1] + box[3] / 2) / this.scale };
    }

    /** Touches what is right now, or what is not; a piece is dragged to where it belongs. */
    async act(chance) {
        const { right, place } = this.state ?? {};
        const example = this.middle("example");
        if (example) await this.tap(example.x, example.y); // she has seen enough of it
        const from = right && this.middle(right);
        if (!from) return false;
        const choices = Object.keys(this.state.things).filter(name => /^(choice|home)/.test(name));
        if (choices.length > 1 && /^(choice|home)/.test(right) && chance() < 0.2) {
            const at = this.middle(choices[Math.floor(chance() * choices.length)]);
            await this.tap(at.x, at.y);
            return true;
        }
        if (chance() < 0.5) {
            await this.tap(from.x, from.y);
            return true;
        }
        await this.touch("touchStart", [{ ...from, id: 1 }]);
        await pause(120);
        const next = this.state.right !== right && this.state.place === place && this.state.right && this.middle(this.state.right);
        if (next)
            for (let step = 1; step <= 6; ++step) {
                await this.touch("touchMove", [{ x: from.x + (next.x - from.x) * step / 6, y: from.y + (next.y - from.y) * step / 6, id: 1 }]);
                await pause(16);
            }
        await this.touch("touchEnd", []);
        return true;
    }

    /** Plays until `over()`. */
    async play(chance, over, ms) {
        for (const end = Date.now() + ms; !over(this);) {
            if (Date.now() > end) throw new Error("the session did not come to its end: " + this.state?.place);
            await this.act(chance);
            await pause(250);
        }
    }

    /** Waits for a talk with the desk, begun or ended from now on, after which no answer lay here alone
        and none was kept. What was said before counts for nothing: it may be older than an answer. */
    broughtAll(ms) {
        const from = this.said.length;
        return until(() => {
            const last = this.said.findLastIndex(what => "talked" in what);
            return last >= from && this.said[last].unsent === 0 && !this.said.slice(last).some(what => "kept" in what);
        }, "all answers are brought", ms);
    }

    /** The whole browser, as a tablet whose battery is taken out. */
    async kill() {
        const { execFileSync } = await import("node:child_process");
        const folder = this.folder;
        const ours = execFileSync("pgrep", ["-f", "--", `--user-data-dir=${folder}`], { encoding: "utf8" });
        for (const id of ours.trim().split("\n")) try { process.kill(Number(id), "SIGKILL"); } catch { /* gone */ }
        await this.context.close().catch(() => {});
    }

    close() { return this.context.close(); }
}

/** Numbers from 0 to 1 that follow from a seed (xorshift32). */
export function chanceOf(seed) {
    let state = seed | 1;
    return () => {
        state ^= state << 13;
        state ^= state >>> 17;
        state ^= state << 5;
        return (state >>> 0) / 2 ** 32;
    };
}
