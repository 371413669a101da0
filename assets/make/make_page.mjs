// Lays the web page out in one folder, as the desk serves it: the files written by hand, the program
// and the icons; beside each file what it packs to, for browsers that take it so. The service
// worker is told the files and a version that follows from all their bytes.
//   node make_page.mjs TO WRITTEN PROGRAM_FOLDER ICONS
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { cpSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { brotliCompressSync, constants } from "node:zlib";

const [to, written, programs, icons] = process.argv.slice(2);
rmSync(to, { recursive: true, force: true });
mkdirSync(to, { recursive: true });
cpSync(written, to, { recursive: true });
for (const name of ["wrenlet.js", "wrenlet.wasm", "wrenlet.data"]) cpSync(join(programs, name), join(to, name));
for (const name of readdirSync(icons)) cpSync(join(icons, name), join(to, name));

const files = readdirSync(to).filter(name => name !== "worker.js").sort();
const version = createHash("sha256");
for (const name of files) version.update(name).update(readFileSync(join(to, name)));
const worker = readFileSync(join(to, "worker.js"), "utf8")
    .replace("@VERSION@", version.digest("hex").slice(0, 16))
    .replace("@FILES@", () => JSON.stringify(files.filter(name => name !== "index.html")));
writeFileSync(join(to, "worker.js"), worker);

for (const name of readdirSync(to)) {
    if (name.endsWith(".png")) continue; // packed already
    const bytes = readFileSync(join(to, name));
    execFileSync("zopfli", [join(to, name)]); // NAME.gz: smaller by a twentieth than the quick way
    writeFileSync(join(to, name + ".br"), brotliCompressSync(bytes, {
        params: { [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length, [constants.BROTLI_PARAM_LGWIN]: 24 } }));
}
writeFileSync(join(to, "made.txt"), "");
