import { ringBackClearance } from "@trialfit/mechanics";
import { REFERENCE_TEMPERATURE } from "../tables/referenceTemperature.ts";
import { IRON } from "../tables/usualMetals.ts";
import { gapHot } from "./gapHot.ts";
import { quantity } from "./Quantity.ts";

/** The three rings: words, names of their fields and quantities, symbols of their gaps, sizes and temperatures. */
export const hotRings = {
  top: {
    head: "Top",
    word: "top ring",
    index: 1,
    radial: "ringSet.topRingRadialThickness",
    temperature: ["T_r", "conditions.topRingTemperature"],
  },
  second: {
    head: "Second",
    word: "second ring",
    index: 2,
    radial: "ringSet.secondRingRadialThickness",
    temperature: ["T_r2", "conditions.secondRingTemperature"],
  },
  oil: {
    head: "Oil",
    word: "oil ring",
    index: 3,
    radial: "ringSet.oilRailRadialThickness",
    temperature: ["T_r3", "conditions.oilRingTemperature"],
  },
} as const;
type RingName = keyof typeof hotRings;

const PISTON = ["alpha_p", "piston.expansion"] as const;
const RING = ["alpha_ri", "ringSet.expansion"] as const;

/** Declares the axial clearance of a ring in its groove when the engine is hot. */
export function ringSideHot(name: RingName, expect: string) {
  const { head, word, index, temperature } = hotRings[name];
  return gapHot({
    id: `${name}RingSideClearanceHot`,
    name: `${head} ring side clearance, hot`,
    symbol: `c_g${index}h`,
    decimals: 4,
    system: "rings",
    meaning: `Play of the ${word} up and down in its groove at full load: the groove in the piston’s alloy opens by a little more than the ring grows. Oil carbon takes more of it than heat gives.`,
    cold: [`c_g${index}`, `${name}RingSideClearance`],
    around: [{ size: [`g_${index}`, `piston.${name}GrooveHeight`], expansion: PISTON, temperature }],
    within: [{ size: [`h_r${index}`, `ringSet.${name}RingHeight`], expansion: RING, temperature }],
    valid: "flat grooves in the piston’s own metal, as hot as their ring",
    given: {
      [`c_g${index}`]: "0.030 mm",
      [`g_${index}`]: "1.23 mm",
      alpha_p: "22.3e-6 1/K",
      [`h_r${index}`]: "1.20 mm",
      alpha_ri: "12e-6 1/K",
      [temperature[0]]: "220 degC",
    },
    expect,
  });
}

/** Declares the room behind a ring in its groove when the engine is hot. */
export function ringBackHot(name: RingName, expect: string) {
  const { head, word, index, radial, temperature } = hotRings[name];
  const [D, a, T] = [`D_g${index}`, `a_${index}`, temperature[0]];
  const grows = (expansion: string, at: string) => `(1 + ${expansion} * (${at} - ${REFERENCE_TEMPERATURE}))`;
  const hot = (size: number, expansion: number, at: number) =>
    size * (1 + expansion * (at - REFERENCE_TEMPERATURE));
  return quantity({
    id: `${name}RingBackClearanceHot`,
    name: `${head} ring back clearance, hot`,
    symbol: `c_b${index}h`,
    unit: "mm",
    decimals: 3,
    system: "rings",
    meaning: `Room behind the ${word} at full load, the piston lying against one side of the bore. The bottom of the groove grows towards the cylinder by more than the cylinder gives way; negative: the ring is jammed.`,
    inputs: {
      B: "block.bore",
      T_w: "conditions.cylinderTopTemperature",
      [D]: `piston.${name}GrooveRootDiameter`,
      alpha_p: PISTON[1],
      [a]: radial,
      alpha_ri: RING[1],
      [T]: temperature[1],
      C_sh: "skirtClearanceHot",
    } as Readonly<Record<string, string>>,
    formula: `(B * ${grows(IRON.expansionText, "T_w")} - ${D} * ${grows("alpha_p", T)}) / 2 - ${a} * ${grows("alpha_ri", T)} - max(C_sh, 0) / 2`,
    compute: (n) =>
      ringBackClearance({
        bore: hot(n.B!, IRON.expansion, n.T_w!),
        grooveRootDiameter: hot(n[D]!, n.alpha_p!, n[T]!),
        ringRadialWall: hot(n[a]!, n.alpha_ri!, n[T]!),
        pistonShift: Math.max(n.C_sh!, 0) / 2,
      }),
    shape: "monotone",
    valid: "a cast-iron bore; the groove as hot as its ring; a skirt that is tight when hot does not shift",
    sources: [{ id: "plane-geometry" }, { id: "from-memory", where: "expansion of cast iron" }],
    examples: [
      {
        given: {
          B: "86.5 mm",
          T_w: "155 degC",
          [D]: "78.3 mm",
          alpha_p: "22.3e-6 1/K",
          [a]: "3.1 mm",
          alpha_ri: "12e-6 1/K",
          [T]: "220 degC",
          C_sh: "0.02 mm",
        },
        expect,
      },
    ],
    display: true,
  });
}
