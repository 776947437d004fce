import { dimension } from "../../fields.ts";

/** The pushrod as a column. */
export const pushrodFields = {
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
    tolerance: "10 %",
    help: "Yield strength of the tube.",
    assumed: { value: "700 MPa ± 200", because: "alloy steel tube has about 500 to 900 MPa (from memory)" },
  }),
  forceFactor: dimension({
    label: "Dynamic force factor",
    symbol: "k_y",
    unit: "1",
    range: ["1", "5"],
    tolerance: "15 %",
    help: "Greatest force in the valve drive at speed over the force of the open spring.",
    assumed: {
      value: "2 ± 0.5",
      because: "inertia about doubles the force at high speed (from memory)",
    },
  }),
};
