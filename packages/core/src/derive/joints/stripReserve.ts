import { threadStripLoad } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Joint, Numbers, Paths } from "./Joint.ts";

/** The first turns carry little: share of the engaged length that counts. Source: VDI 2230, from memory. */
const BEARING_SHARE = 0.8;

/** Declares the reserve of the block’s threads against being torn out. */
export function stripReserve({ prefix, word, part, index, system, preload }: Joint) {
  const [F, path] = preload;
  return quantity({
    id: `${prefix}StripReserve`,
    name: `Strip reserve of the ${word}’s thread`,
    symbol: `S_t${index}`,
    unit: "1",
    decimals: 2,
    system,
    meaning: `Load at which the thread in the block is torn out over the preload of a ${word}. The bolt should fail before the block does.`,
    inputs: {
      tau_B: "block.threadShearStrength",
      d: `${part}.threadDiameter`,
      P: `${part}.threadPitch`,
      m_e: `${part}.engagement`,
      [F]: path,
    } as Paths,
    method:
      "Shear strength of the block × the sheared cylinder of the engaged thread × 0.8, since the first turns carry little, over the preload.",
    compute: (n: Numbers) =>
      (BEARING_SHARE *
        threadStripLoad({ majorDiameter: n.d!, pitch: n.P!, engagement: n.m_e!, shearStrength: n.tau_B! })) /
      n[F]!,
    shape: "guarded",
    valid: "threads in the block’s own metal; a thread insert spreads the load over a larger cylinder",
    sources: [{ id: "vdi-2230" }],
    examples: [
      {
        given: { tau_B: "200 MPa", d: "11 mm", P: "1.25 mm", m_e: "26 mm", [F]: "66 kN" },
        expect: "1.91",
      },
    ],
    display: true,
  });
}
