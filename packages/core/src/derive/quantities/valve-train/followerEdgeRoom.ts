import { flatFollowerContactTravel, flatFollowerEdgeRoom } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";
import { liftCurve, liftExamples, liftInputs, liftRoutes, liftTables } from "../../valves/valveSide.ts";

export const followerEdgeRoom = quantity({
  id: "followerEdgeRoom",
  name: "Follower edge room",
  symbol: "c_ff",
  unit: "mm",
  decimals: 2,
  system: "valve-train",
  meaning:
    "What is left between the farthest point that the inlet lobe touches on a flat follower and the follower’s edge; negative when the lobe digs in at the edge.",
  inputs: {
    ...liftInputs("inlet"),
    R_r: "valveDrive.rockerRatio",
    D_fo: "valveDrive.followerDiameter",
  } as Readonly<Record<string, string>>,
  tables: liftTables("inlet"),
  routes: liftRoutes("inlet"),
  method:
    "Half the follower less the greatest lift per radian of the camshaft, which is how far the contact wanders.",
  compute: (n, _words, tables) =>
    flatFollowerEdgeRoom({
      followerDiameter: n.D_fo!,
      contactTravel: flatFollowerContactTravel({ curve: liftCurve("inlet", n, tables), rockerRatio: n.R_r! })
        .travel,
    }),
  shape: "guarded",
  valid: "flat or nearly flat followers over the middle of their lobe",
  sources: [{ id: "plane-geometry" }],
  examples: [{ given: { ...liftExamples.inlet, R_r: "1", D_fo: "33 mm" }, expect: "3.77 mm" }],
});
