import { separationReserve } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { LoadedJoint, Numbers, Paths } from "./Joint.ts";

/** Declares how many times its load a joint bears before it opens. */
export function openingReserve({ prefix, word, index, system, preload, load, prying }: LoadedJoint) {
  const [[F], [load1]] = [preload, load];
  const [share, loss] = [`Phi_${index}`, `F_Z${index}`];
  return quantity({
    id: `${prefix}OpeningReserve`,
    name: `Opening reserve at a ${word}`,
    symbol: `S_o${index}`,
    unit: "1",
    decimals: 2,
    system,
    meaning: `How many times the working load could grow before the joint opens at a ${word}, its faces settled. At 1 the fastener starts to take the whole load.`,
    inputs: {
      [F]: preload[1],
      [loss]: `${prefix}EmbeddingLoss`,
      [share]: `${prefix}LoadFactor`,
      [load1]: load[1],
    } as Paths,
    formula: `(${F} - ${loss}) / ((1 - ${share}) * ${load1})`,
    compute: (n: Numbers) =>
      separationReserve({ preload: n[F]! - n[loss]!, loadFactor: n[share]!, jointLoad: n[load1]! }),
    shape: "guarded",
    valid: `pull alone: ${prying} (common practice)`,
    sources: [{ id: "vdi-2230" }, { id: "shigley", where: "joint separation" }],
    examples: [
      { given: { [F]: "46 kN", [loss]: "1 kN", [share]: "0.15", [load1]: "18.4 kN" }, expect: "2.88" },
    ],
    display: true,
  });
}
