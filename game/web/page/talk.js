// What is said to the desk: joining it once, then hello, the pack, and the responses it has not
// kept yet. What goes over the network was sealed by the program, and is opened by it.
const kPatience = 15_000; // ms, for an answer
const kMostRows = 200; // in one message

async function post(path, body) {
    const answer = await fetch(path, {
        method: body ? "POST" : "GET", body, cache: "no-store",
        headers: body ? { "Content-Type": "application/octet-stream" } : {},
        signal: AbortSignal.timeout?.(kPatience),
    });
    if (!answer.ok) throw Object.assign(new Error(`the desk answers ${answer.status}`), { status: answer.status });
    return new Uint8Array(await answer.arrayBuffer());
}

/** Joins by a code as it was typed. Gives the tablet's identity, or throws words for an adult. */
export async function join(program, typed) {
    const code = program.text("link_code", typed);
    if (!code) throw new Error("This is not a code: it has eight signs, as the desk shows them.");
    let offer;
    try {
        offer = await post("join");
    } catch {
        throw new Error("The desk lets no tablet join now. Make a new code at the desk, then try again.");
    }
    const joining = program.call("link_join", code, offer);
    if (!joining) throw new Error("The desk and this page do not understand one another. Reload the page.");
    try {
        const request = program.bytes("link_request", joining);
        let answer;
        try {
            answer = await post("join", request);
        } catch {
            throw new Error("The desk does not take this code. Look whether it is still the one it shows; each is good for one tablet and five minutes.");
        }
        const identity = program.text("link_joined", joining, answer);
        if (!identity) throw new Error("The desk does not know this code. Look at it again.");
        return identity;
    } finally {
        program.call("link_join_over", joining);
    }
}

export class Desk {
    #program; #keep; #identity;

    constructor(program, keep, identity) {
        this.#program = program;
        this.#keep = keep;
        this.#identity = identity;
    }

    /** One thing asked by `name`, one of the program's, and the answer to it. */
    async #ask(name, ...args) {
        let above = 0;
        for (let tries = 0; tries < 3; ++tries) {
            const number = String(await this.#keep.nextNumber(above));
            const sealed = this.#program.bytes(name, this.#identity, number, ...args);
            if (!sealed.length) return null;
            const bytes = this.#program.bytes("link_answer", this.#identity, number, await post("talk", sealed));
            const end = bytes.indexOf(10);
            if (end < 0) throw new Error("what came back is not the desk's answer");
            const answer = JSON.parse(new TextDecoder().decode(bytes.subarray(0, end)));
            if (answer.kind !== "behind") return { ...answer, bytes: bytes.subarray(end + 1) };
            above = answer.number;
        }
        throw new Error("the desk has counted further than this tablet");
    }

    /** Tells how the tablet stands; gives what the desk said to that. */
    async hello(playing, packHash) {
        return this.#ask("link_hello", Date.now(), await this.#keep.countUnsent(), playing ? 1 : 0, packHash);
    }

    /** Every response that the desk has not kept yet. False when some are still here. */
    async bring() {
        for (;;) {
            const rows = await this.#keep.unsent(kMostRows);
            if (!rows.length) return true;
            const answer = await this.#ask("link_responses", JSON.stringify(rows));
            if (answer === null) {
                // None of these can be read, here or anywhere.
                await this.#keep.letGo(rows.map(row => row[0]));
                continue;
            }
            if (answer.kind !== "kept") return false;
            const settled = [...answer.kept, ...answer.refused];
            if (!settled.length) return false;
            if (answer.refused.length) console.warn("the desk refused", answer.refused.join(" "));
            await this.#keep.letGo(settled);
        }
    }

    /** A pack's bytes, whole and checked against its hash; null when the desk has it no more. */
    async pack(hash, size) {
        const whole = new Uint8Array(size);
        for (let from = 0; from < size;) {
            const piece = await this.#ask("link_want", hash, from);
            if (piece.kind !== "piece" || !piece.bytes.length || from + piece.bytes.length > size) return null;
            whole.set(piece.bytes, from);
            from += piece.bytes.length;
        }
        return this.#program.text("link_hash", whole) === hash ? whole : null;
    }
}
