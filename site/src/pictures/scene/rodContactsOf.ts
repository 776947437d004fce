import { contactAt, type Nominals, traceKinds } from "trialfit";
import { gapText } from "./gapText.ts";
import type { ContactScene, Point } from "./Scene.ts";
import { toMm } from "./toMm.ts";

const place = ({ x, y }: Point): Point => ({ x: toMm(x), y: -toMm(y) });

/** Every trace that follows the rod past something. */
const rodTraces: readonly string[] = [...traceKinds.values()].flatMap((kind) =>
  kind.contact === undefined ? [] : [kind.id],
);

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
        text: gapText(trace, clearance),
      };
    });
}
