import type { Derivation } from "../derive/Derivation.ts";
import { Deriver } from "../derive/Deriver.ts";
import type { Catalog } from "../derive/rootsOf.ts";
import { finish } from "../derive/Steps.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import { decideRule } from "../judge/decideRule.ts";
import { lookupOf } from "../judge/lookupOf.ts";
import type { DimensionValue, FieldValue } from "../read/FieldValue.ts";
import { fields } from "../read/fieldCatalog.ts";
import { fromSi, toSi } from "../units/convert.ts";
import { unitOf } from "../units/findUnit.ts";
import { parseDimension } from "../units/parseDimension.ts";
import { rationalFromDecimal } from "../units/Rational.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** One end of the room: the last size [SI] at which everything that holds still holds, and the rule that ends it. */
export interface RoomEnd {
  readonly value: number;
  readonly rule: string;
}

/** Between which sizes a dimension may come out; an end that is absent is set by no rule. */
export interface Room {
  /** Rules that hold and rest on it. */
  readonly rules: number;
  readonly low?: RoomEnd;
  readonly high?: RoomEnd;
}

const HALVINGS = 9;
/** Doublings of the first step outwards: to a thousand times the tolerance. */
const DOUBLINGS = 10;

/** A dimension that came out at exactly this size. */
function exactly(value: DimensionValue, size: number): DimensionValue {
  const { positions: _, elsewhere: __, ...whole } = value;
  return { ...whole, nominal: size, low: size, high: size };
}

/** Rounds to a decimal step of a unit, towards the middle. */
export function roundInwards(value: number, unit: string, decimals: number, way: -1 | 1): number {
  const scale = 10 ** decimals;
  const scaled = fromSi(value, unitOf(unit)) * scale;
  const whole = way === 1 ? Math.floor(scaled + 1e-6) : Math.ceil(scaled - 1e-6);
  return toSi(rationalFromDecimal((whole / scale).toFixed(decimals))!, unitOf(unit));
}

/** Finds, for the dimensions of one build, between which sizes each may come out. */
export class RoomFinder {
  private readonly values: Values;
  private readonly rules: readonly CompiledRule[];
  private readonly catalog: Catalog;
  private readonly restsOn: (rule: CompiledRule, path: string) => boolean;
  private readonly found = new Map<string, Room>();
  /** The build as it is. */
  private readonly base: Deriver;

  /**
   * @param rules those that hold now
   * @param restsOn whether a rule rests on a field, by the ways that this build takes
   */
  constructor(
    values: Values,
    rules: readonly CompiledRule[],
    catalog: Catalog,
    restsOn: (rule: CompiledRule, path: string) => boolean,
  ) {
    this.values = values;
    this.rules = rules;
    this.catalog = catalog;
    this.restsOn = restsOn;
    this.base = new Deriver(values, catalog);
  }

  /** The room of a dimension, all others within their tolerances. */
  room(path: string): Room {
    let room = this.found.get(path);
    if (room === undefined) {
      room = this.find(path);
      this.found.set(path, room);
    }
    return room;
  }

  private find(path: string): Room {
    const value = this.values.get(path);
    const spec = fields.get(path)?.spec;
    if (value?.kind !== "dimension" || spec?.kind !== "dimension") return { rules: 0 };
    const cheapFirst = (a: CompiledRule, b: CompiledRule) => this.cost(a) - this.cost(b);
    const rules = this.rules
      .filter((rule) => this.restsOn(rule, path))
      .filter((rule) => this.holds(rule, new Map(this.values).set(path, exactly(value, value.nominal))))
      .sort(cheapFirst);
    if (rules.length === 0) return { rules: 0 };
    const edges = spec.range.map((edge) => parseDimension(edge, { unit: spec.unit }).nominal);
    const [low, high] = ([-1, 1] as const).map((way) =>
      this.end(path, value, rules, way, way < 0 ? edges[0]! : edges[1]!),
    );
    return {
      rules: rules.length,
      ...(low === undefined ? {} : { low }),
      ...(high === undefined ? {} : { high }),
    };
  }

  private cost(rule: CompiledRule): number {
    return rule.facts.filter((fact) => this.isDear(fact)).length;
  }

  /** The given distance, or so much less of it that the rule holds there over its whole band. */
  private confirm(rule: CompiledRule, distance: number, moved: (distance: number) => Values): number {
    if (this.cost(rule) === 0) return distance;
    for (let share = 1; share > 0.05; share *= 0.8)
      if (this.holds(rule, moved(share * distance))) return share * distance;
    return 0;
  }

  private word(rule: CompiledRule, values: Values, results: ReadonlyMap<string, Derivation>): boolean {
    const word = decideRule(rule, lookupOf(values, results));
    return word === "holds" || word === "not-applicable";
  }

  private holds(rule: CompiledRule, values: Values): boolean {
    const deriver = new Deriver(values, this.catalog);
    for (const fact of rule.facts) if (this.catalog.has(fact)) finish(deriver.derive(fact));
    return this.word(rule, values, deriver.results);
  }

  /**
   * The same by a shorter way, to be confirmed: a quantity whose band takes a search keeps the band of the build
   * around its new nominal value.
   */
  private seemsToHold(rule: CompiledRule, values: Values): boolean {
    const deriver = new Deriver(values, this.catalog);
    const results = new Map<string, Derivation>();
    for (const fact of rule.facts.filter((one) => this.catalog.has(one))) {
      const base = this.isDear(fact) ? finish(this.base.derive(fact)) : undefined;
      const nominal = base?.state === "value" ? deriver.nominal(fact) : undefined;
      if (base?.state !== "value" || nominal === undefined) results.set(fact, finish(deriver.derive(fact)));
      else {
        const shift = nominal - base.nominal;
        results.set(fact, { ...base, nominal, low: base.low + shift, high: base.high + shift });
      }
    }
    return this.word(rule, values, results);
  }

  private isDear(fact: string): boolean {
    return this.catalog.get(fact)?.shape === "guarded";
  }

  /** The last size that way at which all rules hold. The first that does not ends it. */
  private end(
    path: string,
    value: DimensionValue,
    rules: readonly CompiledRule[],
    way: -1 | 1,
    edge: number,
  ): RoomEnd | undefined {
    const first = Math.max(value.high - value.low, 2e-5 * Math.abs(value.nominal), 1e-9 * Math.abs(edge));
    let reach = Math.min(first * 2 ** DOUBLINGS, Math.abs(edge - value.nominal));
    let ended: RoomEnd | undefined;
    for (const rule of rules) {
      const moved = (distance: number) =>
        new Map(this.values).set(path, exactly(value, value.nominal + way * distance));
      const last = lastThatHolds((distance) => this.seemsToHold(rule, moved(distance)), first, reach);
      const confirmed = this.confirm(rule, last ?? reach, moved);
      if (last === undefined && confirmed === reach) continue;
      reach = confirmed;
      ended = { value: value.nominal + way * reach, rule: rule.file.id };
    }
    return ended;
  }
}

/**
 * The last distance up to `reach` at which something holds that holds at 0, or undefined where it holds all the way.
 * Taken in doubling steps, so that what turns round far away is not taken for holding near by.
 */
function lastThatHolds(at: (distance: number) => boolean, first: number, reach: number): number | undefined {
  let [good, bad] = [0, Number.POSITIVE_INFINITY];
  for (let step = Math.min(first, reach); ; step = Math.min(2 * step, reach)) {
    if (!at(step)) {
      bad = step;
      break;
    }
    good = step;
    if (step >= reach) return undefined;
  }
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (good + bad) / 2;
    if (at(middle)) good = middle;
    else bad = middle;
  }
  return good;
}
