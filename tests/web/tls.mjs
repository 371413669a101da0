// The desk with a certificate: the page comes over https, packed by brotli, a child's answers arrive,
// and over plain http nothing is said. The certificate is made here and signs itself, so the browser
// is told to take it; that a browser refuses one it does not know is the browser's own.
import { execFileSync } from "node:child_process";
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { Network, TeachersDesk } from "./desk.mjs";
import { compare } from "./session.mjs";
import { Tablet, chanceOf, until } from "./tablet.mjs";

export async function overTls(build, room, seed, expect) {
    const folder = join(room, "tls"), [key, cert] = ["key.pem", "certificate.pem"].map(name => join(folder, name));
    mkdirSync(folder);
    execFileSync("openssl", ["req", "-x509", "-newkey", "rsa:2048", "-nodes", "-days", "2", "-subj", "/CN=127.0.0.1",
        "-keyout", key, "-out", cert], { stdio: "ignore" });
    const desk = new TeachersDesk(build, folder, "--cert", cert, "--key", key), network = new Network(desk);
    await desk.start();
    await network.start("https");
    const tablet = await Tablet.open(join(folder, "browser"), { scale: 1, args: ["--ignore-certificate-errors"] });
    const packed = new Map();
    tablet.context.on("response", response =>
        packed.set(new URL(response.url()).pathname, response.headers()["content-encoding"]));
    try {
        await tablet.goto(`${network.address}?announce#${await desk.code()}`);
        const name = (await until(() => tablet.heard("joined")[0], "the tablet has joined")).joined;
        await tablet.begin();
        await tablet.play(chanceOf(seed), () => tablet.heard("kept").length >= 3, 240_000);
        await tablet.broughtAll(60_000);
        expect(packed.get("/wrenlet.wasm") === "br", `tls: the program comes by brotli (${packed.get("/wrenlet.wasm")})`);
        expect(!tablet.trouble.length, `tls: nothing went wrong in the page ${tablet.trouble.slice(0, 3).join("; ")}`);
        const plain = await fetch(network.address.replace("https", "http")).then(answer => answer.status, () => "nothing");
        expect(plain !== 200, `tls: over plain http the desk gives ${plain}`);
        await desk.stop();
        compare(desk, name, tablet.heard("kept").map(what => what.kept), expect, "tls");
    } finally {
        await tablet.close();
        network.stop();
        if (desk.program.exitCode === null) await desk.stop();
    }
}
