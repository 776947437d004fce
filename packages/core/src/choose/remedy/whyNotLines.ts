import { nameFields } from "../../report/nameFields.ts";
import type { DocumentLine } from "../../report/ReportDocument.ts";
import { brackets, brokenText, NAMED } from "./brokenText.ts";
import { sizeText } from "./moveText.ts";
import type { FindingRemedies, NoRemedy } from "./Remedy.ts";
import { plainlyWorse } from "./rankRemedies.ts";

const PERCENT = 100;

/** Fields by name, the first of many. */
function someFields(paths: readonly string[]): string {
  const more = paths.length > NAMED ? `; and ${paths.length - NAMED} more` : "";
  return `${nameFields(paths.slice(0, NAMED))}${more}`;
}

/** What would break there, and what must be known first. */
function thenText({ breaks = [], worsens: all = [], needs = [] }: NoRemedy): string {
  const worsens = plainlyWorse(all);
  return [
    ...(breaks.length === 0 ? [] : [`, but then ${brokenText(breaks)}`]),
    ...(worsens.length === 0
      ? []
      : [
          `; makes worse ${brackets(worsens.map(({ rule }) => rule))}, which ${worsens.length === 1 ? "does" : "do"} not hold already`,
        ]),
    ...(needs.length === 0 ? [] : [`; then needs ${someFields(needs)}`]),
  ].join("");
}

const named = ({ label, path }: NoRemedy): string => `${label} [${path}]`;

function breakLine(one: NoRemedy): DocumentLine {
  return { label: "not by", text: `${named(one)}: ${sizeText(one.nearest!)}, would do${thenText(one)}` };
}

function closerText({ own, share }: NonNullable<NoRemedy["closer"]>): string {
  if (own !== undefined) return `kept to ${own} it would do`;
  return `it would do with all tolerances at ${Math.round(share! * PERCENT)} % of what they are`;
}

function looseLine(one: NoRemedy): DocumentLine {
  const size = one.nearest === undefined ? "as it is" : sizeText(one.nearest);
  const closer = one.closer === undefined ? "" : `; ${closerText(one.closer)}`;
  const text = `${named(one)}: ${size}, holds at the nominal values only: the tolerances reach across the limit${closer}${thenText(one)}`;
  return { label: "too loose", text, tone: "doubt" };
}

function unknownLine(one: NoRemedy): DocumentLine {
  const size = one.nearest === undefined ? "as it is" : sizeText(one.nearest);
  return {
    label: "unknown",
    text: `${named(one)}: ${size}, no longer surely fails${thenText(one)}`,
    tone: "doubt",
  };
}

/** Of many the first few each with its line, those that say how it would do before others; the rest by name. */
function fewLines(
  all: readonly NoRemedy[],
  print: (one: NoRemedy) => DocumentLine,
  rest: string,
): readonly DocumentLine[] {
  const ranked = [...all].sort((a, b) => Number(b.closer !== undefined) - Number(a.closer !== undefined));
  const more = ranked.slice(NAMED).map(({ path }) => path);
  return [
    ...ranked.slice(0, NAMED).map(print),
    ...(more.length === 0
      ? []
      : [{ label: print(ranked[0]!).label!, text: `${rest}: ${someFields(more)}`, tone: "faint" as const }]),
  ];
}

/** Why other dimensions do not do. */
export function whyNotLines({ others, fixed }: FindingRemedies): readonly DocumentLine[] {
  const by = (why: NoRemedy["why"]) => others.filter((one) => one.why === why);
  const line = (label: string, what: string, list: readonly string[]): readonly DocumentLine[] =>
    list.length === 0 ? [] : [{ label, text: `${what}: ${someFields(list)}`, tone: "faint" }];
  return [
    ...by("breaks").map(breakLine),
    ...fewLines(by("too-loose"), looseLine, "in the same way"),
    ...fewLines(by("unknown"), unknownLine, "in the same way"),
    ...line(
      "no reach",
      "each changed alone, at no size that it can be brought to was the rule found to hold; several together may do it, where the finding says so",
      by("out-of-reach").map(({ path }) => path),
    ),
    ...line("fixed", "nobody changes these on what is given, or they follow a word", fixed),
  ];
}
