import { ruleFiles, type SetFile } from "@trialfit/rules";
import {
  BriefJudge,
  briefOf,
  compileRules,
  type Drawing,
  evaluate,
  formatProblem,
  InputError,
  readBuild,
  type Stage,
} from "trialfit";
import type { Line } from "./linesOf.ts";

/** How lines are judged: plain data, the same for every worker. */
export interface LineTask {
  /** Name of the input, for messages. */
  readonly file: string;
  /** Only which rules say what, without reasons. */
  readonly brief: boolean;
  readonly stage?: Stage;
  readonly sets?: readonly (string | SetFile)[];
  readonly statistics?: Drawing;
}

/** What became of a line: a report as one line of JSON, or what is wrong with it; neither of a blank line. */
export interface LineResult {
  readonly number: number;
  readonly report?: string;
  readonly sound?: boolean;
  readonly problems?: readonly string[];
}

/** Every string of a JSON text, and whether it is a key. */
const STRINGS = /"(?:[^"\\]|\\.)*"(\s*:)?/g;

/** How many keys a valid JSON text has. */
function keysWritten(text: string): number {
  let count = 0;
  for (const [, colon] of text.matchAll(STRINGS)) if (colon !== undefined) count += 1;
  return count;
}

/** How many keys came of it. */
function keysRead(data: unknown): number {
  if (data === null || typeof data !== "object") return 0;
  const inside = Object.values(data).reduce<number>((sum, value) => sum + keysRead(value), 0);
  return inside + (Array.isArray(data) ? 0 : Object.keys(data).length);
}

/** What a line has to say that is not blank. @throws InputError where it is no JSON */
function dataOf(line: Line, place: string): unknown {
  const refuse = (found: string, expected: string) =>
    new InputError([{ file: place, line: undefined, column: undefined, field: "", found, expected }]);
  if ("found" in line) throw refuse(line.found, line.expected);
  const expected = "one build as a JSON object";
  let data: unknown;
  try {
    data = JSON.parse(line.text);
  } catch {
    throw refuse("a line that is not JSON", expected);
  }
  if (data === null || typeof data !== "object") throw refuse(JSON.stringify(data), expected);
  // Of two keys alike a reader of JSON keeps the last: a size that was stated would be lost unseen.
  if (keysWritten(line.text) !== keysRead(data))
    throw refuse("a key that stands twice in one object", "every key once");
  return data;
}

/** Judges lines by a task, one at a time. */
export function lineJudge(task: LineTask): (line: Line) => Promise<LineResult> {
  const { file, brief, stage, sets, statistics } = task;
  const options = {
    ...(stage === undefined ? {} : { stage }),
    ...(sets === undefined ? {} : { sets }),
    ...(statistics === undefined ? {} : { statistics }),
  };
  // A stage asks for measurements, and a set changes the rules: the ordinary way knows both.
  const swift =
    brief && Object.keys(options).length === 0 ? new BriefJudge(compileRules(ruleFiles)) : undefined;
  return async (line) => {
    const { number } = line;
    if ("text" in line && line.text.trim() === "") return { number };
    const place = `${file}:${number}`;
    try {
      const build = readBuild(dataOf(line, place), place);
      if (swift === undefined) {
        const report = await evaluate(build, options);
        const { sound } = report.summary;
        const shown = brief ? { name: build.name, ...briefOf(report) } : { report };
        return { number, sound, report: JSON.stringify({ line: number, ...shown }) };
      }
      const verdicts = await swift.judge(build);
      const shown = { line: number, name: build.name, ...verdicts };
      return { number, sound: verdicts.sound, report: JSON.stringify(shown) };
    } catch (error) {
      if (error instanceof InputError) return { number, problems: error.problems.map(formatProblem) };
      throw error;
    }
  };
}
