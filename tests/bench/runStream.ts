// Memory of `trialfit check --stream --brief` over the lines that go through it: `npm run bench`. Lines are builds with
// one field, each of another size and with another name. What is in use after a collection shows whether anything is
// kept of the lines; resident memory also holds what V8 has no reason to collect yet, and is therefore seen once more
// with a small heap. TRIALFIT_BENCH_LINES sets how many lines, TRIALFIT_BENCH_LEAST from which on use must be flat.
import { spawn } from "node:child_process";
import { once } from "node:events";
import { readFileSync } from "node:fs";
import type { Readable } from "node:stream";
import { setTimeout as sleep } from "node:timers/promises";
import { fileURLToPath } from "node:url";
import { smallBuilds } from "../cli/streamBuilds.ts";

const MOST = Number(process.env.TRIALFIT_BENCH_LINES ?? 30_000);
/** From so many lines on the use must be flat: then all code is compiled and what is remembered for every build is there. */
const FULL = Number(process.env.TRIALFIT_BENCH_LEAST ?? 10_000);
/** Share by which the use of memory may differ between lines that are full. */
const FLAT = 0.05;
const MEGA = 1e6;
const place = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const bin = place("../../packages/cli/bin/trialfit.js");

/** Resident memory of a process [MB], from Linux's /proc; undefined elsewhere. */
function residentMemory(pid: number): number | undefined {
  try {
    const kilobytes = /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, "utf8"))?.[1];
    return kilobytes === undefined ? undefined : Math.round(Number(kilobytes) / 1024);
  } catch {
    return undefined;
  }
}

interface Told {
  readonly asked: number;
  readonly thread: number;
  readonly heapUsed: number;
  readonly external: number;
}

interface Row {
  readonly lines: number;
  readonly resident: number | undefined;
  readonly perSecond: number;
}

/** Streams all lines through one command, and looks at its memory at a thousand lines, three, ten, and so on. */
async function watch(flags: readonly string[], workers: number): Promise<void> {
  const options = ["check", "--stream", "--brief", "--workers", String(workers)];
  const child = spawn(
    process.execPath,
    ["--expose-gc", ...flags, "--import", place("./tellHeap.mjs"), bin, ...options],
    { stdio: ["pipe", "pipe", "inherit", "pipe"] },
  );
  const rows: Row[] = [];
  const told: Told[] = [];
  let rest = "";
  (child.stdio[3] as Readable).on("data", (chunk: Buffer) => {
    const pieces = (rest + chunk).split("\n");
    rest = pieces.pop()!;
    told.push(...pieces.map((piece) => JSON.parse(piece) as Told));
  });
  const begun = performance.now();
  let [lines, next] = [0, 1_000];
  /** The input stays open until the process has told its last memory: with the input it would end before it tells. */
  let askLast: (() => void) | undefined;
  const askedLast = new Promise<void>((resolve) => {
    askLast = resolve;
  });
  child.stdout!.on("data", (chunk: Buffer) => {
    for (const byte of chunk) {
      if (byte !== 10) continue;
      lines += 1;
      // The last lines are judged only when the input has ended.
      const isLast = lines === MOST - 200;
      if (lines < next && !isLast) continue;
      rows.push({
        lines,
        resident: residentMemory(child.pid!),
        perSecond: (1e3 * lines) / (performance.now() - begun),
      });
      child.kill("SIGUSR2");
      next = lines * (String(next).startsWith("1") ? 3 : 10 / 3);
      if (isLast) askLast?.();
    }
  });
  const closed = once(child, "close");
  for (const line of smallBuilds(MOST))
    if (!child.stdin!.write(`${line}\n`)) await once(child.stdin!, "drain");
  await askedLast;
  for (let waited = 0; waited < 600 && !told.some(({ asked }) => asked === rows.length); waited += 1)
    await sleep(50);
  child.stdin!.end();
  await closed;
  if (lines !== MOST) throw new Error(`${lines} reports of ${MOST} lines`);
  const used = (asked: number, isMain: boolean) =>
    told.filter((one) => one.asked === asked && (one.thread === 0) === isMain);
  const untold = rows.findIndex((_, index) => used(index + 1, true).length === 0);
  if (untold >= 0) throw new Error(`no memory was told after ${rows[untold]!.lines} lines`);
  const sum = (all: readonly Told[]) =>
    all.reduce((bytes, { heapUsed, external }) => bytes + heapUsed + external, 0) / MEGA;
  const after = rows.map((_, index) => sum([...used(index + 1, true), ...used(index + 1, false)]));
  console.log(
    `check --stream --brief --workers ${workers}${flags.length > 0 ? `, ${flags.join(" ")}` : ""}, Node ${process.versions.node}`,
  );
  console.table(
    Object.fromEntries(
      rows.map(({ lines: count, resident, perSecond }, index) => [
        `after ${count} lines`,
        {
          "MB in use after a collection": Number(after[index]!.toFixed(1)),
          "of these in workers": Number(sum(used(index + 1, false)).toFixed(1)),
          "MB resident": resident ?? "not known on this system",
          "lines/s": Math.round(perSecond),
        },
      ]),
    ),
  );
  const full = after.filter((_, index) => rows[index]!.lines >= FULL);
  if (full.length < 2) return;
  const growth = full.at(-1)! / full[0]! - 1;
  const says = `from ${FULL} lines on the memory in use changed by ${(100 * growth).toFixed(1)} %`;
  if (growth > FLAT) throw new Error(`${says}; expected no more than ${100 * FLAT} %`);
  console.log(`${says}: it is flat.`);
}

await watch([], 1);
await watch(["--max-old-space-size=96"], 1);
await watch([], 2);
