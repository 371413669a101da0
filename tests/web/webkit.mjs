// The same tablet in WebKitGTK, an engine of the family that iPads have, by Debian's driver
// (https://www.w3.org/TR/webdriver2/): touches are its pointer actions. It has no way to read the
// console, so what the page says there is gathered in the page; sound is "suspended" after that and
// until the first touch, which shows that the gathering counts as no gesture.
import { spawn } from "node:child_process";
import { writeFileSync } from "node:fs";
import { Tablet, pause, until } from "./tablet.mjs";

const kGather = "window.said_ = []; const log = console.log;"
    + " console.log = (...all) => { said_.push(String(all[0])); log(...all); }; return 1";
const kTake = "const said = said_; said_ = []; return said";
const kBrowser = "/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser";

export class WebKitTablet extends Tablet {
    static async open({ display = ":77", port = 4477 } = {}) {
        const tablet = new WebKitTablet(null, 1);
        tablet.programs = [spawn("Xvfb", [display, "-screen", "0", "1100x900x24"], { stdio: "ignore" })];
        await pause(1500);
        tablet.programs.push(spawn("WebKitWebDriver", [`--port=${port}`], {
            stdio: "ignore", env: { ...process.env, DISPLAY: display, LIBGL_ALWAYS_SOFTWARE: "1" } }));
        tablet.driver = `http://127.0.0.1:${port}/session`;
        const options = { "webkitgtk:browserOptions": { binary: kBrowser, args: ["--automation"] } };
        const session = await until(() => tablet.ask("", { capabilities: { alwaysMatch: options } }).catch(() => null), "the driver answers");
        tablet.driver += "/" + session.sessionId;
        tablet.version = session.capabilities.browserVersion;
        return tablet;
    }

    async ask(path, body) {
        const answer = await fetch(this.driver + path, body ? { method: "POST", body: JSON.stringify(body) } : {});
        const { value } = await answer.json();
        if (value?.error) throw new Error(`${value.error}: ${value.message}`);
        return value;
    }
    run(script) { return this.ask("/execute/sync", { script, args: [] }); }

    async goto(address) {
        await this.ask("/url", { url: address });
        await this.run(kGather);
        this.gathering = this.gather();
        const find = selector => this.ask("/element", { using: "css selector", value: selector }).then(found => Object.values(found)[0]);
        this.page = {
            screenshot: async ({ path }) => writeFileSync(path, Buffer.from(await this.ask("/screenshot"), "base64")),
            locator: selector => ({ boundingBox: async () => this.ask(`/element/${await find(selector)}/rect`) }),
        };
    }

    async gather() {
        while (!this.isClosing) {
            for (const text of await this.run(kTake).catch(() => [])) {
                if (!text.startsWith("{")) continue;
                const what = JSON.parse(text);
                this.said.push(what);
                if (what.place) this.state = what;
            }
            await pause(40);
        }
    }

    touch(type, [at]) {
        const there = at && { type: "pointerMove", duration: 0, x: Math.round(at.x), y: Math.round(at.y) };
        const actions = { touchStart: [there, { type: "pointerDown", button: 0 }], touchMove: [there], touchEnd: [{ type: "pointerUp", button: 0 }] };
        return this.ask("/actions", { actions: [{ type: "pointer", id: "finger", parameters: { pointerType: "touch" }, actions: actions[type] }] });
    }

    async close() {
        this.isClosing = true;
        await this.gathering;
        await fetch(this.driver, { method: "DELETE" }).catch(() => {});
        for (const program of this.programs.reverse()) program.kill();
    }
}
