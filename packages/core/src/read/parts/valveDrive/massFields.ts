import { dimension } from "../../fields.ts";

const noPushrod = { value: "0 g ± 0", because: "this drive has no pushrod" };

/** Masses that move with the valve. */
export const massFields = {
  retainerMass: dimension({
    label: "Retainer and keeper mass",
    symbol: "m_ret",
    unit: "g",
    range: ["2 g", "120 g"],
    tolerance: "3 %",
    help: "Spring retainer with its keepers, weighed together.",
  }),
  rockerMass: dimension({
    label: "Rocker mass at the valve",
    symbol: "m_ra",
    unit: "g",
    range: ["0 g", "200 g"],
    tolerance: "10 %",
    help: "Moment of inertia of the rocker or finger about its pivot over the square of the arm on the valve’s side.",
    assumed: {
      byChoice: "valveDrive.kind",
      values: { bucket: { value: "0 g ± 0", because: "this drive has no rocker" } },
    },
  }),
  followerMass: dimension({
    label: "Follower mass",
    symbol: "m_fo",
    unit: "g",
    range: ["0 g", "400 g"],
    tolerance: "3 %",
    help: "Mass of the part that rides on the lobe, where it is not the rocker itself.",
    assumed: {
      byChoice: "valveDrive.kind",
      values: {
        finger: { value: "0 g ± 0", because: "the finger itself rides on the lobe" },
        rocker: { value: "0 g ± 0", because: "the rocker itself rides on the lobe" },
      },
    },
  }),
  pushrodMass: dimension({
    label: "Pushrod mass",
    symbol: "m_pr",
    unit: "g",
    range: ["0 g", "300 g"],
    tolerance: "3 %",
    help: "Mass of one pushrod.",
    assumed: {
      byChoice: "valveDrive.kind",
      values: { bucket: noPushrod, finger: noPushrod, rocker: noPushrod },
    },
  }),
};
