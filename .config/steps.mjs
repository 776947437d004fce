// Shared by the commands of the README. Runs on Node 20 with nothing installed.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("..", import.meta.url));
const stamp = new URL("../node_modules/.trialfit-lock", import.meta.url);
const started = Date.now();
const seconds = (from) => `${((Date.now() - from) / 1000).toFixed(1)} s`;
const environment = { ...process.env, TURBO_TELEMETRY_DISABLED: "1", ASTRO_TELEMETRY_DISABLED: "1" };

/** Says what begins, runs it with its output shown, says how long it took; ends the whole command when it fails. */
export function step(what, command, args, { allowed = [0], env = {} } = {}) {
  const from = Date.now();
  console.log(`\n▸ ${what}`);
  const { status, error } = spawnSync(command, args, {
    cwd: root,
    stdio: "inherit",
    env: { ...environment, ...env },
    shell: process.platform === "win32",
  });
  if (error !== undefined) console.error(error.message);
  if (!allowed.includes(status)) {
    console.error(`✗ ${what}: failed after ${seconds(from)} (exit ${status ?? "by signal"})`);
    process.exit(typeof status === "number" && status !== 0 ? status : 1);
  }
  console.log(`✓ ${what}: ${seconds(from)}`);
  return status;
}

/** Installs the packages of the lock file, unless just these are there. */
export function install() {
  const lock = createHash("sha256")
    .update(readFileSync(new URL("../package-lock.json", import.meta.url)))
    .digest("hex");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === lock) return;
  step("install packages (about 450 MB the first time, a minute or two)", "npm", [
    "ci",
    "--loglevel=error",
    "--no-audit",
    "--no-fund",
  ]);
  mkdirSync(new URL("../node_modules", import.meta.url), { recursive: true });
  writeFileSync(stamp, lock);
}

/** Tools are started through npx, so that they run on the Node that the packages bring. */
export function tool(what, args, options) {
  return step(what, "npx", ["--no-install", ...args], options);
}

export function total() {
  return seconds(started);
}
