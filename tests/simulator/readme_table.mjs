// Puts what wrenlet-simulate printed (standard input) into a README, between its marks, as tables:
// ./check --simulate --readme.
import { readFileSync, writeFileSync } from "node:fs";

const readme = process.argv[2];
const lines = readFileSync(0, "utf8").split("\n");
let text = readFileSync(readme, "utf8");

function fail(what) {
    console.error(`readme_table: ${what}`);
    process.exit(1);
}

function put(name, content) {
    const open = `<!-- ${name}: begin -->`, close = `<!-- ${name}: end -->`;
    const begin = text.indexOf(open), end = text.indexOf(close);
    if (begin < 0 || end < begin) fail(`${readme} lacks the marks ${open} and ${close}.`);
    text = text.slice(0, begin + open.length) + "\n" + content + "\n" + text.slice(end);
}

function table(heads, rows) {
    if (rows.length === 0) fail(`there is no row of "${heads.join(", ")}" in what was read.`);
    const line = cells => `| ${cells.join(" | ")} |`;
    return [line(heads), `|${heads.map(() => "---|").join("")}`, ...rows.map(line)].join("\n");
}

// Rows by the kind of children, of the sections whose head matches.
function rowsUnder(head, row) {
    const rows = [];
    let kind = "";
    for (const line of lines) {
        const heads = line.match(head);
        if (heads) kind = heads[1];
        else if (line.trim() === "" || /^\w[^,]*, generator/.test(line)) kind = "";
        const cells = kind && !heads ? line.match(row) : null;
        if (cells) rows.push([kind, cells[1].replaceAll("_", " "), ...cells[2].trim().split(/\s+/)]);
    }
    return rows;
}

const children = (lines.join("\n").match(/^Generator \w, (\d+) children/m) ?? [])[1];
const valueAlone = row => row.map(cell => cell.split("/")[0]);

const kColumns = { "weak gain": 0, total: 1, "very low": 2, "bad sessions": 3, "first 8 named": 5,
                   "calibration error": 6, "in the 80 % range": 8, "log loss": 9 };
const policies = rowsUnder(/^Generator (\w), \d+ children/, /^([a-z_]+) +(.*\d\/.*)$/)
    .map(valueAlone)
    .map(([kind, policy, ...values]) =>
        [kind, policy, ...Object.values(kColumns).map(column => values[column] ?? "-")]);
// A run of one policy alone leaves the table that compares them as it is.
if (new Set(policies.map(row => row[1])).size > 1) put("simulated", `${children} simulated children of each kind:\n\n` +
    table(["kind", "policy", ...Object.keys(kColumns)], policies));

const said = rowsUnder(/^Said, generator (\w)/, /^ +(\d+(?:-\d+|\+)) +(.*)$/).map(valueAlone);
const held = rowsUnder(/^Held, generator (\w)/, /^ +(fresh|tired|tapping) +(\d.*)$/);
const shields = lines.join("\n").matchAll(/alone: (\d+), called missed: (\d+)/g);
const [along, missed] = [...shields].reduce(([a, b], found) => [a + +found[1], b + +found[2]], [0, 0]);
put("said", `${children} simulated children of each kind:\n\n` +
    table(["kind", "answers on a sound", "lines", "truly missed", "said missed", "of these truly",
           "of the missed named", "in the 80 % range", "in the 90 % range"], said) + "\n\n" +
    table(["kind", "sessions that are", "sessions", "nothing said", "tired said", "guessing said",
           "tired that one who knows her could say"],
          held) +
    `\n\nSounds missed along a shield alone: ${along}, of which called missed: ${missed}.`);
writeFileSync(readme, text);
