import { rodToLobes as nearestTo } from "@trialfit/mechanics";
import { ABOUT_THE_CRANKSHAFT } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";
import { rodOutline, rodSweepExample } from "../../rodSweep.ts";
import { liftCurve, liftExamples, liftInputs, liftRoutes, liftTables } from "../../valves/valveSide.ts";

/** The rod of the examples. */
const { r, l, e, outline: listed } = rodSweepExample;

export const rodToLobes = quantity({
  id: "rodToLobes",
  name: "Rod to lobes as they turn",
  symbol: "c_rl",
  unit: "mm",
  decimals: 2,
  system: "clearances",
  meaning:
    "Least distance between the connecting rod and the lobes of a camshaft in the block, both where they truly stand at each crank angle. It is asked when the circle of the highest lobe leaves too little: a lobe may point elsewhere when the rod passes.",
  inputs: {
    r: "throwRadius",
    l: "connectingRod.length",
    e: "pinLineOffset",
    t_o: "connectingRod.outlineTolerance",
    x_cs: "block.camshaftAcross",
    y_cs: "block.camshaftHeight",
    gamma: "block.bankAngle",
    psi_lb: "block.lifterBoreLean",
    R_bc: "camshaft.baseCircleRadius",
    R_r: "valveDrive.rockerRatio",
    s_i: "inletValve.lash",
    s_e: "exhaustValve.lash",
    ...liftInputs("inlet"),
    ...liftInputs("exhaust"),
  } as Readonly<Record<string, string>>,
  choices: { rotation: "camshaft.rotation" },
  tables: {
    outline: "connectingRod.bigEndOutline",
    ...liftTables("inlet"),
    ...liftTables("exhaust"),
  } as Readonly<Record<string, string>>,
  routes: liftRoutes("inlet", "exhaust"),
  method:
    "Each lobe reaches out as far as its lift, valve lift and lash over the rocker ratio, when that part passes the lifter; the camshaft turns at half the speed of the crankshaft. The rods of both banks are swept over two turns against the lobes of both cylinders on the crankpin.",
  compute: (n, { rotation }, tables) => {
    const curves = { i: liftCurve("inlet", n, tables), e: liftCurve("exhaust", n, tables) };
    const lobeLift = (index: "i" | "e", angle: number) =>
      (curves[index].at(angle).lift + n[`s_${index}`]!) / n.R_r!;
    const { clearance } = nearestTo({
      crank: { throwRadius: n.r!, rodLength: n.l!, pinLineOffset: n.e! },
      outline: rodOutline(tables.outline!),
      across: n.x_cs!,
      height: n.y_cs!,
      bankAngle: n.gamma!,
      baseRadius: n.R_bc!,
      liftAt: (angle) => Math.max(lobeLift("i", angle), lobeLift("e", angle)),
      followerLean: n.psi_lb!,
      sense: rotation === "against-crankshaft" ? -1 : 1,
    });
    return clearance - n.t_o!;
  },
  shape: "guarded",
  hot: ABOUT_THE_CRANKSHAFT,
  nominalOnly: true,
  display: true,
  valid:
    "stiff parts, flat or roller lifters in line with the camshaft axis; on the safe side by the lash, which is added all round, and by taking every lobe to lie in the plane of the rod",
  sources: [{ id: "plane-geometry" }],
  examples: [
    {
      given: {
        r,
        l,
        e,
        outline: listed,
        t_o: "0 mm",
        x_cs: "0 mm",
        y_cs: "125 mm",
        gamma: "90 deg",
        psi_lb: "0 deg",
        R_bc: "15 mm",
        R_r: "1.6",
        s_i: "0.4 mm",
        s_e: "0.4 mm",
        ...liftExamples.inlet,
        ...liftExamples.exhaust,
        rotation: "as-crankshaft",
      },
      expect: "19.80 mm",
    },
  ],
});
