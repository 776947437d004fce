import type { RodContact } from "@trialfit/mechanics";
import { isContradiction } from "../derive/isContradiction.ts";
import type { Nominals } from "./Nominals.ts";
import type { ContactPlace } from "./Trace.ts";
import type { Taken, TraceKind } from "./TraceKind.ts";
import { traceKinds } from "./traceKinds.ts";

/** The rod's nearest place at one angle: distance [m] with the outline's uncertainty off, and both ends. */
export interface Contact extends ContactPlace {
  readonly clearance: number;
}

/** Crank angle of a trace's own count, from the angle after firing top dead centre [rad]. */
export function ownAngle({ from }: TraceKind, angle: number): number {
  return from === "overlap" ? angle - 2 * Math.PI : angle;
}

/** What a build makes of a trace; undefined when inputs are missing or cannot be. */
function prepared<T>(
  nominals: Nominals,
  id: string,
  make: (kind: TraceKind, taken: Taken) => T,
): T | undefined {
  const kind = traceKinds.get(id);
  if (kind === undefined) throw new Error(`no trace is called "${id}"`);
  const { missing, take } = nominals.ask(kind);
  if (missing.length > 0) return undefined;
  try {
    return make(kind, take());
  } catch (error) {
    if (isContradiction(error)) return undefined;
    throw error;
  }
}

/**
 * A trace at single angles, for pictures that move.
 * @returns crank angle from firing top dead centre [rad] → value [SI]; undefined when the build does not give it
 * @throws Error when there is no trace of that name
 */
export function traceAt(nominals: Nominals, id: string): ((angle: number) => number) | undefined {
  return prepared(nominals, id, (kind, taken) => {
    const over = kind.over(taken);
    return (angle) => over(ownAngle(kind, angle));
  });
}

/**
 * Where the rod comes nearest at single angles.
 * @param tilts lean of the banks looked from [rad]; every bank when left out
 * @returns crank angle from firing top dead centre [rad] → nearest place; undefined when the build does not give it
 * @throws Error when there is no trace of that name
 */
export function contactAt(
  nominals: Nominals,
  id: string,
  tilts?: readonly number[],
): ((angle: number) => Contact) | undefined {
  return prepared(nominals, id, (kind, taken) => contactFrom(kind, taken, tilts));
}

/** The nearest places of a trace that has them, counted from firing top dead centre. */
export function contactFrom(
  kind: TraceKind,
  taken: Taken,
  tilts?: readonly number[],
): ((angle: number) => Contact) | undefined {
  const over = kind.contact?.(taken, tilts);
  const uncertain = taken.numbers.t_o ?? 0;
  return over && ((angle) => placed(over(ownAngle(kind, angle)), uncertain));
}

function placed({ clearance, point, metal }: RodContact, uncertain: number): Contact {
  return { clearance: clearance - uncertain, rod: point, metal };
}
