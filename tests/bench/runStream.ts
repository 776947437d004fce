// Memory of `trialfit check --stream --brief` over the lines that go through it: `npm run bench`. Lines are builds with
// one field, each of another size and with another name. TRIALFIT_BENCH_LINES sets how many.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { smallBuilds } from "../cli/streamBuilds.ts";

const MOST = Number(process.env.TRIALFIT_BENCH_LINES ?? 10_000);
const bin = fileURLToPath(new URL("../../packages/cli/bin/trialfit.js", import.meta.url));

/** Resident memory of a process [MB], from Linux's /proc; undefined elsewhere. */
function residentMemory(pid: number): number | undefined {
  try {
    const kilobytes = /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, "utf8"))?.[1];
    return kilobytes === undefined ? undefined : Math.round(Number(kilobytes) / 1024);
  } catch {
    return undefined;
  }
}

const child = spawn(process.execPath, [bin, "check", "--stream", "--brief"], {
  stdio: ["pipe", "pipe", "inherit"],
});
const rows: Record<string, object> = {};
const begun = performance.now();
let [lines, next] = [0, 1_000];
child.stdout.on("data", (chunk: Buffer) => {
  for (const byte of chunk) {
    if (byte !== 10) continue;
    lines += 1;
    if (lines < next && lines < MOST) continue;
    const seconds = (performance.now() - begun) / 1e3;
    rows[`after ${lines} lines`] = {
      "MB resident": residentMemory(child.pid!) ?? "not known on this system",
      "lines/s": Math.round(lines / seconds),
    };
    next = lines * (String(next).startsWith("1") ? 3 : 10 / 3);
  }
});
const closed = once(child, "close");
for (const line of smallBuilds(MOST)) if (!child.stdin.write(`${line}\n`)) await once(child.stdin, "drain");
child.stdin.end();
await closed;
if (lines !== MOST) throw new Error(`${lines} reports of ${MOST} lines`);
console.log(`check --stream --brief, one process, Node ${process.versions.node}`);
console.table(rows);
