import { valveEquivalentMass } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";

export const valveTrainMass = quantity({
  id: "valveTrainMass",
  name: "Valve train mass at the inlet valve",
  symbol: "m_eq",
  unit: "g",
  decimals: 0,
  system: "valve-train",
  meaning:
    "Everything that moves with the inlet valve, brought to the valve: a third of the spring counts, and what is beyond the rocker counts by the square of its ratio.",
  inputs: {
    m_vi: "inletValve.mass",
    m_ret: "valveDrive.retainerMass",
    m_s: "valveSpring.mass",
    m_ra: "valveDrive.rockerMass",
    m_fo: "valveDrive.followerMass",
    m_pr: "valveDrive.pushrodMass",
    R_r: "valveDrive.rockerRatio",
  },
  formula: "m_vi + m_ret + m_s / 3 + m_ra + (m_fo + m_pr) / R_r^2",
  compute: ({ m_vi, m_ret, m_s, m_ra, m_fo, m_pr, R_r }) =>
    valveEquivalentMass({
      valve: m_vi,
      retainer: m_ret,
      spring: m_s,
      rockerAtValve: m_ra,
      follower: m_fo,
      pushrod: m_pr,
      rockerRatio: R_r,
    }),
  shape: "monotone",
  valid: "a stiff train; the inlet valve as the heavier one",
  sources: [{ id: "taylor" }],
  examples: [
    {
      given: {
        m_vi: "104 g",
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
});
