// Picks the classroom's pictures out of the Noto set (npm @iconify-json/noto, Apache-2.0): one SVG
// for each line of pictures.tsv, and the licence beside them.
// Use: node pick_pictures.mjs PICTURES.tsv NODE_MODULES OUT_FOLDER
import { mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";

// The game's SVG reader passes these over. Without a clip path or a use some pictures are whole all
// the same: those are marked, by someone who looked.
const kNeverDrawn = /<(mask|filter|text|image|style|symbol|pattern)\b/;
const kUndrawn = /<(use|clipPath|mask|filter|text|image|style|symbol|pattern)\b/;

function fail(message) {
    console.error(`pick_pictures: ${message}`);
    process.exit(1);
}

const [table, modules, out] = process.argv.slice(2);
if (!out) fail("say PICTURES.tsv NODE_MODULES OUT_FOLDER");

const set = join(modules, "@iconify-json", "noto");
const { icons, aliases = {}, width, height } = JSON.parse(readFileSync(join(set, "icons.json")));
const icon = (name) => icons[name] ?? icons[aliases[name]?.parent];

mkdirSync(out, { recursive: true });
const wanted = new Set(["LICENSE-noto.txt"]);
const drawn = new Map();
readFileSync(table, "utf8").split("\n").forEach((line, index) => {
    if (line === "" || line.startsWith("#")) return;
    const place = `${table}, line ${index + 1}`;
    const [word, name, mark] = line.split("\t");
    if (!name || ![undefined, "whole"].includes(mark))
        fail(`${place}: expected a word, a picture's name and nothing or "whole", with tabs`);
    const picture = icon(name);
    if (!picture) fail(`${place}: the set has no picture "${name}"`);
    if (wanted.has(`${word}.svg`)) fail(`${place}: "${word}" stands there twice`);
    const twin = drawn.get(picture.body);
    if (twin) fail(`${place}: "${word}" shows the same as "${twin}"`);
    const undrawn = picture.body.match(mark ? kNeverDrawn : kUndrawn);
    if (undrawn) fail(`${place}: "${name}" uses ${undrawn[0]}>, which is not drawn`);
    drawn.set(picture.body, word);
    wanted.add(`${word}.svg`);
    const box = `0 0 ${picture.width ?? width} ${picture.height ?? height}`;
    writeFileSync(
        join(out, `${word}.svg`),
        `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${box}">${picture.body}</svg>\n`,
    );
});

const { name, author, license } = JSON.parse(readFileSync(join(set, "info.json")));
writeFileSync(
    join(out, "LICENSE-noto.txt"),
    `The pictures in this folder are from ${name} by ${author.name} (${author.url}),\n` +
        `unchanged but for being put one to a file. Licence: ${license.title} (${license.spdx}),\n` +
        `whose text is ../licences/apache-2.0.txt.\n`,
);
for (const file of readdirSync(out)) if (!wanted.has(file)) rmSync(join(out, file));
