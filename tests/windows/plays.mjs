// A scripted child's session at the Windows program under wine and at the native one, from the same
// seed: the same frames in the same order, the same answers. (Pixels and samples are not compared:
// letters and recordings are drawn and decoded there by other libraries.)
//   node plays.mjs WINDOWS_PROGRAM NATIVE_FOLDER SCRIPT
import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const [program, native, script] = process.argv.slice(2);
const room = mkdtempSync(join(tmpdir(), "wrenlet-windows-"));

function played(name, command, ...args) {
    const classroom = join(room, name), pictures = join(room, name + "-pictures");
    cpSync(join(native, "starter-classroom"), classroom, { recursive: true });
    const said = execFileSync(command, [...args, classroom, "--data", join(room, name + "-data"), "--off-screen",
        "--seed", "1", "--child-script", script, "--pictures", pictures], { encoding: "utf8" });
    const { finished, frames_hash, answers, right_first_time } = JSON.parse(said.trim().split("\n").at(-1));
    return { finished, frames_hash, answers, right_first_time, pictures: readdirSync(pictures).length,
        snapshots: readdirSync(join(classroom, "tablets")).length };
}

const here = JSON.stringify(played("native", join(native, "bin/wrenlet")));
const there = JSON.stringify(played("windows", "wine", program));
rmSync(room, { recursive: true, force: true });
console.log(`native:  ${here}\nwindows: ${there}`);
const { finished, answers, snapshots } = JSON.parse(there);
process.exit(here === there && finished && answers > 20 && snapshots === 1 ? 0 : 1);
