import type { PartSpec } from "../../read/FieldSpec.ts";
import type { FieldValue } from "../../read/FieldValue.ts";

/** One part, or one set of like parts, that can be bought: what it puts into a build, and what it takes to have it. */
export interface ListedPart {
  /** Unique among the parts of its kind. */
  readonly id: string;
  readonly name?: string;
  /** Its fields by path: `crankshaft.stroke`. Of the build's own values those that the list keeps are not among them. */
  readonly values: ReadonlyMap<string, FieldValue>;
  /** The same as a build file has them, by name: `stroke: 94 mm`. */
  readonly entries: Readonly<Record<string, unknown>>;
  /** For all of it that one engine takes, in ten-thousandths of the list's currency, so that sums are exact. */
  readonly price?: number;
  /** Until it is there [s]. */
  readonly leadTime?: number;
  /** For how many engines it is in stock. */
  readonly stock?: number;
  /** Of all of it that one engine takes [kg]. */
  readonly totalMass?: number;
  /** Where it stands in its list. */
  readonly line: number;
}

/** Parts of one kind that can be chosen in place of the one that a build has. */
export interface PartsList {
  readonly file: string;
  readonly part: PartSpec;
  readonly about?: string;
  /** Three letters (ISO 4217); absent where no part has a price. */
  readonly currency?: string;
  /** Fields by path whose values in the build hold for each of these parts that does not state its own. */
  readonly keep: readonly string[];
  readonly parts: readonly ListedPart[];
}

/** Shares of one unit of a currency in which prices are counted. */
export const PRICE_SHARES = 10_000;
