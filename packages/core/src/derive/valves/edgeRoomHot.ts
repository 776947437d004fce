import { quantity } from "../Quantity.ts";
import { type Side, sides } from "./valveSide.ts";

interface EdgeRoom {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  /** What the edge could strike, in words. */
  readonly words: string;
  readonly cold: readonly [symbol: string, path: string];
  /** Valves whose edge grows into the room. */
  readonly of: readonly [Side, ...Side[]];
  readonly valid: string;
  readonly expect: string;
}

/** Declares the room beside the edge of a valve when the valves are hot: the cold room less their growth. */
export function edgeRoomHot({ words, cold: [gap, path], of, expect, ...own }: EdgeRoom) {
  const growths = of.map((side) => [`Delta_r${sides[side].index}`, `${side}ValveHeadGrowth`] as const);
  return quantity({
    ...own,
    unit: "mm",
    decimals: 2,
    system: "valve-train",
    meaning: `Least room between ${words} at full load: the room cold less what the ${of.join(" and the ")} valve’s edge grows outwards.`,
    inputs: Object.fromEntries([[gap, path], ...growths]) as Readonly<Record<string, string>>,
    formula: [gap, ...growths.map(([symbol]) => symbol)].join(" - "),
    compute: (n) => growths.reduce((left, [symbol]) => left - n[symbol]!, n[gap]!),
    shape: "guarded",
    sources: [{ id: "plane-geometry" }],
    examples: [
      {
        given: {
          [gap]: "1.20 mm",
          ...Object.fromEntries(growths.map(([symbol]) => [symbol, "0.15 mm"])),
        },
        expect,
      },
    ],
    display: true,
  });
}

const GROWS_ALIKE = "never more than what is left: that the metal about the valve grows as well is left out";

/** Room between the edge of a valve and the wall of its pocket, hot. */
export function pocketRoomHot(side: Side) {
  const { word, index } = sides[side];
  return edgeRoomHot({
    id: `${side}PocketRoomHot`,
    name: `${word} valve to pocket wall, hot`,
    symbol: `c_r${index}h`,
    words: `the edge of the ${side} valve and the wall of its pocket`,
    cold: [`c_r${index}`, `${side}PocketRoom`],
    of: [side],
    valid: GROWS_ALIKE,
    expect: "1.05 mm",
  });
}

/** Room between the edge of a valve and the cylinder wall, hot. */
export function valveWallRoomHot(side: Side) {
  const { word, index } = sides[side];
  return edgeRoomHot({
    id: `${side}ValveToBoreHot`,
    name: `${word} valve to cylinder wall, hot`,
    symbol: `c_b${index}h`,
    words: `the edge of the ${side} valve and the cylinder wall`,
    cold: [`c_b${index}`, `${side}ValveToBore`],
    of: [side],
    valid: "head and cylinder growing alike, so that the valve stands over its cylinder as it does cold",
    expect: "1.05 mm",
  });
}
