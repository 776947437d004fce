import { dimension } from "../../fields.ts";

const centre = (symbol: string, label: string, help: string) =>
  dimension({ label, symbol, unit: "deg", range: ["60 deg", "150 deg"], tolerance: "1", help });

const duration = (symbol: string, label: string, help: string) =>
  dimension({ label, symbol, unit: "deg", range: ["100 deg", "400 deg"], tolerance: "2", help });

const checkingLift = (symbol: string, label: string, help: string) =>
  dimension({
    label,
    symbol,
    unit: "mm",
    range: ["0.02 mm", "6 mm"],
    exact: "says at which lift durations are counted; it is not a size of a part",
    help,
  });

/** When the valves open and shut. */
export const timingFields = {
  inletClosing: dimension({
    label: "Inlet closing",
    symbol: "theta_ic",
    unit: "deg",
    range: ["0 deg", "130 deg"],
    tolerance: "2",
    help: "Crank angle after bottom dead centre at which the closing inlet valve is down to 0.20 mm of lift, lash set; not the angle at 1.27 mm.",
  }),
  inletCentre: centre(
    "theta_ci",
    "Inlet centre line",
    "Crank angle after top dead centre at which the inlet valve has its greatest lift, as timed.",
  ),
  inletCentreCard: dimension({
    label: "Inlet centre line of the card",
    symbol: "theta_cc",
    unit: "deg",
    range: ["60 deg", "150 deg"],
    exact: "a number of the sheet that says which part it was, not a size of the part in hand",
    help: "Inlet centre line at which the camshaft’s maker, or whoever planned the engine, wants it timed: crank angle after top dead centre.",
  }),
  exhaustCentre: centre(
    "theta_ce",
    "Exhaust centre line",
    "Crank angle before top dead centre at which the exhaust valve has its greatest lift, as timed.",
  ),
  checkingLift: checkingLift(
    "l_1",
    "Checking lift of the durations",
    "Lift at the valve between which the durations are counted; stated on the camshaft’s card.",
  ),
  inletDuration: duration(
    "D_i",
    "Inlet duration",
    "Crank angle for which the inlet valve is above the checking lift.",
  ),
  exhaustDuration: duration(
    "D_e",
    "Exhaust duration",
    "Crank angle for which the exhaust valve is above the checking lift.",
  ),
  upperCheckingLift: checkingLift(
    "l_2",
    "Upper checking lift",
    "A second, higher lift at the valve at which durations are stated too.",
  ),
  inletUpperDuration: duration(
    "D_i2",
    "Inlet duration at the upper checking lift",
    "Crank angle for which the inlet valve is above the upper checking lift.",
  ),
  exhaustUpperDuration: duration(
    "D_e2",
    "Exhaust duration at the upper checking lift",
    "Crank angle for which the exhaust valve is above the upper checking lift.",
  ),
};
