// The desk as a teacher's computer runs it (wrenlet-desk serve), and the network between it and the
// tablets, which can be cut.
import { execFileSync, spawn } from "node:child_process";
import { cpSync, mkdirSync } from "node:fs";
import { connect, createServer } from "node:net";
import { join } from "node:path";
import { createInterface } from "node:readline";
import { until } from "./tablet.mjs";

export class TeachersDesk {
    /** A classroom of its own in `room`, served on a port of its own; `more`: arguments of serve. */
    constructor(build, room, ...more) {
        this.build = build;
        this.more = more;
        this.page = join(build, "share/wrenlet/page");
        this.room = join(room, "classroom");
        mkdirSync(room, { recursive: true });
        cpSync(join(build, "starter-classroom"), this.room, { recursive: true });
        this.port = 0;
    }

    async start() {
        this.events = [];
        this.program = spawn(join(this.build, "bin/wrenlet-desk"),
            ["serve", this.room, "--json", "--port", String(this.port), "--page", this.page, ...this.more], { stdio: ["pipe", "pipe", "inherit"] });
        const program = this.program;
        this.ended = new Promise(over => program.on("exit", over));
        createInterface({ input: program.stdout }).on("line", line => this.events.push(JSON.parse(line)));
        const told = await until(() => this.events.find(one => one.event === "address"), "the desk serves");
        this.port = Number(new URL(told.address).port);
    }

    async code() {
        const seen = this.events.filter(one => one.event === "code").length;
        if (this.codes >= seen) this.program.stdin.write("\n");
        this.codes = (this.codes ?? 0) + 1;
        await until(() => this.events.filter(one => one.event === "code").length >= this.codes, "a code");
        return this.events.filter(one => one.event === "code")[this.codes - 1].code;
    }

    async stop(signal = "SIGTERM") {
        this.program.kill(signal);
        this.codes = 0;
        await this.ended;
    }

    /** Every answer in the classroom folder, as "tablet sequence child try item"; the desk must be stopped. */
    answers() {
        const files = execFileSync("find", [join(this.room, "tablets"), "-name", "*.db"], { encoding: "utf8" });
        return files.trim().split("\n").filter(file => file).flatMap(file =>
            execFileSync("sqlite3", ["-readonly", "-separator", " ", file,
                "SELECT tablet, sequence, child, try_number, item FROM response ORDER BY sequence"], { encoding: "utf8" })
                .trim().split("\n").filter(line => line));
    }
}

/** What lies between: tablets ask at its port, and it hands on to the desk's. */
export class Network {
    constructor(desk) {
        this.desk = desk;
        this.open = new Set();
        this.isCut = false;
        this.server = createServer(tablet => {
            if (this.isCut) return void tablet.destroy();
            const to = connect(this.desk.port, "127.0.0.1");
            for (const end of [tablet, to]) {
                this.open.add(end);
                end.on("error", () => {}).on("close", () => { this.open.delete(end); tablet.destroy(); to.destroy(); });
            }
            tablet.pipe(to).pipe(tablet);
        });
    }

    async start(scheme = "http") {
        await new Promise(up => this.server.listen(0, "127.0.0.1", up));
        this.address = `${scheme}://127.0.0.1:${this.server.address().port}/`;
    }

    cut() {
        this.isCut = true;
        for (const end of this.open) end.destroy();
    }
    mend() { this.isCut = false; }
    stop() { this.cut(); this.server.close(); }
}
