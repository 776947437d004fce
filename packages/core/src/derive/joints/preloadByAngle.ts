import { preloadFromAngle, preloadFromTorque, threadGeometry } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Joint, Numbers, Paths } from "./Joint.ts";

/** Declares the preload of a fastener that is tightened by a snug torque and an angle. */
export function preloadByAngle({ prefix, word, part, index, system }: Joint) {
  const [bolt, clamped] = [`delta_${index}`, `delta_k${index}`];
  return quantity({
    id: `${prefix}PreloadByAngle`,
    name: `Preload of a ${word} by torque and angle`,
    symbol: `F_a${index}`,
    unit: "kN",
    decimals: 1,
    system,
    meaning: `Preload of a ${word} that is turned on by an angle from a snug torque. Friction counts for the snug torque alone, so it scatters less than by torque. Far from the preload by torque, one of the two was misread.`,
    inputs: {
      T_sn: `${part}.snugTorque`,
      phi_a: `${part}.turnAngle`,
      P: `${part}.threadPitch`,
      d: `${part}.threadDiameter`,
      mu_t: `${part}.threadFriction`,
      mu_h: `${part}.headFriction`,
      D_k: `${part}.headFrictionDiameter`,
      [bolt]: `${prefix}Compliance`,
      [clamped]: `${prefix}ClampedCompliance`,
    } as Paths,
    formula: `T_sn / (P / (2 * pi) + mu_t * (d - 3 * sqrt(3) / 8 * P) / (2 * cos(pi / 6)) + mu_h * D_k / 2) + phi_a * P / (2 * pi * (${bolt} + ${clamped}))`,
    compute: (n: Numbers) =>
      preloadFromAngle({
        snugPreload: preloadFromTorque({
          torque: n.T_sn!,
          pitch: n.P!,
          pitchDiameter: threadGeometry({ majorDiameter: n.d!, pitch: n.P! }).pitchDiameter,
          threadFriction: n.mu_t!,
          headFriction: n.mu_h!,
          headFrictionDiameter: n.D_k!,
        }),
        angle: n.phi_a!,
        boltCompliance: n[bolt]!,
        clampedCompliance: n[clamped]!,
        pitch: n.P!,
      }),
    shape: "guarded",
    valid: "below yield: a fastener turned into yield holds what its strength gives, not this",
    sources: [{ id: "vdi-2230" }],
    examples: [
      {
        given: {
          T_sn: "30 N m",
          phi_a: "90 deg",
          P: "1.25 mm",
          d: "11 mm",
          mu_t: "0.11",
          mu_h: "0.11",
          D_k: "15.5 mm",
          [bolt]: "0.0093 mm/kN",
          [clamped]: "0.0029 mm/kN",
        },
        expect: "43.3 kN",
      },
    ],
    display: true,
  });
}
