import { flatFollowerContactTravel, flatFollowerEdgeRoom } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import {
  liftCurve,
  liftExamples,
  liftInputs,
  liftRoutes,
  liftTables,
  type Side,
  sides,
} from "./valveSide.ts";

/**
 * What a flat follower has left beyond the farthest contact of its lobe.
 * @param expected edge room of the example lobe of this side on a follower of 33 mm, as text
 */
export function followerEdgeRoom(side: Side, expected: string) {
  const { word, index } = sides[side];
  return quantity({
    id: `${side}FollowerEdgeRoom`,
    name: `${word} follower edge room`,
    symbol: `c_ff${index}`,
    unit: "mm",
    decimals: 2,
    system: "valve-train",
    meaning: `What is left between the farthest point that the ${side} lobe touches on a flat follower and the follower’s edge; negative when the lobe digs in at the edge.`,
    inputs: {
      ...liftInputs(side),
      R_r: "valveDrive.rockerRatio",
      D_fo: "valveDrive.followerDiameter",
    } as Readonly<Record<string, string>>,
    tables: liftTables(side),
    routes: liftRoutes(side),
    method:
      "Half the follower less the greatest lift per radian of the camshaft, which is how far the contact wanders.",
    compute: (n, _words, tables) =>
      flatFollowerEdgeRoom({
        followerDiameter: n.D_fo!,
        contactTravel: flatFollowerContactTravel({ curve: liftCurve(side, n, tables), rockerRatio: n.R_r! })
          .travel,
      }),
    shape: "guarded",
    valid: "flat or nearly flat followers over the middle of their lobe",
    sources: [{ id: "plane-geometry" }],
    examples: [{ given: { ...liftExamples[side], R_r: "1", D_fo: "33 mm" }, expect: expected }],
  });
}
