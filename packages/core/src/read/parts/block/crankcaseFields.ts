import { choice, dimension } from "../../fields.ts";

/** What the crank drive must pass, and where banks, camshaft and lifters stand. */
export const crankcaseFields = {
  bankStagger: dimension({
    label: "Bank stagger",
    symbol: "s_bk",
    unit: "mm",
    range: ["0 mm", "120 mm"],
    tolerance: "0.1",
    help: "Distance along the crankshaft between the axes of the two cylinders that share a crankpin; engines with two banks only.",
  }),
  panRailHalfWidth: dimension({
    label: "Pan rail, across",
    symbol: "x_pr",
    unit: "mm",
    range: ["30 mm", "400 mm"],
    tolerance: "0.5",
    help: "From the crankshaft axis across to the inner edge of the oil pan rail, on the nearer side.",
  }),
  panRailHeight: dimension({
    label: "Pan rail height",
    symbol: "y_pr",
    unit: "mm",
    range: ["-300 mm", "150 mm"],
    tolerance: "0.2",
    signs: { "below crank axis": -1, "above crank axis": 1 },
    help: "From the crankshaft axis to the face of the pan rail that carries the oil pan.",
  }),
  windageRoom: dimension({
    label: "Room to tray and pickup",
    symbol: "c_wr",
    unit: "mm",
    range: ["-20 mm", "100 mm"],
    tolerance: "0.2",
    help: "Least distance of rods and counterweights to windage tray, pickup and dipstick, measured at trial assembly with the oil pan fitted. A scraper, which is meant to stand closer, is left out.",
  }),
  squirters: choice({
    label: "Oil squirters",
    help: "Whether jets under the pistons spray oil at them.",
    options: {
      fitted: "fitted",
      none: "none",
    },
  }),
  squirterAcross: dimension({
    label: "Oil squirter, across",
    symbol: "x_sq",
    unit: "mm",
    range: ["-200 mm", "200 mm"],
    tolerance: "0.5",
    signs: { "towards thrust side": -1, "away from thrust side": 1 },
    help: "From the crankshaft axis across to the middle of the oil squirter’s nozzle, where the rod passes it.",
  }),
  squirterHeight: dimension({
    label: "Oil squirter height",
    symbol: "y_sq",
    unit: "mm",
    range: ["0 mm", "300 mm"],
    tolerance: "0.5",
    help: "From the crankshaft axis, along the cylinder, up to the middle of the oil squirter’s nozzle.",
  }),
  squirterRadius: dimension({
    label: "Oil squirter radius",
    symbol: "r_sq",
    unit: "mm",
    range: ["0 mm", "20 mm"],
    tolerance: "0.2",
    help: "Half the thickness of the squirter’s nozzle, or of its holder where that is nearer.",
    assumed: {
      value: "3 mm ± 1",
      because: "squirter nozzles are some 4 to 8 mm thick (common practice)",
    },
  }),
  camshaftAcross: dimension({
    label: "Camshaft axis, across",
    symbol: "x_cs",
    unit: "mm",
    range: ["-250 mm", "250 mm"],
    tolerance: "0.1",
    signs: { "towards thrust side": -1, "away from thrust side": 1 },
    help: "From the middle plane of the block across to the axis of a camshaft in the block.",
    assumed: {
      byChoice: "block.layout",
      values: {
        vee: {
          value: "0 mm ± 0.05",
          because: "the camshaft in a V stands over the crankshaft axis (common practice)",
        },
      },
    },
  }),
  camshaftHeight: dimension({
    label: "Camshaft axis height",
    symbol: "y_cs",
    unit: "mm",
    range: ["20 mm", "400 mm"],
    tolerance: "0.1",
    help: "From the crankshaft axis, along the middle plane of the block, up to the axis of a camshaft in the block. Leave it out for overhead camshafts.",
  }),
  lifterBoreLean: dimension({
    label: "Lean of the lifter bores",
    symbol: "psi_lb",
    unit: "deg",
    range: ["-60 deg", "60 deg"],
    tolerance: "1",
    help: "Angle of the lifter bores against the cylinders of their bank: positive when they lean further from the middle plane than these, in a single row when they lean away from the thrust side.",
    assumed: {
      value: "0 deg ± 6",
      because: "lifter bores run within some degrees of the cylinders (common practice)",
    },
  }),
};
