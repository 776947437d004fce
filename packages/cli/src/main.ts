import { stripVTControlCharacters } from "node:util";
import { defineCommand, renderUsage, runCommand } from "citty";
import { InputError, nearestWord, SetError, version } from "trialfit";
import { check } from "./commands/check.ts";
import { diff } from "./commands/diff.ts";
import { explain } from "./commands/explain.ts";
import { papers } from "./commands/papers.ts";
import { parts } from "./commands/parts.ts";
import { readings } from "./commands/readings.ts";
import { remedy } from "./commands/remedy.ts";
import { rule } from "./commands/rule.ts";
import { schema } from "./commands/schema.ts";
import { search } from "./commands/search.ts";
import { solve } from "./commands/solve.ts";
import { ExitCode } from "./ExitCode.ts";
import { printProblems } from "./printProblems.ts";
import { UsageError } from "./UsageError.ts";

const commands = {
  check,
  diff,
  explain,
  papers,
  parts,
  readings,
  remedy,
  rule,
  schema,
  search,
  solve,
};

const main = defineCommand({
  meta: { name: "trialfit", version, description: "Check a planned engine before its parts are ordered" },
  subCommands: commands,
});

type Command = typeof main;

/**
 * Runs the command that the words name, or prints its help.
 * @param path the words before it, for its help
 */
async function run(command: Command, rawArgs: readonly string[], path?: string): Promise<void> {
  const inner = command.subCommands as Readonly<Record<string, Command>> | undefined;
  const asksHelp = (args: readonly string[]) => args.includes("--help") || args.includes("-h");
  const help = async () => {
    const above = path === undefined ? undefined : defineCommand({ meta: { name: path } });
    process.stdout.write(`${await renderUsage(command, above)}\n`);
  };
  if (inner === undefined) {
    if (asksHelp(rawArgs)) return help();
    return void (await runCommand(command, { rawArgs: [...rawArgs] }));
  }
  const [name = "--help", ...rest] = rawArgs;
  if (asksHelp([name])) return help();
  const own = (command.meta as { name: string }).name;
  if (Object.hasOwn(inner, name)) return run(inner[name]!, rest, path === undefined ? own : `${path} ${own}`);
  const near = nearestWord(name, Object.keys(inner));
  throw new UsageError(`unknown command "${name}"${near === undefined ? "" : `; did you mean "${near}"?`}`);
}

/** Where to read on after a slip. @param name the command that was asked for */
function whereHelpIs(name = ""): string {
  const own = Object.hasOwn(commands, name) ? `, "trialfit ${name} --help" for the options of this one` : "";
  return `Run "trialfit --help" for the commands${own}.`;
}

// A reader that stops early (`| head`) is not an error of ours.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit();
  throw error;
});

try {
  const args = process.argv.slice(2);
  if (args[0] === "--version") process.stdout.write(`${version}\n`);
  else await run(main, args);
} catch (error) {
  process.exitCode = ExitCode.badInput;
  if (error instanceof InputError) printProblems(error.problems);
  else if (
    error instanceof UsageError ||
    error instanceof SetError ||
    (error instanceof Error && error.name === "CLIError")
  ) {
    process.stderr.write(
      `trialfit: ${stripVTControlCharacters(error.message)}\n${whereHelpIs(process.argv[2])}\n`,
    );
  } else {
    process.stderr.write(
      `trialfit: an error in trialfit itself: ${error instanceof Error ? error.message : String(error)}\n`,
    );
    if (process.env.TRIALFIT_DEBUG !== undefined && error instanceof Error)
      process.stderr.write(`${error.stack}\n`);
  }
}
