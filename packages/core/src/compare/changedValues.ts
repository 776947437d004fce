import type { Build } from "../read/Build.ts";
import { confirmationPath } from "../read/confirmations.ts";
import type { DimensionValue, FieldValue } from "../read/FieldValue.ts";
import { fieldLabel } from "../read/fieldCatalog.ts";
import { printField } from "../report/printValue.ts";
import type { Aspect, ValueChange } from "./BuildChange.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** A build with its values, defaults filled in. */
export interface State {
  readonly build: Build;
  readonly values: Values;
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Equal but for the rounding of another unit: 3.5 in is 88.9 mm. */
const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b));

function sizesOf({ nominal, positions, elsewhere }: DimensionValue): unknown {
  const size = (one: DimensionValue | undefined) =>
    one === undefined ? undefined : [one.nominal, one.low, one.high, one.form];
  return [nominal, Object.entries(positions ?? {}).map(([at, one]) => [at, size(one)]), size(elsewhere)];
}

function dimensionAspects(before: DimensionValue, after: DimensionValue): readonly Aspect[] {
  const alike = near(before.nominal, after.nominal);
  const width = (one: DimensionValue) => [one.nominal - one.low, one.high - one.nominal] as const;
  const slack = 1e-12 * Math.max(Math.abs(before.nominal), Math.abs(after.nominal));
  const widths = width(before).every((one, side) => Math.abs(one - width(after)[side]!) <= slack);
  const placed = before.positions !== undefined || after.positions !== undefined;
  return [
    ...(alike ? [] : ["value" as const]),
    ...(widths ? [] : ["tolerance" as const]),
    ...(before.provenance === after.provenance && before.instrument === after.instrument
      ? []
      : ["provenance" as const]),
    ...(placed && !same(sizesOf(before), sizesOf(after)) ? ["readings" as const] : []),
  ];
}

function aspectsOf(before: FieldValue, after: FieldValue): readonly Aspect[] {
  if (before.kind === "dimension" && after.kind === "dimension") return dimensionAspects(before, after);
  if (before.kind === "text" || after.kind === "text") return same(before, after) ? [] : ["value"];
  const content = (one: FieldValue) =>
    one.kind === "table" ? one.rows : one.kind === "choice" ? one.value : one;
  return [
    ...(same(content(before), content(after)) ? [] : ["value" as const]),
    ...(before.provenance === after.provenance ? [] : ["provenance" as const]),
  ];
}

function shown(value: FieldValue | undefined): string | undefined {
  if (value === undefined) return undefined;
  const from = value.kind === "text" || value.provenance === "data-sheet" || value.provenance === "target";
  return from ? printField(value) : `${printField(value)} (${value.provenance})`;
}

function changeOf(
  path: string,
  before: FieldValue | undefined,
  after: FieldValue | undefined,
): readonly ValueChange[] {
  const found = before === undefined || after === undefined ? [] : aspectsOf(before, after);
  if (before !== undefined && after !== undefined && found.length === 0) return [];
  const [was, is] = [shown(before), shown(after)];
  return [
    {
      path,
      label: fieldLabel(path),
      ...(was === undefined ? {} : { before: was }),
      ...(is === undefined ? {} : { after: is }),
      aspects: found,
    },
  ];
}

function confirmationChanges(before: Build, after: Build): readonly ValueChange[] {
  const rules = [...new Set([...before.confirmations.keys(), ...after.confirmations.keys()])].sort();
  return rules.flatMap((rule): ValueChange[] => {
    const [was, is] = [before.confirmations.get(rule), after.confirmations.get(rule)];
    if (same(was, is)) return [];
    const print = (one: typeof was) =>
      one === undefined ? undefined : `${one.seen}, ${one.by}, ${one.on}: ${one.how}`;
    const path = confirmationPath(rule);
    const [text, now] = [print(was), print(is)];
    return [
      {
        path,
        label: fieldLabel(path),
        ...(text === undefined ? {} : { before: text }),
        ...(now === undefined ? {} : { after: now }),
        aspects: was === undefined || is === undefined ? [] : ["confirmation"],
      },
    ];
  });
}

/**
 * Every value of a build that is not as it was, defaults included: a default that a measured value replaced has
 * changed. What is written in another unit, order or layout has not.
 */
export function changedValues(before: State, after: State): readonly ValueChange[] {
  const confirmed = new Set(
    [before.build, after.build].flatMap((one) => [...one.confirmations.keys()].map(confirmationPath)),
  );
  const paths = [...new Set([...before.values.keys(), ...after.values.keys()])].filter(
    (path) => !confirmed.has(path),
  );
  return [
    ...paths.flatMap((path) => changeOf(path, before.values.get(path), after.values.get(path))),
    ...confirmationChanges(before.build, after.build),
  ];
}
