import { defineCommand, renderUsage, runCommand } from "citty";
import { InputError, nearestWord, version } from "trialfit";
import { check } from "./commands/check.ts";
import { diff } from "./commands/diff.ts";
import { explain } from "./commands/explain.ts";
import { schema } from "./commands/schema.ts";
import { ExitCode } from "./ExitCode.ts";
import { printProblems } from "./printProblems.ts";
import { UsageError } from "./UsageError.ts";

const commands = { check, diff, explain, schema };

const main = defineCommand({
  meta: { name: "trialfit", version, description: "Check a planned engine before its parts are ordered" },
  subCommands: commands,
});

async function run(rawArgs: readonly string[]): Promise<void> {
  const [name = "--help", ...rest] = rawArgs;
  if (name === "--version") return void process.stdout.write(`${version}\n`);
  const command = commands[name as keyof typeof commands];
  if (name === "--help" || name === "-h") return void process.stdout.write(`${await renderUsage(main)}\n`);
  if (command === undefined || !Object.hasOwn(commands, name)) {
    const near = nearestWord(name, Object.keys(commands));
    throw new UsageError(`unknown command "${name}"${near === undefined ? "" : `; did you mean "${near}"?`}`);
  }
  if (rest.includes("--help") || rest.includes("-h")) {
    return void process.stdout.write(`${await renderUsage(command as never, main)}\n`);
  }
  await runCommand(command as never, { rawArgs: rest });
}

// A reader that stops early (`| head`) is not an error of ours.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit();
  throw error;
});

try {
  await run(process.argv.slice(2));
} catch (error) {
  process.exitCode = ExitCode.badInput;
  if (error instanceof InputError) printProblems(error.problems);
  else if (error instanceof UsageError || (error instanceof Error && error.name === "CLIError")) {
    process.stderr.write(
      `trialfit: ${error.message}\nRun "trialfit --help" for the commands, "trialfit check --help" for the options of one.\n`,
    );
  } else {
    process.stderr.write(
      `trialfit: an error in trialfit itself: ${error instanceof Error ? error.message : String(error)}\n`,
    );
    if (process.env.TRIALFIT_DEBUG !== undefined && error instanceof Error)
      process.stderr.write(`${error.stack}\n`);
  }
}
