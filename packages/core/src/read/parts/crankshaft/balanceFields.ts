import { dimension } from "../../fields.ts";

/** Mass, webs and balance. */
export const balanceFields = {
  mass: dimension({
    label: "Crankshaft mass",
    symbol: "m_c",
    unit: "kg",
    range: ["0.5 kg", "300 kg"],
    tolerance: "2 %",
    help: "Mass of the bare crankshaft.",
  }),
  inertia: dimension({
    label: "Crankshaft inertia",
    symbol: "J_c",
    unit: "kg m2",
    range: ["0.0002 kg m2", "20 kg m2"],
    tolerance: "5 %",
    help: "Moment of inertia of the bare crankshaft about its axis, from its maker or from a pendulum test.",
  }),
  mainJournalLength: dimension({
    label: "Main journal length",
    symbol: "L_m",
    unit: "mm",
    range: ["8 mm", "150 mm"],
    tolerance: "0.1",
    help: "Between the cheeks, at a bearing that does not hold the crankshaft endways.",
  }),
  webThickness: dimension({
    label: "Web thickness",
    symbol: "h_w",
    unit: "mm",
    range: ["4 mm", "80 mm"],
    tolerance: "0.5",
    help: "Thickness of a web along the crankshaft.",
  }),
  webWidth: dimension({
    label: "Web width",
    symbol: "w_w",
    unit: "mm",
    range: ["15 mm", "300 mm"],
    tolerance: "1",
    help: "Width of a web across the line from main journal to crankpin.",
  }),
  designBobweight: dimension({
    label: "Bobweight of the balance",
    symbol: "m_bd",
    unit: "g",
    range: ["50 g", "20000 g"],
    tolerance: "2",
    help: "Bobweight on each crankpin with which the crankshaft was balanced.",
  }),
  balanceFactor: dimension({
    label: "Balance factor",
    symbol: "f_b",
    unit: "%",
    range: ["0 %", "100 %"],
    help: "Share of the reciprocating mass that the counterweights take: 50 % for a V of 90°, 0 for a row of four, six or eight, a matter of choice for a single.",
  }),
  balanceGrade: dimension({
    label: "Balance grade",
    symbol: "G",
    unit: "mm/s",
    range: ["0.4 mm/s", "100 mm/s"],
    help: "Grade to which the crankshaft is balanced: permissible offset of its mass by angular speed.",
    assumed: {
      value: "6.3 mm/s ± 0",
      because:
        "G 6.3 is asked of fine machine parts and is what shops reach with ease (common practice); the standard allows drives of cars far more",
    },
  }),
  massRemoved: dimension({
    label: "Mass taken off",
    symbol: "m_off",
    unit: "g",
    range: ["0 g", "20000 g"],
    tolerance: "3 %",
    help: "Mass that machining takes off crankshaft or flywheel.",
  }),
  removalRadius: dimension({
    label: "Radius at which it is taken off",
    symbol: "R_off",
    unit: "mm",
    range: ["0 mm", "300 mm"],
    tolerance: "3 %",
    help: "Mean radius of the place where the mass comes off.",
  }),
};
