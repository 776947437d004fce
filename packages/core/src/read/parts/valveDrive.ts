import { choice, dimension } from "../fields.ts";
import { part } from "../part.ts";

const noPushrod = { value: "0 g ± 0", because: "this drive has no pushrod" };

/** What moves the valves: follower, pushrod, rocker. */
export const valveDrive = part(
  {
    key: "valveDrive",
    id: "valve-drive",
    label: "Valve drive",
    help: "What stands between camshaft and valve.",
  },
  {
    kind: choice({
      label: "Kind",
      help: "How the lobe moves the valve.",
      options: {
        pushrod: "camshaft in the block, pushrods and rockers",
        rocker: "overhead camshaft with rockers",
        finger: "overhead camshaft with finger followers",
        bucket: "overhead camshaft straight on bucket followers",
      },
    }),
    followerFace: choice({
      label: "Follower face",
      help: "What of the follower touches the lobe.",
      options: {
        flat: "a flat or nearly flat face that slides on the lobe",
        roller: "a roller",
        curved: "a curved pad that slides on the lobe, as on many fingers",
      },
      assumed: {
        byChoice: "valveDrive.kind",
        values: { bucket: { value: "flat", because: "a bucket slides on the lobe with its flat top" } },
      },
    }),
    rockerRatio: dimension({
      label: "Rocker ratio",
      symbol: "R_r",
      unit: "1",
      range: ["0.8", "2.5"],
      tolerance: "0.02",
      help: "Valve lift over lobe lift, as measured at full lift; 1 for buckets.",
      assumed: {
        byChoice: "valveDrive.kind",
        values: {
          bucket: { value: "1 ± 0", because: "a bucket lifts the valve as much as the lobe lifts it" },
        },
      },
    }),
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
    pushrodDiameter: dimension({
      label: "Pushrod outer diameter",
      symbol: "d_pr",
      unit: "mm",
      range: ["4 mm", "20 mm"],
      tolerance: "0.05",
      help: "Outer diameter of the pushrod at its middle.",
    }),
    pushrodWall: dimension({
      label: "Pushrod wall",
      symbol: "t_pr",
      unit: "mm",
      range: ["0.5 mm", "6 mm"],
      tolerance: "0.1",
      help: "Wall thickness of the tube.",
    }),
    pushrodLength: dimension({
      label: "Pushrod length",
      symbol: "l_pr",
      unit: "mm",
      range: ["50 mm", "500 mm"],
      tolerance: "0.3",
      help: "Between the middles of its two ball ends.",
    }),
    pushrodYield: dimension({
      label: "Pushrod yield strength",
      symbol: "R_pr",
      unit: "MPa",
      range: ["200 MPa", "2000 MPa"],
      help: "Yield strength of the tube.",
      assumed: { value: "700 MPa ± 200", because: "alloy steel tube has about 500 to 900 MPa (from memory)" },
    }),
    forceFactor: dimension({
      label: "Dynamic force factor",
      symbol: "k_y",
      unit: "1",
      range: ["1", "5"],
      help: "Greatest force in the valve drive at speed over the force of the open spring.",
      assumed: {
        value: "2 ± 0.5",
        because: "inertia about doubles the force at high speed (from memory)",
      },
    }),
    followerDiameter: dimension({
      label: "Follower face diameter",
      symbol: "D_fo",
      unit: "mm",
      range: ["8 mm", "60 mm"],
      tolerance: "0.05",
      help: "Diameter of the flat face on which the lobe rubs.",
    }),
    rollerRadius: dimension({
      label: "Roller radius",
      symbol: "R_ro",
      unit: "mm",
      range: ["3 mm", "40 mm"],
      tolerance: "0.1",
      help: "Radius of the roller that rides on the lobe.",
    }),
    rockerArm: dimension({
      label: "Rocker arm at the valve",
      symbol: "a_v",
      unit: "mm",
      range: ["10 mm", "90 mm"],
      tolerance: "0.3",
      help: "From the rocker’s pivot to its contact on the valve tip.",
    }),
    midLiftError: dimension({
      label: "Rocker level error",
      symbol: "theta_r",
      unit: "deg",
      range: ["-20 deg", "20 deg"],
      tolerance: "1",
      help: "Angle at half lift between the rocker arm and the square to the valve stem: zero where the arm is level at half lift.",
      assumed: {
        value: "0 deg ± 3",
        because: "pushrod or pad length is chosen so that the arm is level at half lift (common practice)",
      },
    }),
    pivotAboveDeck: dimension({
      label: "Rocker pivot above the deck",
      symbol: "H_r",
      unit: "mm",
      range: ["20 mm", "250 mm"],
      tolerance: "2",
      help: "Height of head metal between the deck and the rocker’s pivot; the rest of the pushrod’s length lies beside the block.",
    }),
  },
);
