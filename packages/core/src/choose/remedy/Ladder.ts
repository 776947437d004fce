import type { DimensionSpec } from "../../read/FieldSpec.ts";
import type { DimensionValue, FieldValue } from "../../read/FieldValue.ts";
import { fields } from "../../read/fieldCatalog.ts";
import { type OrderStep, orderStep } from "../../read/orderStep.ts";
import { fromSi, intervalFromSi } from "../../units/convert.ts";
import { sameDimensions, unitOf } from "../../units/findUnit.ts";
import { parseDimension } from "../../units/parseDimension.ts";
import { machiningReach } from "./machiningReach.ts";
import { readMoved, shiftPlaces, writeMoved } from "./moveDimension.ts";

const SLACK = 1e-6;

/** Part by which the same part of another make weighs less or more at the most: common practice. */
const LIGHTER = 0.5;
const HEAVIER = 2;
const mass = unitOf("kg").dimensions;

/**
 * The sizes to which one dimension can be brought, in one direction: rung 1 is the nearest whole step beyond the size
 * that it has, the last lies at the end of what the dimension can be. What was measured place by place moves by whole
 * steps from where it is.
 */
export class Ladder {
  readonly path: string;
  readonly way: -1 | 1;
  readonly step: OrderStep;
  /** Number of rungs; 0 where there is no room. */
  readonly count: number;
  readonly value: DimensionValue;
  private readonly spec: DimensionSpec;
  private readonly range: readonly [number, number];
  private readonly place: string | undefined;
  /** In steps: where the dimension stands, and rung 0. */
  private readonly first: number;
  private readonly rungs = new Map<number, DimensionValue>();

  /** @throws Error when the build has no dimension of this path */
  constructor(values: ReadonlyMap<string, FieldValue>, path: string, way: -1 | 1) {
    const value = values.get(path);
    const spec = fields.get(path)?.spec;
    if (value?.kind !== "dimension" || spec?.kind !== "dimension")
      throw new Error(`the build has no dimension ${path}`);
    const place = values.get(`${path}.place`);
    this.path = path;
    this.way = way;
    this.value = value;
    this.spec = spec;
    // What stands there by default says where by the first of its words.
    this.place = place?.kind === "choice" ? place.value : spec.places?.[0];
    const [least, most] = spec.range.map((edge) => parseDimension(edge, { unit: spec.unit }).nominal);
    const weighs = sameDimensions(unitOf(spec.unit).dimensions, mass);
    const reach = machiningReach(path, way) ?? Number.POSITIVE_INFINITY;
    this.range = weighs
      ? [Math.max(least!, LIGHTER * value.nominal), Math.min(most!, HEAVIER * value.nominal)]
      : [Math.max(least!, value.nominal - reach), Math.min(most!, value.nominal + reach)];
    this.step = orderStep(spec, value.unit, this.kept());
    const unit = unitOf(value.unit);
    const inSteps = (si: number) => fromSi(si, unit) / this.step.size;
    const edge = this.range[way > 0 ? 1 : 0];
    const at = inSteps(value.nominal);
    this.first = way > 0 ? Math.floor(at + SLACK) : Math.ceil(at - SLACK);
    const rungs = this.placed
      ? Math.floor(Math.abs(intervalFromSi(edge - this.outermost(), unit)) / this.step.size + SLACK)
      : way > 0
        ? Math.floor(inSteps(edge) + SLACK) - this.first
        : this.first - Math.ceil(inSteps(edge) - SLACK);
    this.count = Math.max(0, rungs);
  }

  /** Whether the dimension was measured place by place. */
  get placed(): boolean {
    return this.value.positions !== undefined;
  }

  private sizes(): readonly DimensionValue[] {
    const { positions = {}, elsewhere } = this.value;
    const all = [...Object.values(positions), ...(elsewhere === undefined ? [] : [elsewhere])];
    return all.length === 0 ? [this.value] : all;
  }

  /** Half of the width within which the dimension is kept, at the place where it is widest [SI]. */
  private kept(): number {
    return Math.max(...this.sizes().map(({ low, high }) => (high - low) / 2));
  }

  /** The place that comes to the end of the range first [SI]. */
  private outermost(): number {
    const nominals = this.sizes().map(({ nominal }) => nominal);
    return this.way > 0 ? Math.max(...nominals) : Math.min(...nominals);
  }

  /** What stands on a rung in a build file; undefined for what was measured place by place. */
  textAt(rung: number): string | undefined {
    if (this.placed) return undefined;
    const { step, first, way, value, spec, range, place } = this;
    const number = ((first + way * rung) * step.size).toFixed(step.decimals);
    return writeMoved(value, spec, Number(number) === 0 ? number.replace("-", "") : number, range, place);
  }

  /** The dimension on a rung, from 1 to `count`; on rung 0 it is as it was. */
  at(rung: number): DimensionValue {
    if (rung === 0) return this.value;
    let moved = this.rungs.get(rung);
    if (moved === undefined) {
      const text = this.textAt(rung);
      moved =
        text === undefined
          ? shiftPlaces(this.value, this.way * rung * this.step.si)
          : readMoved(this.value, this.spec, text);
      this.rungs.set(rung, moved);
    }
    return moved;
  }
}
