import type { BlockPoint } from "@trialfit/mechanics";
import type { NamedExtreme } from "./TraceKind.ts";

/** One point of a trace: crank angle from firing top dead centre [rad], value [SI]. */
export interface TracePoint {
  readonly angle: number;
  readonly value: number;
}

/** Both ends of the shortest way from the rod to what it must clear, in the frame of its cylinder [m]. */
export interface ContactPlace {
  readonly rod: BlockPoint;
  readonly metal: BlockPoint;
}

interface Named {
  readonly id: string;
  readonly name: string;
  readonly meaning: string;
  /** Unit in which it is shown; all numbers are SI. */
  readonly unit: string;
  readonly decimals: number;
}

/** What happens over two turns, from firing top dead centre. */
export interface TraceValue extends Named {
  readonly state: "value";
  /** [rad], 0 to 4 pi, both ends included. */
  readonly angles: readonly number[];
  readonly values: readonly number[];
  readonly least: TracePoint;
  readonly greatest: TracePoint;
  /** The extreme that matters, and the quantity or field that names it. */
  readonly marked: TracePoint & { readonly extreme: NamedExtreme };
  /** For a distance from the rod: where it is nearest, angle by angle, and at the marked extreme. */
  readonly places?: readonly ContactPlace[];
  readonly markedPlace?: ContactPlace;
  /** Speeds at which it holds: paths of fields. */
  readonly speeds: readonly string[];
  /** Fields that rest on a documented default. */
  readonly assumed: readonly string[];
  /** What the ways taken to it take for granted, in words. */
  readonly takenFor: readonly string[];
}

/** A trace whose inputs are missing. */
export interface TraceMissing extends Named {
  readonly state: "missing";
  /** Paths of the fields that would give it. */
  readonly missing: readonly string[];
}

/** A trace whose inputs cannot be. */
export interface TraceImpossible extends Named {
  readonly state: "impossible";
  readonly reason: string;
}

export type Trace = TraceValue | TraceMissing | TraceImpossible;
