import { fencedBlocks } from "../../site/src/data/fencedBlocks.ts";
import { WorkFolder } from "./WorkFolder.ts";

const compilerOptions = {
  strict: true,
  noEmit: true,
  target: "ES2024",
  module: "NodeNext",
  lib: ["ES2024", "DOM", "DOM.Iterable"],
  types: ["node"],
  skipLibCheck: true,
};

/** What the compiler says of the blocks of TypeScript on these pages, each a module of its own. */
export async function typeFaults(pages: readonly (readonly [name: string, text: string])[]) {
  const folder = new WorkFolder();
  try {
    let checked = 0;
    for (const [name, text] of pages)
      for (const { language, text: code, line } of fencedBlocks(text)) {
        if (language !== "ts") continue;
        folder.write(`${name.replaceAll("/", "-")}-${line}.ts`, code);
        checked += 1;
      }
    folder.write("tsconfig.json", JSON.stringify({ compilerOptions, include: ["*.ts"] }));
    const { output } = await folder.run("npx tsc -p .");
    return { checked, faults: output.trim() };
  } finally {
    folder.remove();
  }
}
