import { dimension } from "../../fields.ts";

/** The rocker: its ratio and where it stands. */
export const rockerFields = {
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
};
