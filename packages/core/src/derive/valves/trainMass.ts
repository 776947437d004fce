import { valveEquivalentMass } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import { type Side, sides } from "./valveSide.ts";

/** Everything that moves with a valve, at the valve. */
export function trainMass(side: Side) {
  const { word, index, part } = sides[side];
  const valve = `m_v${index}`;
  return quantity({
    id: `${side}ValveTrainMass`,
    name: `Valve train mass at the ${side} valve`,
    symbol: `m_e${index}`,
    unit: "g",
    decimals: 0,
    system: "valve-train",
    meaning: `Everything that moves with one ${word.toLowerCase()} valve, brought to the valve: a third of the spring counts, and what is beyond the rocker counts by the square of its ratio.`,
    inputs: {
      [valve]: `${part}.mass`,
      m_ret: "valveDrive.retainerMass",
      m_s: "valveSpring.mass",
      m_ra: "valveDrive.rockerMass",
      m_fo: "valveDrive.followerMass",
      m_pr: "valveDrive.pushrodMass",
      R_r: "valveDrive.rockerRatio",
    } as Readonly<Record<string, string>>,
    formula: `${valve} + m_ret + m_s / 3 + m_ra + (m_fo + m_pr) / R_r^2`,
    compute: (n) =>
      valveEquivalentMass({
        valve: n[valve]!,
        retainer: n.m_ret!,
        spring: n.m_s!,
        rockerAtValve: n.m_ra!,
        follower: n.m_fo!,
        pushrod: n.m_pr!,
        rockerRatio: n.R_r!,
      }),
    shape: "monotone",
    valid: "a stiff train; the same spring, retainer, rocker, pushrod and follower for inlet and exhaust",
    sources: [{ id: "taylor" }],
    examples: [
      {
        given: {
          [valve]: "104 g",
          m_ret: "28 g",
          m_s: "165 g",
          m_ra: "22 g",
          m_fo: "115 g",
          m_pr: "85 g",
          R_r: "1.6",
        },
        expect: "287 g",
      },
    ],
    display: true,
  });
}
