import { type PositionKind, positionKinds } from "../read/FieldSpec.ts";
import type { DimensionValue, FieldValue } from "../read/FieldValue.ts";
import { fields } from "../read/fieldCatalog.ts";
import { countOf, crankpinOf, type Positioned, positionedOf } from "../read/positions.ts";
import { formatNumber } from "../units/formatNumber.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** One cylinder, crankpin or main bearing, with what the build has there. */
export interface Place {
  readonly kind: PositionKind;
  readonly number: number;
  /** For people: `cylinder 3`. */
  readonly label: string;
  readonly values: Values;
}

/** Width of a difference of two readings, each as uncertain as one. */
const OF_A_DIFFERENCE = Math.SQRT2;

function formsOf(path: string): { readonly taper?: string; readonly outOfRound?: string } {
  const spec = fields.get(path)?.spec;
  return spec?.kind === "dimension" ? (spec.form ?? {}) : {};
}

/** Fields that the readings of a dimension may give as well. */
const formTargets = (path: string): readonly string[] => Object.values(formsOf(path));

/** Taper and out-of-round of a position as dimensions of their own. */
function formOf({ path, value: { unit } }: Positioned, at: DimensionValue): readonly [string, FieldValue][] {
  const targets = formsOf(path);
  return (["taper", "outOfRound"] as const).flatMap((name) => {
    const target = targets[name];
    const nominal = at.form?.[name];
    if (target === undefined || nominal === undefined) return [];
    const width = OF_A_DIFFERENCE * (at.uncertainty ?? 0);
    const [size, spread] = [nominal, width].map((si) => formatNumber(si, unit, { digits: 3 }));
    const value: DimensionValue = {
      kind: "dimension",
      nominal,
      low: Math.max(0, nominal - width),
      high: nominal + width,
      unit,
      text: width === 0 ? size! : `${size} ± ${spread}`,
      provenance: "measured",
      toleranceFrom: at.toleranceFrom,
      uncertainty: width,
    };
    return [[target, value] as [string, FieldValue]];
  });
}

/** Puts what one position has in place of what the engine has as a whole; a form that was entered stays. */
function put(here: Map<string, FieldValue>, entered: Values, positioned: Positioned, number: number): void {
  const { path, value } = positioned;
  const at = value.positions?.[number] ?? value.elsewhere;
  for (const target of formTargets(path)) if (!entered.has(target)) here.delete(target);
  if (at === undefined) here.delete(path);
  else {
    here.set(path, at);
    for (const [target, form] of formOf(positioned, at)) if (!entered.has(target)) here.set(target, form);
  }
}

/** The worst form of all positions; none of a form that was not gauged at every one. */
function worstForms(positioned: Positioned, count: number): readonly [string, FieldValue][] {
  const forms = Object.values(positioned.value.positions ?? {}).flatMap((at) => formOf(positioned, at));
  return formTargets(positioned.path).flatMap((target) => {
    const each = forms.flatMap(([path, form]) =>
      path === target && form.kind === "dimension" ? [form] : [],
    );
    const worst = each.reduce<DimensionValue | undefined>(
      (kept, one) => (kept === undefined || one.nominal > kept.nominal ? one : kept),
      undefined,
    );
    return worst === undefined || each.length < count ? [] : [[target, worst] as [string, FieldValue]];
  });
}

/** Fields that differ from place to place, each with the kind of place, forms of the readings included. */
export function differingFields(values: Values): ReadonlyMap<string, PositionKind> {
  return new Map(
    positionedOf(values).flatMap((positioned) => {
      const forms = Object.values(positioned.value.positions ?? {}).flatMap((at) =>
        formOf(positioned, at).map(([path]) => path),
      );
      return [positioned.path, ...forms]
        .filter((path) => path === positioned.path || !values.has(path))
        .map((path) => [path, positioned.per] as const);
    }),
  );
}

/** How many places of a kind a build has; where it does not say, as many as were measured. */
function placeCount(kind: PositionKind, values: Values): number {
  const measured = positionedOf(values)
    .filter(({ per }) => per === kind)
    .flatMap(({ value }) => Object.keys(value.positions ?? {}).map(Number));
  return countOf(kind, values) ?? Math.max(0, ...measured);
}

/**
 * The engine as a whole: a dimension that was not measured everywhere, and is not known elsewhere, is missing. Taper
 * and out-of-round are those of the worst place.
 */
export function wholeValues(values: Values): Values {
  const whole = new Map(values);
  for (const positioned of positionedOf(values)) {
    const { path, per, value } = positioned;
    const count = placeCount(per, values);
    const measured = Object.keys(value.positions ?? {}).length;
    if (value.elsewhere === undefined && measured < count) whole.delete(path);
    for (const [target, form] of worstForms(positioned, count))
      if (!values.has(target)) whole.set(target, form);
  }
  return whole;
}

/**
 * Every place of a kind, with the dimensions that were measured there in place of those of the whole engine. A
 * cylinder has its crankpin with it, where the build tells which; other kinds of places keep the band of all, and the
 * worst form.
 */
export function placesOf(kind: PositionKind, values: Values): readonly Place[] {
  const whole = wholeValues(values);
  const positioned = positionedOf(values);
  return Array.from({ length: placeCount(kind, values) }, (_, index) => {
    const number = index + 1;
    const here = new Map(whole);
    for (const one of positioned) {
      const pin = kind === "cylinder" && one.per === "crankpin" ? crankpinOf(number, values) : undefined;
      if (one.per === kind) put(here, values, one, number);
      else if (pin !== undefined) put(here, values, one, pin);
    }
    return { kind, number, label: `${positionKinds[kind]} ${number}`, values: here };
  });
}
