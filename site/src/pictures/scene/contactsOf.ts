import { contactAt, formatNumber, type Nominals, traceKinds } from "trialfit";
import type { ContactScene, Point, ValveScene } from "./Scene.ts";
import { toMm } from "./sizes.ts";

const place = ({ x, y }: Point): Point => ({ x: toMm(x), y: -toMm(y) });

/** Every trace that follows the rod past something. */
export const rodTraces: readonly string[] = [...traceKinds.values()].flatMap((kind) =>
  kind.contact === undefined ? [] : [kind.id],
);

const printed = (trace: string, clearance: number) => {
  const { unit, decimals } = traceKinds.get(trace)!;
  return formatNumber(clearance, unit, { decimals });
};

/** Where the rod is nearest to things at an angle, seen from a bank that leans so far; one angle takes about 2 ms. */
export function rodContactsOf(nominals: Nominals, tilt: number): (angle: number) => readonly ContactScene[] {
  const found = rodTraces.flatMap((trace) => {
    const at = contactAt(nominals, trace, [tilt]);
    return at === undefined ? [] : [{ trace, at }];
  });
  return (angle) =>
    found.map(({ trace, at }) => {
      const { clearance, rod, metal } = at(angle);
      return {
        trace,
        name: traceKinds.get(trace)!.name,
        from: place(rod),
        to: place(metal),
        clearance,
        text: printed(trace, clearance),
      };
    });
}

/** The same for the valves that stand over their pockets. */
export function valveContacts(valves: readonly ValveScene[]): readonly ContactScene[] {
  return valves.flatMap(({ side, toPiston }) => {
    if (toPiston === undefined) return [];
    const [from, to] = toPiston;
    const trace = `${side}ValveGap`;
    const down = to.y >= from.y ? 1 : -1;
    const clearance = (down * Math.hypot(to.x - from.x, to.y - from.y)) / 1e3;
    return [
      { trace, name: traceKinds.get(trace)!.name, from, to, clearance, text: printed(trace, clearance) },
    ];
  });
}
