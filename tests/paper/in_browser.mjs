// How the papers in a folder print in a real Chromium, at A4 and Letter: pages, what runs over the
// edge, and what axe-core finds. One JSON line a page; exits with 1 when a page is not as it must
// be. node in_browser.mjs FOLDER AXE.js
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const [folder, axe] = process.argv.slice(2);
const room = mkdtempSync(join(tmpdir(), "wrenlet-paper-"));
const chromium = (...args) =>
    execFileSync("chromium", ["--headless", "--no-sandbox", "--disable-gpu", ...args],
        { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"], timeout: 120_000 });

/** The page with `inside` put before the end of its head, and nothing kept from running. */
function changed(html, inside) {
    const open = html.replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, "");
    const file = join(room, "page.html");
    writeFileSync(file, open.replace("</head>", () => inside + "</head>"));
    return "file://" + file;
}

function pagesAt(html, size) {
    const pdf = join(room, "page.pdf");
    chromium("--no-pdf-header-footer", "--print-to-pdf=" + pdf,
        changed(html, `<style>@page { size: ${size}; }</style>`));
    const info = execFileSync("pdfinfo", [pdf], { encoding: "utf8" });
    return Number(/^Pages:\s+(\d+)/m.exec(info)[1]);
}

/** What axe-core finds, and how far the page is wider than its window. */
function looked(html) {
    const ask = `addEventListener("load", () => axe.run().then(found => {
        const report = document.createElement("pre");
        report.id = "report";
        report.textContent = JSON.stringify({
            over: document.documentElement.scrollWidth - document.documentElement.clientWidth,
            found: found.violations.map(v => ({ id: v.id, impact: v.impact })),
            passed: found.passes.length });
        document.body.append(report); }));`;
    const dom = chromium("--virtual-time-budget=20000", "--window-size=800,1100", "--dump-dom",
        changed(html, `<script>${readFileSync(axe, "utf8")}</script><script>${ask}</script>`));
    const report = /<pre id="report">(.*?)<\/pre>/s.exec(dom);
    if (!report) throw new Error("axe-core gave no answer");
    return JSON.parse(report[1].replace(/&quot;/g, '"').replace(/&gt;/g, ">").replace(/&amp;/g, "&"));
}

let bad = 0, count = 0;
for (const name of readdirSync(folder).filter(file => file.endsWith(".html")).sort()) {
    const html = readFileSync(join(folder, name), "utf8");
    const seen = looked(html);
    const line = { page: name, a4: pagesAt(html, "A4"), letter: pagesAt(html, "Letter"), ...seen };
    const serious = seen.found.filter(one => ["serious", "critical"].includes(one.impact));
    const good = line.a4 === 1 && line.letter === 1 && seen.over <= 0 && seen.passed > 0 &&
        serious.length === 0;
    console.log(JSON.stringify({ ...line, good }));
    bad += good ? 0 : 1;
    ++count;
}
rmSync(room, { recursive: true });
console.log(`${count - bad} passed, ${bad} failed`);
process.exit(bad === 0 && count > 0 ? 0 : 1);
