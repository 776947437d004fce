import { valveToValve as clearanceOf } from "@trialfit/mechanics";
import { quantity, type Route } from "../../Quantity.ts";
import { alongInputs, alongOf, alongRoutes } from "../../valves/valveAlong.ts";
import { liftCurve, liftExamples, liftInputs, liftRoutes, liftTables } from "../../valves/valveSide.ts";

/** Both ways to the lifts, each with both ways to where the valves stand along the crankshaft. */
const routes = liftRoutes("inlet", "exhaust").flatMap((lift) =>
  alongRoutes("inlet", "exhaust").map((along): Route => {
    const assumes = [lift.assumes, along.assumes].filter((text) => text !== undefined).join("; ");
    return { needs: [...lift.needs, ...along.needs], ...(assumes === "" ? {} : { assumes }) };
  }),
) as unknown as readonly [Route, Route, ...Route[]];

const example = {
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
};

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
    ...alongInputs("inlet", "exhaust"),
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
  routes,
  method:
    "Both heads are taken as thin discs and moved along their stems with their lifts; the least distance over the cycle is taken. Of pairs the inlet and the exhaust valve on the same side count.",
  compute: (n, _words, tables) => {
    const [inlet, exhaust] = [alongOf("inlet", n), alongOf("exhaust", n)];
    // Of a pair one stands on either side: the two on the same side are nearest.
    const paired = n.n_vi! > 1 || n.n_ve! > 1;
    return clearanceOf({
      inlet: {
        across: n.x_i!,
        along: paired ? Math.abs(inlet) : inlet,
        height: n.z_i!,
        tilt: n.tau_i!,
        radius: n.d_i! / 2,
        curve: liftCurve("inlet", n, tables),
      },
      exhaust: {
        across: -n.x_e!,
        along: paired ? Math.abs(exhaust) : exhaust,
        height: n.z_e!,
        tilt: n.tau_e!,
        radius: n.d_e! / 2,
        curve: liftCurve("exhaust", n, tables),
      },
    }).clearance;
  },
  shape: "guarded",
  hot: { quantity: "valveToValveHot" },
  valid:
    "stems of both valves square to the crankshaft; of three valves the middle one not looked at; stem clearance, rock and the margins of the heads take 0.2 to 0.4 mm each (common practice)",
  sources: [{ id: "plane-geometry" }],
  examples: [
    { given: { ...example, n_vi: "1", n_ve: "1" }, expect: "5.88 mm" },
    { given: { ...example, n_vi: "2", n_ve: "2", y_i: "18 mm", y_e: "18 mm" }, expect: "5.88 mm" },
    { given: { ...example, n_vi: "1", n_ve: "1", y_i: "15 mm", y_e: "-15 mm" }, expect: "16.09 mm" },
  ],
});
