import { quantity } from "../Quantity.ts";
import type { LoadedJoint, Numbers, Paths } from "./Joint.ts";

/** Declares how far a fastener’s load swings about its mean. */
export function loadAmplitude({ prefix, word, index, system, load }: LoadedJoint) {
  const [[F], share] = [load, `Phi_${index}`];
  return quantity({
    id: `${prefix}LoadAmplitude`,
    name: `Swing of the load in a ${word}`,
    symbol: `F_sw${index}`,
    unit: "kN",
    decimals: 2,
    system,
    meaning: `Half of what the working load adds to the preload of a ${word} on each cycle: this swing, and not the preload, tires it. The joint that stays shut keeps the rest away from it.`,
    inputs: { [share]: `${prefix}LoadFactor`, [F]: load[1] } as Paths,
    formula: `${share} * ${F} / 2`,
    compute: (n: Numbers) => (n[share]! * n[F]!) / 2,
    shape: "guarded",
    valid: "a load that comes and goes between nothing and its peak; a joint that stays shut; pull alone",
    sources: [{ id: "vdi-2230" }],
    examples: [{ given: { [share]: "0.12", [F]: "20 kN" }, expect: "1.20 kN" }],
    display: true,
  });
}
