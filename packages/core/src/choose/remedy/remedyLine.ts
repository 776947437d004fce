import type { DocumentLine } from "../../report/ReportDocument.ts";
import { becomes, brackets, brokenText } from "./brokenText.ts";
import { sizeText } from "./moveText.ts";
import type { Remedy } from "./Remedy.ts";
import { plainlyWorse } from "./rankRemedies.ts";

const PERCENT = 100;

/** By how much more a rule lacks than it did. */
const growthText = (by: number): string =>
  by < 1
    ? `by ${(PERCENT * by).toFixed(0)} % of what it lacks`
    : `to ${(by + 1).toFixed(0)} times what it lacks`;

/** What speaks against a change: what it breaks, what it makes worse, and who wants the same size otherwise. */
function againstText({ brings, worsens, contradicts }: Remedy): string {
  const already = plainlyWorse(worsens).map(
    ({ rule, verdict, by }) =>
      `[${rule}]${by === undefined ? "" : ` ${growthText(by)}`}, which ${verdict === "fails" ? "fails" : "is open"} already`,
  );
  const slight = worsens.length - already.length;
  const wants = contradicts.length === 1 ? "wants" : "want";
  return [
    ...(brings.length === 0
      ? []
      : [`brings into question: ${brokenText(brings, (one) => `${becomes(one)} (${one.weight})`)}`]),
    ...(already.length === 0 ? [] : [`makes worse ${already.join(", ")}`]),
    ...(slight === 0 ? [] : [`slightly worse: ${slight} of what does not hold already`]),
    ...(contradicts.length === 0 ? [] : [`${brackets(contradicts)} ${wants} it the other way`]),
  ].join("; ");
}

/** What one step less would break, which other findings hold as well, and what speaks against the change. */
export function besideTexts(remedy: Remedy): {
  readonly less?: string;
  readonly also?: string;
  readonly against?: string;
} {
  const { oneStepLess, settles } = remedy;
  const { breaks } = oneStepLess;
  const against = againstText(remedy);
  return {
    ...(breaks.length === 0 ? {} : { less: `with 1 step less ${brackets(breaks)} would break` }),
    ...(settles.length === 0 ? {} : { also: `settles ${brackets(settles)} as well` }),
    ...(against === "" ? {} : { against }),
  };
}

/** One change, as it is offered. */
export function remedyLine(remedy: Remedy): DocumentLine {
  const { label, path, work, worsens, brings } = remedy;
  const { less, also, against } = besideTexts(remedy);
  const beside = [
    ...(less === undefined ? [] : [`, ${less}`]),
    ...[also, against].flatMap((one) => (one === undefined ? [] : [`; ${one}`])),
  ];
  return {
    label: work,
    text: `${label} [${path}]: ${sizeText(remedy)}${beside.join("")}`,
    tone: plainlyWorse(worsens).length + brings.length === 0 ? "good" : "doubt",
  };
}
