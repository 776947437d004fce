import { residualClamp } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { LoadedJoint, Numbers, Paths } from "./Joint.ts";

/** Declares the clamp that is left at one fastener when its joint is pulled. */
export function clampLeft(joint: LoadedJoint) {
  const { prefix, word, index, system } = joint;
  const [F, load] = [joint.preload[0], joint.load[0]];
  const [share, loss] = [`Phi_${index}`, `F_Z${index}`];
  return quantity({
    id: `${prefix}ClampLeft`,
    name: `Clamp left at a ${word}`,
    symbol: `F_K${index}`,
    unit: "kN",
    decimals: 1,
    system,
    meaning: `Force that still presses the joint together at one ${word} under its working load, after the faces have settled. At zero the joint opens.`,
    inputs: {
      [F]: joint.preload[1],
      [loss]: `${prefix}EmbeddingLoss`,
      [share]: `${prefix}LoadFactor`,
      [load]: joint.load[1],
    } as Paths,
    formula: `${F} - ${loss} - (1 - ${share}) * ${load}`,
    compute: (n: Numbers) =>
      residualClamp({
        preload: n[F]!,
        bolts: 1,
        loadFactor: n[share]!,
        jointLoad: n[load]!,
        pryingFactor: 1,
      }) - n[loss]!,
    shape: "guarded",
    valid: `pull alone: ${joint.prying} (common practice)`,
    sources: [{ id: "vdi-2230" }],
    examples: [
      { given: { [F]: "46 kN", [loss]: "1 kN", [share]: "0.15", [load]: "18.4 kN" }, expect: "29.4 kN" },
    ],
    display: true,
  });
}
