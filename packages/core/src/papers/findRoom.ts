import { Standing } from "../choose/remedy/Standing.ts";
import { StateFacts } from "../choose/remedy/StateFacts.ts";
import { type Catalog, rootFinderOf } from "../derive/rootsOf.ts";
import { finish, type Steps } from "../derive/Steps.ts";
import type { CompiledRule } from "../judge/CompiledRule.ts";
import type { VerdictWord } from "../judge/Verdict.ts";
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

const holding: ReadonlySet<VerdictWord> = new Set(["holds", "not-applicable"]);

/** Finds, for the dimensions of one build, between which sizes each may come out. */
export class RoomFinder {
  private readonly values: Values;
  private readonly rules: readonly CompiledRule[];
  private readonly catalog: Catalog;
  private readonly restsOn: (rule: CompiledRule, path: string) => boolean;
  private readonly found = new Map<string, Room>();
  /** The build as it is, judged as a whole. */
  private readonly base: Standing;

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
    const finder = rootFinderOf(catalog, values.keys());
    this.base = new Standing(new StateFacts(values, { catalog, finder, placedAt: () => undefined }));
  }

  /** The room of a dimension, all others within their tolerances. */
  room(path: string): Room {
    return finish(this.roomInSteps(path));
  }

  /** The same in pieces; what was found before comes at once. */
  *roomInSteps(path: string): Steps<Room> {
    let room = this.found.get(path);
    if (room === undefined) {
      room = yield* this.find(path);
      this.found.set(path, room);
    }
    return room;
  }

  private *find(path: string): Steps<Room> {
    const value = this.values.get(path);
    const spec = fields.get(path)?.spec;
    if (value?.kind !== "dimension" || spec?.kind !== "dimension") return { rules: 0 };
    const rules: CompiledRule[] = [];
    // What holds over the tolerance of a size holds at its nominal value; what was read by place may differ from it.
    const here =
      value.positions === undefined ? undefined : this.base.moved(path, exactly(value, value.nominal));
    for (const rule of this.rules)
      if (this.restsOn(rule, path) && (here === undefined || (yield* holds(here, rule)))) rules.push(rule);
    rules.sort((a, b) => this.cost(a) - this.cost(b));
    if (rules.length === 0) return { rules: 0 };
    const [least, most] = spec.range.map((edge) => parseDimension(edge, { unit: spec.unit }).nominal);
    const low = yield* this.end(path, value, rules, -1, least!);
    const high = yield* this.end(path, value, rules, 1, most!);
    return {
      rules: rules.length,
      ...(low === undefined ? {} : { low }),
      ...(high === undefined ? {} : { high }),
    };
  }

  /** How many quantities of a rule take a search. */
  private cost(rule: CompiledRule): number {
    return rule.facts.filter((fact) => this.catalog.get(fact)?.shape === "guarded").length;
  }

  /** The given distance, or so much less of it that the rule holds there over its whole band. */
  private *confirm(
    rule: CompiledRule,
    distance: number,
    moved: (distance: number) => Standing,
  ): Steps<number> {
    if (this.cost(rule) === 0) return distance;
    for (let share = 1; share > 0.05; share *= 0.8)
      if (yield* holds(moved(share * distance), rule)) return share * distance;
    return 0;
  }

  /** The last size that way at which all rules hold. The first that does not ends it. */
  private *end(
    path: string,
    value: DimensionValue,
    rules: readonly CompiledRule[],
    way: -1 | 1,
    edge: number,
  ): Steps<RoomEnd | undefined> {
    const first = Math.max(value.high - value.low, 2e-5 * Math.abs(value.nominal), 1e-9 * Math.abs(edge));
    let reach = Math.min(first * 2 ** DOUBLINGS, Math.abs(edge - value.nominal));
    let ended: RoomEnd | undefined;
    // Most rules are asked at the same distances, and share quantities there.
    const standings = new Map<number, Standing>();
    const moved = (distance: number): Standing => {
      const known = standings.get(distance);
      if (known !== undefined) return known;
      const standing = this.base.moved(path, exactly(value, value.nominal + way * distance));
      standings.set(distance, standing);
      return standing;
    };
    for (const rule of rules) {
      const seems = (distance: number) => holding.has(moved(distance).shortWord(rule));
      const last = yield* lastThatHolds(seems, first, reach);
      const confirmed = yield* this.confirm(rule, last ?? reach, moved);
      if (last === undefined && confirmed === reach) continue;
      reach = confirmed;
      ended = { value: value.nominal + way * reach, rule: rule.file.id };
    }
    return ended;
  }
}

function* holds(standing: Standing, rule: CompiledRule): Steps<boolean> {
  return holding.has(yield* standing.word(rule));
}

/**
 * The last distance up to `reach` at which something holds that holds at 0, or undefined where it holds all the way.
 * Taken in doubling steps, so that what turns round far away is not taken for holding near by.
 */
function* lastThatHolds(
  at: (distance: number) => boolean,
  first: number,
  reach: number,
): Steps<number | undefined> {
  let [good, bad] = [0, Number.POSITIVE_INFINITY];
  for (let step = Math.min(first, reach); ; step = Math.min(2 * step, reach)) {
    yield;
    if (!at(step)) {
      bad = step;
      break;
    }
    good = step;
    if (step >= reach) return undefined;
  }
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    yield;
    const middle = (good + bad) / 2;
    if (at(middle)) good = middle;
    else bad = middle;
  }
  return good;
}
