import { valveToValve as clearanceOf } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";
import { liftCurve, liftExamples, liftInputs, liftRoutes, liftTables } from "../../valves/valveSide.ts";

export const valveToValve = quantity({
  id: "valveToValve",
  name: "Inlet to exhaust valve",
  symbol: "c_vv",
  unit: "mm",
  decimals: 2,
  system: "valve-train",
  meaning:
    "Least distance between the heads of an inlet and an exhaust valve over the whole cycle; negative when they clash.",
  inputs: {
    ...liftInputs("inlet"),
    ...liftInputs("exhaust"),
    x_i: "inletValve.centreDistance",
    x_e: "exhaustValve.centreDistance",
    z_i: "inletValve.recess",
    z_e: "exhaustValve.recess",
    tau_i: "inletValve.tilt",
    tau_e: "exhaustValve.tilt",
    d_i: "inletValve.headDiameter",
    d_e: "exhaustValve.headDiameter",
  } as Readonly<Record<string, string>>,
  tables: { ...liftTables("inlet"), ...liftTables("exhaust") },
  routes: liftRoutes("inlet", "exhaust"),
  method:
    "Both heads are taken as lines in the plane of the stems and moved along them with their lifts; the least distance over the cycle is taken.",
  compute: (n, _words, tables) =>
    clearanceOf({
      inlet: {
        across: n.x_i!,
        height: n.z_i!,
        tilt: n.tau_i!,
        radius: n.d_i! / 2,
        curve: liftCurve("inlet", n, tables),
      },
      exhaust: {
        across: -n.x_e!,
        height: n.z_e!,
        tilt: n.tau_e!,
        radius: n.d_e! / 2,
        curve: liftCurve("exhaust", n, tables),
      },
    }).clearance,
  shape: "guarded",
  valid:
    "stems of both valves in one plane through the cylinder axis; stem clearance, rock and the margins of the heads take 0.2 to 0.4 mm each (common practice)",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        ...liftExamples.inlet,
        ...liftExamples.exhaust,
        x_i: "19 mm",
        x_e: "19.5 mm",
        z_i: "1.6 mm",
        z_e: "1.6 mm",
        tau_i: "12 deg",
        tau_e: "13 deg",
        d_i: "35 mm",
        d_e: "30 mm",
      },
      expect: "5.88 mm",
    },
  ],
});
