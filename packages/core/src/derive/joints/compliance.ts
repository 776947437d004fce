import {
  boltCompliance,
  clampedCompliance,
  pressureConeTangent,
  pressureZoneCompliance,
} from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Joint, Numbers, Paths } from "./Joint.ts";

/** Width of a hole over the thread’s diameter, a medium clearance. Source: common practice . */
const HOLE = 1.1;

/** Declares how much a fastener gives under load. */
export function fastenerCompliance({ prefix, word, part, index, system, stressArea }: Joint) {
  const [A, path] = stressArea;
  return quantity({
    id: `${prefix}Compliance`,
    name: `Compliance of a ${word}`,
    symbol: `delta_${index}`,
    unit: "mm/kN",
    decimals: 5,
    system,
    meaning: `How much a ${word} lengthens for each unit of load, with half a diameter of engaged thread and half a diameter of its head.`,
    inputs: {
      l_k: `${part}.grip`,
      l_ft: `${part}.freeThread`,
      A_sh: `${part}.shankArea`,
      [A]: path,
      d: `${part}.threadDiameter`,
      E_s: `${part}.modulus`,
    } as Paths,
    formula: `(l_k - l_ft + d / 2) / (A_sh * E_s) + (l_ft + d / 2) / (${A} * E_s)`,
    compute: (n: Numbers) => {
      if (n.l_ft! > n.l_k!) throw new RangeError("more free thread than grip");
      return boltCompliance([
        { length: n.l_k! - n.l_ft! + n.d! / 2, area: n.A_sh!, elasticModulus: n.E_s! },
        { length: n.l_ft! + n.d! / 2, area: n[A]!, elasticModulus: n.E_s! },
      ]);
    },
    shape: "monotone",
    valid: "below yield; the first turns of the thread carry most",
    sources: [{ id: "vdi-2230" }],
    examples: [
      {
        given: {
          l_k: "120 mm",
          l_ft: "10 mm",
          A_sh: "78.5 mm2",
          [A]: "75.85 mm2",
          d: "11 mm",
          E_s: "206 GPa",
        },
        expect: "0.00813 mm/kN",
      },
    ],
    display: true,
  });
}

/** Declares how much the parts that a fastener clamps give under load. */
export function clampedGive({ prefix, word, part, index, system }: Joint) {
  return quantity({
    id: `${prefix}ClampedCompliance`,
    name: `Compliance of what a ${word} clamps`,
    symbol: `delta_k${index}`,
    unit: "mm/kN",
    decimals: 5,
    system,
    meaning: `How much the parts under a ${word} are pressed together for each unit of load.`,
    inputs: {
      l_k: `${part}.grip`,
      d: `${part}.threadDiameter`,
      E_k: `${part}.clampedModulus`,
      D_bo: `${part}.bossDiameter`,
      D_k: `${part}.headFrictionDiameter`,
    },
    routes: [
      { needs: ["D_bo", "D_k"] },
      {
        needs: [],
        assumes: "metal that is wide enough round the fastener: a narrow boss gives tens of per cent more",
      },
    ],
    method:
      "With the boss known: a cone from the face under the head (twice the friction diameter less the hole of 1.1 d) into the tapped part, cut off where the boss ends, each slice its length over section and modulus. Without it two frusta of 30° that start under head and nut, one and a half diameters wide, and meet at half the grip: 1/δ = 0.5774 π E d / (2 ln[5 (0.5774 l + 0.5 d)/(0.5774 l + 2.5 d)]).",
    compute: ({ l_k, d, E_k, D_bo, D_k }, _words, _tables, route) => {
      if (route === 1) return clampedCompliance({ grip: l_k, diameter: d, elasticModulus: E_k });
      const holeDiameter = HOLE * d;
      const headDiameter = 2 * D_k - holeDiameter;
      const outerDiameter = Math.max(D_bo, headDiameter);
      const into = "thread";
      return pressureZoneCompliance({
        headDiameter,
        holeDiameter,
        outerDiameter: D_bo,
        tangent: pressureConeTangent({ grip: l_k, headDiameter, outerDiameter, into }),
        into,
        layers: [{ length: l_k, elasticModulus: E_k }],
      });
    },
    shape: "guarded",
    valid: "parts of one metal; screwed into a tapped part",
    sources: [
      { id: "vdi-2230", where: "deformation cone and sleeve" },
      { id: "shigley", where: "joints, member stiffness" },
    ],
    examples: [
      {
        given: { l_k: "150 mm", d: "11 mm", E_k: "73 GPa", D_bo: "33 mm", D_k: "15.5 mm" },
        expect: "0.00306 mm/kN",
      },
      { given: { l_k: "120 mm", d: "11 mm", E_k: "73 GPa" }, expect: "0.00186 mm/kN" },
    ],
    display: true,
  });
}
