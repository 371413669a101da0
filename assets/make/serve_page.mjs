// Serves the page on this machine alone, with the starter classroom and no desk, so that it can be
// tried at once: node serve_page.mjs PAGE STARTER [PORT]. Its files are read at the start, and
// nothing else is ever served.
import { createServer } from "node:http";
import { readFileSync, readdirSync } from "node:fs";
import { extname, join } from "node:path";

const [page, starter, port = "8470"] = process.argv.slice(2);
const kTypes = { ".html": "text/html; charset=utf-8", ".js": "text/javascript", ".css": "text/css",
    ".wasm": "application/wasm", ".data": "application/octet-stream", ".png": "image/png", ".svg": "image/svg+xml",
    ".webmanifest": "application/manifest+json", ".json": "application/json", ".zip": "application/zip" };

const files = new Map();
for (const name of readdirSync(page))
    if (extname(name) in kTypes) files.set("/" + name, readFileSync(join(page, name)));
if (files.has("/index.html")) files.set("/", files.get("/index.html"));
files.set("/starter/class.json", readFileSync(join(starter, "class.json")));
for (const name of readdirSync(join(starter, "packs")))
    files.set("/starter/packs/" + name, readFileSync(join(starter, "packs", name)));

const server = createServer((asked, answer) => {
    const path = new URL(asked.url, "http://localhost").pathname, bytes = files.get(path);
    if (asked.method !== "GET" || !bytes) return void answer.writeHead(404).end();
    answer.writeHead(200, { "Content-Type": kTypes[extname(path) || ".html"], "Cache-Control": "no-cache",
        "Content-Length": bytes.length }).end(bytes);
});
server.on("error", error => {
    if (error.code !== "EADDRINUSE") throw error;
    server.listen(0, "127.0.0.1");
});
server.on("listening", () =>
    console.log(`http://127.0.0.1:${server.address().port}/?starter`));
server.listen(Number(port), "127.0.0.1");
