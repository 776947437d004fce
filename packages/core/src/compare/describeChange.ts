import { countOf } from "../read/countOf.ts";
import { fieldLabel } from "../read/fieldCatalog.ts";
import { DISCLAIMER } from "../report/describeReport.ts";
import { printBand } from "../report/printValue.ts";
import type {
  DocumentItem,
  DocumentLine,
  DocumentSection,
  ReportDocument,
  Tone,
} from "../report/ReportDocument.ts";
import { formatInterval } from "../units/formatNumber.ts";
import {
  aspects,
  type BuildChange,
  type QuantityChange,
  type Side,
  type ValueChange,
  type VerdictChange,
} from "./BuildChange.ts";

const NOTHING = "nothing";
/** Part of the largest effect below which another is not worth a word. */
const MINOR = 0.005;
const TONES: Readonly<Record<VerdictChange["after"], Tone>> = {
  holds: "good",
  fails: "bad",
  open: "doubt",
  unknown: "doubt",
  "not-applicable": "faint",
};

function valueItem({
  path,
  label,
  before = NOTHING,
  after = NOTHING,
  aspects: found,
}: ValueChange): DocumentItem {
  const what = found.map((one) => aspects[one]).join(", ");
  return {
    title: label,
    id: path,
    tone: "plain",
    lines: [
      { text: `${before} → ${after}` },
      ...(what === "" ? [] : [{ label: "changed", text: what, tone: "faint" as const }]),
    ],
  };
}

function signed(change: number, unit: string, decimals: number): string {
  return `${change < 0 ? "−" : "+"}${formatInterval(Math.abs(change), unit, { decimals })}`;
}

/** Both sides as they are printed. */
function printedSides({ unit, decimals, before, after }: QuantityChange): readonly [string, string] {
  const print = (span: typeof before) =>
    span === undefined ? "not computable" : printBand(span, unit, decimals);
  return [print(before), print(after)];
}

/** A change below the last digit shown is in the data, but tells a reader nothing. */
function changesInPrint(change: QuantityChange): boolean {
  const [before, after] = printedSides(change);
  return before !== after;
}

function quantityLine(change: QuantityChange): string {
  return printedSides(change).join(" → ");
}

function causeText({ causes, unit, decimals, before, after }: QuantityChange): readonly DocumentLine[] {
  if (before === undefined || after === undefined) return [];
  if (causes.length === 0)
    return [{ label: "why", text: "the nominal value is the same; its tolerances are not" }];
  const telling = causes.filter(({ change }) => Math.abs(change) >= MINOR * Math.abs(causes[0]!.change));
  const shown = telling
    .slice(0, 5)
    .map(({ path, change }) => `${signed(change, unit, decimals + 1)} from ${fieldLabel(path)}`);
  const more = telling.length > 5 ? [`less from ${countOf(telling.length - 5, "other")}`] : [];
  return [{ label: "why", text: [...shown, ...more].join("; ") }];
}

function quantityItem(change: QuantityChange): DocumentItem {
  return {
    title: change.name,
    id: change.id,
    tone: "plain",
    lines: [{ text: quantityLine(change) }, ...causeText(change)],
  };
}

function verdictItem(verdict: VerdictChange, change: BuildChange): DocumentItem {
  const quantities = change.quantities.filter(({ id }) => verdict.compared.includes(id));
  const because = verdict.because.map((path) => {
    const value = change.values.find((one) => one.path === path);
    return `${fieldLabel(path)} ${value?.before ?? NOTHING} → ${value?.after ?? NOTHING}`;
  });
  return {
    title: verdict.title,
    id: verdict.rule,
    tone: TONES[verdict.after],
    lines: [
      {
        label: "verdict",
        text: `${verdict.before} → ${verdict.after}; weight: ${verdict.weight}`,
        tone: TONES[verdict.after],
      },
      ...quantities.flatMap((one) => [
        { label: "number", text: `${one.name} ${quantityLine(one)}` },
        ...causeText(one),
      ]),
      ...(quantities.some((one) => one.causes.length > 0) || because.length === 0
        ? []
        : [{ label: "why", text: because.join("; ") }]),
    ],
  };
}

function standing(label: string, { name, hash, summary }: Side): DocumentLine {
  const { holds, fails, open, unknown, toConfirm, notApplicable, sound } = summary;
  return {
    text: `${label} ${name} (${hash.slice(0, 12)}): ${sound ? "sound" : "not sound"}; ${holds} hold, ${fails} fail, ${open} open, ${unknown} unknown, ${toConfirm} to be confirmed, ${notApplicable} not applicable`,
    tone: sound ? "good" : "bad",
  };
}

/** Lays out what changed between two states of a build: verdicts first, then what moved them. */
export function describeChange(change: BuildChange): ReportDocument {
  const { verdicts, quantities, values } = change;
  const visible = quantities.filter(changesInPrint);
  const sections: readonly DocumentSection[] = [
    {
      heading: `Verdicts that changed (${verdicts.length})`,
      items: verdicts.map((one) => verdictItem(one, change)),
    },
    { heading: `Values that changed (${values.length})`, items: values.map(valueItem) },
    {
      heading: `Quantities that changed (${visible.length})`,
      intro:
        "After “why”: what each changed value does alone, the others left as they were; together they may do a little more or less.",
      items: visible.map(quantityItem),
    },
  ];
  return {
    title:
      change.before.name === change.after.name
        ? change.after.name
        : `${change.before.name} → ${change.after.name}`,
    lead: [
      standing("before:", change.before),
      standing("after:", change.after),
      ...(values.length + verdicts.length === 0 ? [{ text: "Nothing changed." }] : []),
    ],
    sections: sections.filter(({ items }) => items.length > 0),
    closing: [DISCLAIMER],
  };
}
