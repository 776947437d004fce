import type { PartSpec } from "../read/FieldSpec.ts";
import type { FieldValue } from "../read/FieldValue.ts";
import { fieldLabel, fields } from "../read/fieldCatalog.ts";
import { measuredFields } from "./measuredFields.ts";
import type { Gate, Override } from "./Paper.ts";
import type { PaperSource } from "./PaperSource.ts";
import { byPart, ownLabel, partKeyOf, partLabel } from "./partsOf.ts";
import { placeOf, slotsOf } from "./slotsOf.ts";
import { orderGates } from "./tables/orderGates.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** Whether a dimension was measured at every place where the engine has it. */
export function isMeasured(path: string, values: Values): boolean {
  return unmeasuredPlaces(path, values).length === 0;
}

/** Places of a dimension that have no reading: words such as `cylinder 3`, or the dimension itself. */
export function unmeasuredPlaces(path: string, values: Values): readonly string[] {
  const value = values.get(path);
  if (value?.kind !== "dimension" || value.provenance !== "measured") return [fieldLabel(path)];
  const { positions } = value;
  if (positions === undefined) return [];
  const places = slotsOf(path, values).filter(({ position }) => position !== undefined);
  const without = places.filter(({ position }) => positions[position!] === undefined);
  return [
    ...new Set(
      without.map(({ height: _, direction: __, ...slot }) => `${fieldLabel(path)}, ${placeOf(slot)}`),
    ),
  ];
}

const isBought = (path: string): boolean => fields.get(path)?.part?.bought !== false;

const overridden = (override: Override | undefined) => (override === undefined ? {} : { override });

/** Dimensions of other parts that would settle an open stop rule on this part: the order rests on them. */
export function settlingFields(
  part: Pick<PartSpec, "key" | "id">,
  { report }: PaperSource,
): readonly string[] {
  const open = report.verdicts.filter(
    ({ verdict, weight, parts }) => verdict === "open" && weight === "stop" && parts.includes(part.id),
  );
  const paths = open.flatMap(({ settlement }) => (settlement?.measure ?? []).map(({ path }) => path));
  return [...new Set(paths)].filter(
    (path) => path.includes(".") && partKeyOf(path) !== part.key && isBought(path),
  );
}

/** The name under which the order of a part is let pass. */
export const orderPass = ({ key }: Pick<PartSpec, "key">): string => `order-list ${key}`;

/** What the order of a part waits for: its gate, and what would settle an open stop rule on it. */
export function orderGate(part: Pick<PartSpec, "key" | "id">, source: PaperSource): Gate {
  const { values, overrides } = source;
  const gate = orderGates[part.key];
  const fixed = (gate?.fixed ?? []).filter((path) => !values.has(path));
  const due = new Set([...(gate?.measured ?? []), ...settlingFields(part, source)]);
  const measured = [...due].flatMap((path) => unmeasuredPlaces(path, values));
  return {
    waitsFor: [
      ...fixed.map((path) => `decide: ${fieldLabel(path)}`),
      ...measured.map((place) => `measure: ${place}`),
    ],
    ...overridden(overrides.get(orderPass(part))),
  };
}

/** What the final assembly waits for: every dimension of the trial assembly, at each of its places. */
export function finalGate(source: PaperSource, paper: string): Gate {
  const waitsFor = [...byPart(measuredFields(source))].flatMap(([part, paths]) => {
    const open = paths.filter((path) => !isMeasured(path, source.values));
    return open.length === 0
      ? []
      : [`measure ${partLabel(part)}: ${open.map(ownLabel).join(", ").toLowerCase()}`];
  });
  return {
    waitsFor,
    ...overridden(source.overrides.get(paper)),
  };
}

/** Whether the gate lets pass: nothing is waited for, or a person let it pass. */
export const isReleased = ({ waitsFor, override }: Gate): boolean =>
  waitsFor.length === 0 || override !== undefined;
