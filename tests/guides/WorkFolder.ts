import { spawn } from "node:child_process";
import { chmodSync, mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { delimiter, dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** What a command printed, errors among the rest as on a terminal, and how it ended. */
export interface Ran {
  readonly output: string;
  readonly status: number | null;
}

/**
 * An empty folder in which a reader of a page would work: the packages are installed in it, and the clone's own
 * `packages` stand beside them for pages that check a demo build.
 */
export class WorkFolder {
  readonly path = mkdtempSync(join(tmpdir(), "trialfit-guide-"));

  constructor() {
    for (const name of ["node_modules", "packages"])
      symlinkSync(join(root, name), join(this.path, name), "dir");
    this.write("package.json", '{ "private": true, "type": "module" }');
    // npx takes a second to find what lies beside it: this does the same at once.
    this.write(".bin/npx", '#!/bin/sh\ncommand="$1"; shift\nexec "node_modules/.bin/$command" "$@"\n');
    chmodSync(join(this.path, ".bin/npx"), 0o755);
  }

  write(name: string, text: string): void {
    const path = join(this.path, name);
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }

  /** Runs a line of shell as a reader would type it. */
  run(command: string): Promise<Ran> {
    const PATH = [join(this.path, ".bin"), dirname(process.execPath), process.env.PATH].join(delimiter);
    return new Promise((resolve, reject) => {
      const child = spawn("sh", ["-c", `${command} 2>&1`], {
        cwd: this.path,
        // Colour libraries take CI for a terminal that shows colours.
        env: { ...process.env, PATH, CI: "", NO_COLOR: "1" },
        stdio: ["ignore", "pipe", "pipe"],
      });
      let output = "";
      for (const stream of [child.stdout, child.stderr])
        stream.setEncoding("utf8").on("data", (piece: string) => {
          output += piece;
        });
      child.on("error", reject).on("close", (status) => resolve({ output, status }));
    });
  }

  remove(): void {
    rmSync(this.path, { recursive: true, force: true });
  }
}
