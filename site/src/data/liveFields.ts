import {
  type CompiledRule,
  type DimensionValue,
  decidingFacts,
  type Field,
  fieldLabel,
  fields,
  fieldsOfRule,
  fromSi,
  parseDimension,
  unitOf,
  unitsLike,
} from "trialfit";
import { confirmationRule } from "../live/confirmationRule.ts";
import { rules } from "./catalog.ts";
import { type DemoBuild, demoBuilds } from "./demoBuilds.ts";
import { entryOf } from "./entryOf.ts";

/** A unit of a menu: SI value of its zero mark, and of one step in it. */
export interface LiveUnit {
  readonly symbol: string;
  readonly zero: number;
  readonly step: number;
}

/** Ends and step of a slider. */
export interface Slide {
  readonly least: number;
  readonly most: number;
  readonly step: number;
}

/** One field of a rule as it can be changed on the rule's page, filled in from a demo build. */
export type LiveField = { readonly path: string; readonly label: string; readonly help: string } & (
  | {
      readonly kind: "dimension";
      /** As the demo build writes them; empty where it says nothing. */
      readonly value: string;
      readonly tolerance: string;
      readonly unit: string;
      readonly word: string;
      readonly units: readonly LiveUnit[];
      readonly words: readonly string[];
      /** What is taken where no tolerance is entered. */
      readonly usual: string | undefined;
      /** Where a slider may move it, in the unit as written; undefined where there is nothing to start from. */
      readonly slide: Slide | undefined;
    }
  | { readonly kind: "count"; readonly value: string }
  | { readonly kind: "choice"; readonly value: string; readonly options: Readonly<Record<string, string>> }
);

/** What can be changed on a rule's page, most telling first, and what stays as the demo build has it. */
export interface LiveForm {
  readonly demo: DemoBuild;
  readonly first: readonly LiveField[];
  readonly more: readonly LiveField[];
  readonly tables: readonly Field[];
}

/** So many fields stand open at first: the rest is one touch away. */
const FIRST = 6;

const ORDER = ["open", "fails", "holds", "unknown", "not-applicable"];

function verdictOf(demo: DemoBuild, rule: CompiledRule) {
  return demo.report.verdicts.find((one) => one.rule === rule.file.id)!;
}

/** The demo build that knows most of what the rule asks; of two, the one that says more of it. */
function demoFor(rule: CompiledRule): DemoBuild {
  const asked = [...fieldsOfRule(rule, "every")];
  const known = (demo: DemoBuild) => asked.filter((path) => demo.build.values.has(path)).length;
  const place = (demo: DemoBuild) => ORDER.indexOf(verdictOf(demo, rule).verdict);
  const applies = (demo: DemoBuild) => (place(demo) === ORDER.indexOf("not-applicable") ? 0 : 1);
  return [...demoBuilds].sort(
    (a, b) => applies(b) - applies(a) || known(b) - known(a) || place(a) - place(b),
  )[0]!;
}

/** How many rules of the catalog rest on each field: what everybody chooses first, such as bore and stroke. */
const common = new Map<string, number>();
for (const one of rules)
  for (const path of fieldsOfRule(one, "surest")) common.set(path, (common.get(path) ?? 0) + 1);
const mostCommon = Math.max(...common.values());

/** How much a reader will want to change a field: what is missing, moves the numbers most, or is chosen first. */
function weigh(rule: CompiledRule, demo: DemoBuild): (path: string) => number {
  const { missing } = verdictOf(demo, rule);
  const facts = [...decidingFacts(rule)];
  const direct = new Set(facts.map((fact) => fact.replace(/\.place$/, "")));
  const shares = demo.report.quantities
    .filter(({ id }) => facts.includes(id))
    .flatMap(({ spreadBy = [] }) => spreadBy);
  return (path) => {
    const number = fields.get(path)?.spec.kind === "dimension";
    const share = Math.max(0, ...shares.filter((one) => one.path === path).map((one) => one.share));
    return (
      (missing.includes(path) ? 2 : 0) +
      (direct.has(path) ? (number ? 1 : 0.3) : 0) +
      share +
      (number ? (common.get(path) ?? 0) / mostCommon : 0)
    );
  };
}

function liveUnit(symbol: string): LiveUnit {
  const unit = unitOf(symbol);
  const [zero, one] = [fromSi(0, unit), fromSi(1, unit)];
  const step = 1 / (one - zero);
  return { symbol, zero: -zero * step, step };
}

/** A slider goes a fifth to either side, as far as the field may go. @param written the value as its field shows it */
function slideOf(
  value: DimensionValue | undefined,
  [least, most]: readonly [string, string],
  written: string,
): Slide | undefined {
  if (value === undefined || value.nominal === 0) return undefined;
  const unit = unitOf(value.unit);
  const size = Math.abs(value.nominal);
  const ends = [least, most].map((edge) => parseDimension(edge, { unit: value.unit }).nominal);
  const [from, to] = [Math.max(size * 0.8, ends[0]!), Math.min(size * 1.2, ends[1]!)].map((si) =>
    fromSi(si, unit),
  );
  // As fine as the value is written, so that the slider can stand at it.
  const decimals = /\.(\d*[1-9])/.exec(written)?.[1]?.length ?? 0;
  const step = Math.min(10 ** Math.floor(Math.log10((to! - from!) / 40)), 10 ** -decimals);
  const onStep = (edge: number) => Number((Math.round(edge / step) * step).toPrecision(6));
  return to! > from!
    ? { least: onStep(from!), most: onStep(to!), step: Number(step.toPrecision(3)) }
    : undefined;
}

function liveField(path: string, demo: DemoBuild): LiveField | undefined {
  const value = demo.build.values.get(path);
  const word = value?.kind === "choice" ? value.value : "";
  if (confirmationRule(path) !== undefined)
    return {
      path,
      label: "A person looked, and it was so",
      help: "Only somebody who stands at the engine can say it.",
      kind: "choice",
      value: word,
      options: { yes: "seen, and right", no: "seen, and not right" },
    };
  const field = fields.get(path);
  if (field === undefined) return undefined;
  const { spec } = field;
  const about = { path, label: fieldLabel(path), help: spec.help };
  switch (spec.kind) {
    case "dimension": {
      const words = Object.keys(spec.signs ?? {}).concat(spec.places ?? []);
      const dimension = value?.kind === "dimension" ? value : undefined;
      const entry = entryOf(dimension, words, spec.unit);
      return {
        ...about,
        kind: "dimension",
        ...entry,
        units: unitsLike(unitOf(spec.unit)).map(({ symbol }) => liveUnit(symbol)),
        words,
        usual: spec.tolerance,
        slide: slideOf(dimension, spec.range, entry.value),
      };
    }
    case "count":
      return {
        ...about,
        kind: "count",
        value: value?.kind === "dimension" ? String(value.nominal) : "",
      };
    case "choice":
      return { ...about, kind: "choice", value: word, options: spec.options };
    default:
      return undefined;
  }
}

/** What a reader may change to see a rule's verdict move. */
export function liveForm(rule: CompiledRule): LiveForm {
  const demo = demoFor(rule);
  const weight = weigh(rule, demo);
  const surest = fieldsOfRule(rule, "surest");
  const asked = [...fieldsOfRule(rule, "every")].filter(
    (path) => surest.has(path) || demo.build.values.has(path),
  );
  const live = asked
    .sort((a, b) => weight(b) - weight(a) || (a < b ? -1 : 1))
    .flatMap((path) => liveField(path, demo) ?? []);
  const tables = asked.flatMap((path) => {
    const field = fields.get(path);
    return field?.spec.kind === "table" ? [field] : [];
  });
  return { demo, first: live.slice(0, FIRST), more: live.slice(FIRST), tables };
}
