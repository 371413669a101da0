// The program, and how texts and bytes go into it and come out of it.

/** Fetches and starts it, without the game. `page`: what the game calls back. */
export function loadProgram(page) {
    return new Promise((well, badly) => {
        window.Module = {
            page,
            canvas: document.getElementById("canvas"),
            print: text => console.log(text),
            printErr: text => console.warn(text),
            onRuntimeInitialized: () => well(new Program(window.Module)),
            onAbort: what => badly(new Error(String(what))),
        };
        const script = document.createElement("script");
        script.src = "wrenlet.js";
        script.onerror = () => badly(new Error("wrenlet.js could not be fetched"));
        document.body.append(script);
    });
}

class Program {
    constructor(module) { this.module = module; }

    get files() { return this.module.FS; }
    run(...args) { return this.module.callMain(args.map(String)); }

    /** Calls a function of numbers, texts and Uint8Arrays (an address and a length). */
    call(name, ...args) {
        const types = [], values = [], copies = [];
        for (const arg of args) {
            if (arg instanceof Uint8Array) {
                const address = this.module._malloc(arg.length || 1);
                this.module.HEAPU8.set(arg, address);
                copies.push(address);
                types.push("number", "number");
                values.push(address, arg.length);
            } else {
                types.push(typeof arg === "string" ? "string" : "number");
                values.push(arg);
            }
        }
        try {
            return this.module.ccall(name, "number", types, values);
        } finally {
            for (const address of copies) this.module._free(address);
        }
    }

    /** The same, of one that gives bytes. */
    bytes(name, ...args) {
        const given = this.call(name, ...args);
        const begin = this.call("bytes_begin", given), size = this.call("bytes_size", given);
        const copy = this.module.HEAPU8.slice(begin, begin + size);
        this.call("bytes_free", given);
        return copy;
    }

    text(name, ...args) { return new TextDecoder().decode(this.bytes(name, ...args)); }
}
