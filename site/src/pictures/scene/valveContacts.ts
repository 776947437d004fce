import { traceKinds } from "trialfit";
import { gapText } from "./gapText.ts";
import type { ContactScene, ValveScene } from "./Scene.ts";

/** The room between the valves and their pockets. */
export function valveContacts(valves: readonly ValveScene[]): readonly ContactScene[] {
  return valves.flatMap(({ side, toPiston }) => {
    if (toPiston === undefined) return [];
    const [from, to] = toPiston;
    const trace = `${side}ValveGap`;
    const down = to.y >= from.y ? 1 : -1;
    const clearance = (down * Math.hypot(to.x - from.x, to.y - from.y)) / 1e3;
    return [
      { trace, name: traceKinds.get(trace)!.name, from, to, clearance, text: gapText(trace, clearance) },
    ];
  });
}
