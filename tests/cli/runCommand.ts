import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

const bin = fileURLToPath(new URL("../../packages/cli/bin/trialfit.js", import.meta.url));

/** Runs the built command as a user would, and gives back what it printed and its exit code. */
export function runCommand(
  args: readonly string[],
  input?: string | Buffer,
  env: Record<string, string> = {},
  cwd?: string,
) {
  const { status, stdout, stderr } = spawnSync(process.execPath, [bin, ...args], {
    encoding: "utf8",
    // Colour libraries take CI for a terminal that shows colours.
    env: { ...process.env, CI: "", ...env },
    ...(input === undefined ? {} : { input }),
    ...(cwd === undefined ? {} : { cwd }),
    maxBuffer: 64 * 1024 * 1024,
    timeout: 300_000,
  });
  return { status, stdout, stderr };
}
