import { preloadFromTorque, threadGeometry } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";

/** What sets the preload of one joint's fasteners apart from another's. */
interface TorquePreload {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly system: "fasteners" | "main-caps" | "flywheel" | "rods";
  /** Key of the part that holds the fastener's fields. */
  readonly part: "headFastener" | "mainFastener" | "flywheelFastener" | "rodBolt";
  readonly display?: true;
}

/** Declares the preload that a torque gives: one declaration for every screwed joint. */
export function torquePreload({ part, ...own }: TorquePreload) {
  return quantity({
    ...own,
    unit: "kN",
    decimals: 1,
    meaning:
      "Clamp force of one fastener that the final torque gives with the friction entered. Friction takes most of the torque, so a figure for another lubricant is a figure for another joint.",
    inputs: {
      T_f: `${part}.torque`,
      P: `${part}.threadPitch`,
      d: `${part}.threadDiameter`,
      mu_t: `${part}.threadFriction`,
      mu_h: `${part}.headFriction`,
      D_k: `${part}.headFrictionDiameter`,
    },
    formula: "T_f / (P / (2 * pi) + mu_t * (d - 3 * sqrt(3) / 8 * P) / (2 * cos(pi / 6)) + mu_h * D_k / 2)",
    compute: ({ T_f, P, d, mu_t, mu_h, D_k }) =>
      preloadFromTorque({
        torque: T_f,
        pitch: P,
        pitchDiameter: threadGeometry({ majorDiameter: d, pitch: P }).pitchDiameter,
        threadFriction: mu_t,
        headFriction: mu_h,
        headFrictionDiameter: D_k,
      }),
    shape: "monotone",
    valid:
      "tightened by torque; threads of the 60° profile, metric or unified; friction as measured for the lubricant used. The maker’s tightening data outrank it",
    sources: [{ id: "vdi-2230" }],
    examples: [
      {
        given: { T_f: "115 N m", P: "1.25 mm", d: "11 mm", mu_t: "0.11", mu_h: "0.11", D_k: "15.5 mm" },
        expect: "67.7 kN",
      },
      {
        given: { T_f: "50.35 N m", P: "1.5 mm", d: "10 mm", mu_t: "0.12", mu_h: "0.12", D_k: "13.5 mm" },
        expect: "30 kN",
        from: { id: "vdi-2230", where: "tightening torque M_A" },
      },
    ],
  });
}
