// What the page keeps in the browser, in IndexedDB. Each response is one add() under a number that
// the browser gives out and never gives again, so that two tabs can neither lose nor double one;
// it is also put on the list of what the desk has not kept yet, in the same transaction. Nothing
// here is ever rewritten but a session's time, the tablet's settings, and the link's counter.
const kStores = ["sessions", "responses", "unsent", "things"];

const done = request => new Promise((well, badly) => {
    request.onsuccess = () => well(request.result);
    request.onerror = () => badly(request.error);
});

const complete = transaction => new Promise((well, badly) => {
    transaction.oncomplete = () => well();
    transaction.onabort = () => badly(transaction.error ?? new Error("aborted"));
});

export async function openKeep(name) {
    const request = indexedDB.open(name, 1);
    request.onupgradeneeded = () => {
        const db = request.result;
        db.createObjectStore("sessions", { autoIncrement: true }).createIndex("child", "child");
        db.createObjectStore("responses", { autoIncrement: true }).createIndex("child", "child");
        db.createObjectStore("unsent");
        db.createObjectStore("things");
    };
    return new Keep(await done(request));
}

class Keep {
    #db;
    #sessions = new Map(); // the game's number of a session → { record, key }
    #last = Promise.resolve(); // writes follow one another
    #waiting = []; // what could not be written yet

    constructor(db) {
        this.#db = db;
        db.onversionchange = () => db.close();
    }

    #write(stores = kStores) {
        try {
            return this.#db.transaction(stores, "readwrite", { durability: "strict" });
        } catch (error) {
            if (!(error instanceof TypeError)) throw error;
            return this.#db.transaction(stores, "readwrite"); // a browser that knows no durability
        }
    }

    /** Every session and response, as the game reads them. */
    async all() {
        const read = this.#db.transaction(["sessions", "responses"]);
        const [ids, sessions, keys, responses] = await Promise.all([
            done(read.objectStore("sessions").getAllKeys()), done(read.objectStore("sessions").getAll()),
            done(read.objectStore("responses").getAllKeys()), done(read.objectStore("responses").getAll())]);
        ids.forEach((key, i) => this.#sessions.set(key, { record: sessions[i], key }));
        return {
            sessions: ids.map((key, i) => [key, JSON.stringify(sessions[i])]),
            responses: keys.map((key, i) => [key, responses[i].session, responses[i].text]),
        };
    }

    /** A session is written with its first response; until then there is nothing to lose. */
    session(number, text) {
        this.#sessions.set(number, { record: JSON.parse(text) });
    }

    /** Resolves to the response's number once it and all before it are written. */
    response(number, text, playedMs) {
        const entry = { number, text, playedMs, child: JSON.parse(text).child };
        this.#waiting.push(entry);
        return this.#soon(() => this.#flush(), () => entry.key);
    }

    /** Tries again what could not be written. */
    again() {
        return this.#waiting.length ? this.#soon(() => this.#flush(), () => true) : Promise.resolve(true);
    }

    end(number, playedMs) {
        const session = this.#sessions.get(number);
        if (!session) return Promise.resolve();
        session.record = { ...session.record, ended: true, played_ms: Math.max(session.record.played_ms, playedMs) };
        return this.#soon(async () => {
            if (session.key === undefined) return; // nothing was answered in it
            const write = this.#write(["sessions"]);
            write.objectStore("sessions").put(session.record, session.key);
            await complete(write);
        }, () => undefined);
    }

    #soon(work, result) {
        const now = this.#last.then(work).then(result);
        this.#last = now.catch(() => {});
        return now;
    }

    async #flush() {
        while (this.#waiting.length) {
            await this.#add(this.#waiting[0]);
            this.#waiting.shift();
        }
    }

    async #add(entry) {
        const session = this.#sessions.get(entry.number);
        const write = this.#write(["sessions", "responses", "unsent"]);
        const record = { ...session.record, played_ms: Math.max(session.record.played_ms, entry.playedMs) };
        let key = session.key;
        const add = () => {
            write.objectStore("responses").add({ session: key, child: entry.child, text: entry.text })
                .onsuccess = event => {
                    entry.key = event.target.result;
                    write.objectStore("unsent").add(1, entry.key);
                };
        };
        if (key === undefined) {
            write.objectStore("sessions").add(record).onsuccess = event => {
                key = event.target.result;
                add();
            };
        } else {
            write.objectStore("sessions").put(record, key);
            add();
        }
        await complete(write);
        session.key = key;
        session.record = { ...session.record, played_ms: record.played_ms };
    }

    /** The first of what the desk has not kept yet: [number, session, text]. */
    async unsent(most) {
        const read = this.#db.transaction(["unsent", "responses"]);
        const keys = await done(read.objectStore("unsent").getAllKeys(null, most));
        const rows = await Promise.all(keys.map(key => done(read.objectStore("responses").get(key))));
        return keys.map((key, i) => [key, rows[i]?.session ?? 0, rows[i]?.text ?? ""]);
    }

    countUnsent() {
        return done(this.#db.transaction("unsent").objectStore("unsent").count());
    }

    /** The desk has them, or never will: they are let go of, and stay as the child's history. */
    async letGo(keys) {
        const write = this.#write(["unsent"]);
        for (const key of keys) write.objectStore("unsent").delete(key);
        await complete(write);
    }

    /** All that these children did; true when there was anything. */
    async forget(children) {
        if (!children.length) return false;
        const write = this.#write(["sessions", "responses", "unsent"]);
        let found = false;
        for (const child of children)
            for (const name of ["responses", "sessions"])
                write.objectStore(name).index("child").openKeyCursor(child).onsuccess = event => {
                    const cursor = event.target.result;
                    if (!cursor) return;
                    found = true;
                    write.objectStore(name).delete(cursor.primaryKey);
                    if (name === "responses") write.objectStore("unsent").delete(cursor.primaryKey);
                    cursor.continue();
                };
        await complete(write);
        return found;
    }

    async things(...names) {
        const store = this.#db.transaction("things").objectStore("things");
        const values = await Promise.all(names.map(name => done(store.get(name))));
        return Object.fromEntries(names.map((name, i) => [name, values[i]]));
    }

    /** All of them or none; undefined takes one away. */
    async put(things) {
        const write = this.#write(["things"]);
        for (const [name, value] of Object.entries(things))
            if (value === undefined) write.objectStore("things").delete(name);
            else write.objectStore("things").put(value, name);
        await complete(write);
    }

    /** The next number of the link: no tab is ever given one that another was given. */
    async nextNumber(above = 0) {
        const write = this.#write(["things"]);
        const store = write.objectStore("things");
        let number;
        store.get("number").onsuccess = event => {
            number = Math.max(event.target.result ?? 0, above) + 1;
            store.put(number, "number");
        };
        await complete(write);
        return number;
    }
}
