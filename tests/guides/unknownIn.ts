import { runCommand } from "../cli/runCommand.ts";
import { readPage } from "./pages.ts";

const helps = new Map<string, string>();

/** What `--help` of a command prints, asked once. */
function helpOf(command: string): string {
  if (!helps.has(command)) helps.set(command, runCommand([...command.split(" "), "--help"]).stdout);
  return helps.get(command)!;
}

/** What a command within a sentence names that does not exist: a script, a command, an option. */
export function unknownIn(command: string): readonly string[] {
  const script = /^npm run (\S+)/.exec(command)?.[1];
  if (script !== undefined) {
    const { scripts } = JSON.parse(readPage("package.json")) as { scripts: Record<string, string> };
    return script in scripts ? [] : [script];
  }
  const words = command.replace(/^npx /, "").split(/\s+/).slice(1);
  const name = words[0] === "rule" ? words.slice(0, 2).join(" ") : words[0]!;
  const help = helpOf(name);
  const options = words.filter((word) => word.startsWith("--")).map((word) => word.replace(/[=,.;].*$/, ""));
  return help.includes(`trialfit ${name}`) ? options.filter((option) => !help.includes(option)) : [name];
}
