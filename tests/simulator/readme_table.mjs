// Puts what wrenlet-simulate printed (standard input) into a README, between its two marks, as a
// table of the main columns: ./check --simulate --readme.
import { readFileSync, writeFileSync } from "node:fs";

const kBegin = "<!-- simulated: begin -->", kEnd = "<!-- simulated: end -->";
const kColumns = { "weak gain": 0, total: 1, "very low": 2, "bad sessions": 3, "first 8 named": 5,
                   "calibration error": 6, "in the 80 % range": 8, "log loss": 9 };

const readme = process.argv[2];
const rows = [];
let generator = "", children = "";
for (const line of readFileSync(0, "utf8").split("\n")) {
    const head = line.match(/^Generator (\w), (\d+) children/);
    if (head) [, generator, children] = head;
    const cells = line.match(/^([a-z_]+) +(.*\d\/.*)$/);
    if (head || !cells) continue;
    const values = cells[2].trim().split(/\s+/).map(cell => cell.split("/")[0]);
    const shown = Object.values(kColumns).map(column => values[column] ?? "-");
    rows.push(`| ${generator} | ${cells[1].replaceAll("_", " ")} | ${shown.join(" | ")} |`);
}
if (rows.length === 0) {
    console.error("readme_table: there is no table in what was read.");
    process.exit(1);
}
const names = Object.keys(kColumns);
const table = [`${children} simulated children of each kind:`, "",
               `| kind | policy | ${names.join(" | ")} |`,
               `|---|---|${names.map(() => "---|").join("")}`, ...rows].join("\n");
const text = readFileSync(readme, "utf8");
const begin = text.indexOf(kBegin), end = text.indexOf(kEnd);
if (begin < 0 || end < begin) {
    console.error(`readme_table: ${readme} lacks the marks ${kBegin} and ${kEnd}.`);
    process.exit(1);
}
writeFileSync(readme, text.slice(0, begin + kBegin.length) + "\n" + table + "\n" + text.slice(end));
