import type { Cylinder } from "@trialfit/mechanics";
import { quantity } from "./Quantity.ts";

/** What sets the cylinder volume at one event of the cycle apart from another's. */
interface VolumeAt {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly meaning: string;
  /** Symbol and path of the event, and an example of it. */
  readonly event: readonly [symbol: string, path: string, example: string];
  /** Crank angle from top dead centre, as the formula writes it. */
  readonly angle: string;
  /** The volume at the event [m3]. */
  readonly volume: (cylinder: Cylinder, event: number) => number;
  readonly valid: string;
  readonly expect: string;
}

/** Declares the volume of the cylinder at one event of the cycle. */
export function volumeAt({ event: [symbol, path, example], angle, volume, expect, ...own }: VolumeAt) {
  return quantity({
    ...own,
    unit: "cm3",
    decimals: 1,
    system: "compression",
    inputs: {
      r: "throwRadius",
      l: "connectingRod.length",
      e: "pinLineOffset",
      B: "block.bore",
      V_c: "clearanceVolume",
      [symbol]: path,
    } as Readonly<Record<string, string>>,
    formula: `V_c + pi / 4 * B^2 * (sqrt((l + r)^2 - e^2) - r * cos(${angle}) - sqrt(l^2 - (r * sin(${angle}) - e)^2))`,
    compute: (n) =>
      volume(
        {
          crank: { throwRadius: n.r!, rodLength: n.l!, pinLineOffset: n.e! },
          bore: n.B!,
          clearanceVolume: n.V_c!,
        },
        n[symbol]!,
      ),
    shape: "guarded",
    sources: [{ id: "plane-geometry" }],
    examples: [
      {
        given: { r: "47 mm", l: "144.5 mm", e: "-0.5 mm", B: "86.5 mm", V_c: "69.02 cm3", [symbol]: example },
        expect,
      },
    ],
    display: true,
  });
}
