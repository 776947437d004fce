import { tighteningAngle } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Joint, Numbers, Paths } from "./Joint.ts";

/** Declares the angle that turns a snug fastener to its preload. */
export function angleFromSnug({ prefix, word, part, index, system, preload }: Joint) {
  const [F, path] = preload;
  const [bolt, clamped] = [`delta_${index}`, `delta_k${index}`];
  return quantity({
    id: `${prefix}Angle`,
    name: `Angle from snug of a ${word}`,
    symbol: `phi_t${index}`,
    unit: "deg",
    decimals: 0,
    system,
    meaning: `Angle through which nut or head of a ${word} turns from first contact without play to its preload. Thread and head hardly matter to it, friction not at all.`,
    inputs: {
      [F]: path,
      [bolt]: `${prefix}Compliance`,
      [clamped]: `${prefix}ClampedCompliance`,
      P: `${part}.threadPitch`,
    } as Paths,
    formula: `2 * pi * ${F} * (${bolt} + ${clamped}) / P`,
    compute: (n: Numbers) =>
      tighteningAngle({
        preload: n[F]!,
        boltCompliance: n[bolt]!,
        clampedCompliance: n[clamped]!,
        pitch: n.P!,
      }),
    shape: "guarded",
    valid: "from a snug joint; a guide beside the maker’s own angle, never in its place",
    sources: [{ id: "vdi-2230" }],
    examples: [
      {
        given: { [F]: "46 kN", [bolt]: "0.0037 mm/kN", [clamped]: "0.0008 mm/kN", P: "1.058 mm" },
        expect: "70 deg",
      },
    ],
    display: true,
  });
}
