import { mkdir, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { type ArgsDef, defineCommand } from "citty";
import { readBuildText } from "trialfit";
import {
  type Override,
  PaperError,
  type PaperSize,
  paperIds,
  paperSizes,
  renderPaperHtml,
  renderPaperMarkdown,
  sheetText,
  type UnitChoice,
  unitChoices,
  type WrittenPapers,
  writePapers,
  writeRecord,
} from "trialfit/papers";
import { setArg } from "../commonArgs.ts";
import { ExitCode } from "../ExitCode.ts";
import { printPdf } from "../printPdf.ts";
import { readInput } from "../readInput.ts";
import { readSets } from "../readSets.ts";
import { readState } from "../readState.ts";
import { refuseSurplus } from "../refuseSurplus.ts";
import { refuseUnknownOptions } from "../refuseUnknownOptions.ts";
import { UsageError } from "../UsageError.ts";

const paperFormats = ["html", "markdown", "csv", "json", "pdf"] as const;
type PaperFormat = (typeof paperFormats)[number];

const args = {
  build: { type: "positional", required: true, description: "A build file; - for standard input" },
  out: { type: "string", required: true, description: "The folder to write the papers to" },
  only: { type: "string", description: `Papers to write, separated by commas: ${paperIds.join(", ")}` },
  as: {
    type: "string",
    default: paperFormats.join(","),
    description: `What to write, separated by commas: ${paperFormats.join(", ")}`,
  },
  units: { type: "enum", options: [...unitChoices], default: "written", description: "Units to print in" },
  size: { type: "enum", options: [...paperSizes], default: "A4", description: "Size of the paper" },
  revision: { type: "string", description: "What the shop calls this state of the build" },
  date: { type: "string", description: "The day to print, year-month-day; today unless given" },
  before: {
    type: "string",
    description: "The build file or record of the state before: writes the change record too",
  },
  pass: {
    type: "string",
    description:
      'Lets held papers or lines pass: "torque-sheet: NAME: reason"; for an order "order-list piston: NAME: reason"; several separated by semicolons',
  },
  set: setArg,
} as const satisfies ArgsDef;

function formatsOf(text: string): readonly PaperFormat[] {
  return text.split(",").map((word) => {
    const format = paperFormats.find((one) => one === word.trim());
    if (format === undefined)
      throw new UsageError(
        `papers cannot be written as "${word.trim()}"; there are ${paperFormats.join(", ")}`,
      );
    return format;
  });
}

function overridesOf(text: string | undefined): ReadonlyMap<string, Override> {
  const entries = (text ?? "").split(";").filter((one) => one.trim() !== "");
  return new Map(
    entries.map((entry) => {
      const [, what, by, because] = /^\s*([^:]+?)\s*:\s*([^:]+?)\s*:\s*(.+?)\s*$/.exec(entry) ?? [];
      if (what === undefined || by === undefined || because === undefined)
        throw new UsageError(`--pass "${entry.trim()}" is not of the form "paper: NAME: reason"`);
      return [what, { by, because }];
    }),
  );
}

function dayOf(date: string | undefined): string {
  const day = date ?? new Date().toISOString().slice(0, 10);
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day) || Number.isNaN(Date.parse(day)))
    throw new UsageError(`--date ${day} is not a day such as 2026-03-14`);
  return day;
}

async function write(
  papers: WrittenPapers,
  out: string,
  formats: readonly PaperFormat[],
  size: PaperSize,
  build: string,
) {
  await mkdir(out, { recursive: true });
  const put = async (name: string, text: string) => {
    await writeFile(join(out, name), text);
    process.stdout.write(`${join(out, name)}\n`);
  };
  const html = renderPaperHtml(papers, size);
  if (formats.includes("html")) await put("papers.html", html);
  if (formats.includes("markdown"))
    for (const paper of papers.papers) await put(`${paper.id}.md`, renderPaperMarkdown(paper, papers.head));
  if (formats.includes("csv") && papers.sheet.length > 0)
    await put("trial-sheet.csv", sheetText(papers.sheet));
  if (formats.includes("json") && papers.papers.some(({ id }) => id === "engine-record"))
    await put("engine-record.json", writeRecord(papers, build));
  if (formats.includes("pdf")) {
    const path = join(out, "papers.pdf");
    const result = await printPdf(html, path);
    process.stdout.write(result.printed ? `${path}\n` : `No PDF: ${result.why}.\n`);
  }
}

/** `trialfit papers BUILD --out DIR` */
export const papers = defineCommand({
  meta: {
    name: "papers",
    description:
      "Write the papers of the job: orders, work order, measurement sheets, torques, limits, record",
  },
  args,
  run: async ({ args: given, rawArgs }) => {
    refuseUnknownOptions(rawArgs, args);
    refuseSurplus(given._, args);
    const formats = formatsOf(given.as);
    const sets = await readSets(given.set);
    const text = await readInput(given.build);
    const build = readBuildText(text, given.build === "-" ? "standard input" : given.build);
    const before = given.before === undefined ? undefined : await readState(given.before);
    try {
      const written = await writePapers(build, {
        date: dayOf(given.date),
        overrides: overridesOf(given.pass),
        units: given.units as UnitChoice,
        ...(given.only === undefined ? {} : { only: given.only.split(",").map((id) => id.trim()) }),
        ...(given.revision === undefined ? {} : { revision: given.revision }),
        ...(before === undefined ? {} : { before }),
        ...(sets === undefined ? {} : { sets }),
      });
      await write(written, given.out, formats, given.size as PaperSize, text);
      const held = written.papers.filter(
        ({ gate }) => gate !== undefined && gate.waitsFor.length > 0 && gate.override === undefined,
      );
      for (const { title } of held) process.stdout.write(`Held: ${title}. It says what it waits for.\n`);
      process.exitCode = held.length === 0 ? ExitCode.sound : ExitCode.stops;
    } catch (error) {
      if (error instanceof PaperError) throw new UsageError(error.message);
      throw error;
    }
  },
});
