import { engagementNeeded, threadStripLoad } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Joint, Numbers, Paths } from "./Joint.ts";

/** The first turns carry little: share of the engaged length that counts. Source: VDI 2230, from memory. */
const BEARING_SHARE = 0.8;

/** Declares the reserve of tapped threads against being torn out. */
export function stripReserve({ prefix, word, part, index, system, preload, tapped, into }: Joint) {
  const [F, path] = preload;
  const [tau] = tapped;
  return quantity({
    id: `${prefix}StripReserve`,
    name: `Strip reserve of the ${word}’s thread`,
    symbol: `S_t${index}`,
    unit: "1",
    decimals: 2,
    system,
    meaning: `Load at which the thread in the ${into} is torn out over the preload of a ${word}. The fastener should fail before the ${into} does.`,
    inputs: {
      [tau]: tapped[1],
      d: `${part}.threadDiameter`,
      P: `${part}.threadPitch`,
      m_e: `${part}.engagement`,
      [F]: path,
    } as Paths,
    formula: `0.8 * ${tau} * pi * d * m_e * (P / 2 + 3 * P / 8) / (P * ${F})`,
    compute: (n: Numbers) =>
      (BEARING_SHARE *
        threadStripLoad({ majorDiameter: n.d!, pitch: n.P!, engagement: n.m_e!, shearStrength: n[tau]! })) /
      n[F]!,
    shape: "guarded",
    valid: "threads in the part’s own metal; a thread insert spreads the load over a larger cylinder",
    sources: [{ id: "vdi-2230" }],
    examples: [
      {
        given: { [tau]: "200 MPa", d: "11 mm", P: "1.25 mm", m_e: "26 mm", [F]: "66 kN" },
        expect: "1.91",
      },
    ],
    display: true,
  });
}

/** Declares the engagement at which a fastener breaks before its tapped thread is torn out. */
export function engagementToBreak({ prefix, word, part, index, system, stressArea, tapped, into }: Joint) {
  const [[A], [tau]] = [stressArea, tapped];
  return quantity({
    id: `${prefix}EngagementNeeded`,
    name: `Engagement that a ${word} needs`,
    symbol: `m_n${index}`,
    unit: "mm",
    decimals: 1,
    system,
    meaning: `Length of full thread in the ${into} with which a ${word} breaks before the thread is torn out of it. A broken fastener costs less than a torn ${into}.`,
    inputs: {
      R_m: `${part}.tensileStrength`,
      [A]: stressArea[1],
      [tau]: tapped[1],
      d: `${part}.threadDiameter`,
      P: `${part}.threadPitch`,
    } as Paths,
    formula: `R_m * ${A} / (0.8 * ${tau} * pi * d / P * (P / 2 + 3 * sqrt(3) / 8 * P * sqrt(3) / 3))`,
    compute: (n: Numbers) =>
      engagementNeeded({
        majorDiameter: n.d!,
        pitch: n.P!,
        force: n.R_m! * n[A]!,
        shearStrength: n[tau]!,
        bearingShare: BEARING_SHARE,
      }),
    shape: "guarded",
    valid: "threads in the part’s own metal; full thread only, without countersink and run-out",
    sources: [{ id: "vdi-2230" }],
    examples: [
      {
        given: { R_m: "1350 MPa", [A]: "75.85 mm2", [tau]: "200 MPa", d: "11 mm", P: "1.25 mm" },
        expect: "21.2 mm",
      },
    ],
    display: true,
  });
}
