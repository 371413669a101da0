// The service worker: the page's own files from the browser's store, so that the game starts with
// no desk in reach. Browsers allow it over https, or from the machine itself. What is said to the
// desk goes past it. The two lines below are filled in where the page is laid out.
const kVersion = "wrenlet-@VERSION@";
const kFiles = ["./", ...JSON.parse('@FILES@')];

addEventListener("install", event => event.waitUntil((async () => {
    const store = await caches.open(kVersion);
    await store.addAll(kFiles.map(file => new Request(file, { cache: "reload" })));
})()));

// The page that is open says when this one may serve in place of the one before.
addEventListener("message", () => self.skipWaiting());

addEventListener("activate", event => event.waitUntil((async () => {
    for (const name of await caches.keys())
        if (name.startsWith("wrenlet-") && name !== kVersion) await caches.delete(name);
    await clients.claim();
})()));

addEventListener("fetch", event => {
    if (event.request.method !== "GET") return;
    const url = new URL(event.request.url);
    if (url.origin !== location.origin) return;
    event.respondWith((async () => {
        const store = await caches.open(kVersion);
        const kept = await store.match(event.request, { ignoreSearch: true });
        return kept ?? fetch(event.request);
    })());
});
