import { tighteningMethods } from "../../tables/tighteningMethods.ts";
import { choice, dimension } from "../fields.ts";
import { valuesOf, wordsOf } from "./eachOf.ts";

const friction = (label: string, symbol: string, where: string) =>
  dimension({
    label,
    symbol,
    unit: "1",
    range: ["0.03", "0.5"],
    tolerance: "0.03",
    help: `Friction coefficient ${where} for the lubricant used.`,
  });

/**
 * How a fastener is tightened.
 * @param key of the part in the build file
 * @param where word of the fastener: main, head
 */
export const tighteningFields = (key: string, where: string) => ({
  headFrictionDiameter: dimension({
    label: "Friction diameter under the head",
    symbol: "D_k",
    unit: "mm",
    range: ["5 mm", "60 mm"],
    tolerance: "0.2",
    help: "Mean diameter of the face on which nut or head turns: (outer + hole)/2.",
  }),
  threadFriction: friction("Thread friction", "mu_t", "in the thread"),
  headFriction: friction("Friction under the head", "mu_h", "under nut or head"),
  torque: dimension({
    label: "Final torque",
    symbol: "T_f",
    unit: "N m",
    range: ["2 N m", "800 N m"],
    tolerance: "4 %",
    help: `Final tightening torque of one ${where} fastener, with the lubricant of its sheet.`,
  }),
  snugTorque: dimension({
    label: "Snug torque",
    symbol: "T_sn",
    unit: "N m",
    range: ["1 N m", "400 N m"],
    tolerance: "4 %",
    help: "Torque from which the angle is turned, where the sheet asks for torque and angle.",
  }),
  turnAngle: dimension({
    label: "Angle turned after the snug torque",
    symbol: "phi_a",
    unit: "deg",
    range: ["5 deg", "400 deg"],
    tolerance: "3",
    help: "Angle through which nut or head is turned on from the snug torque, all steps together.",
  }),
  tightening: choice({
    label: "Tightening method",
    help: "How the final preload is set.",
    options: wordsOf(tighteningMethods, ({ name }) => name),
  }),
  tighteningFactor: dimension({
    label: "Tightening factor",
    symbol: "alpha_A",
    unit: "1",
    range: ["1", "4"],
    tolerance: "5 %",
    help: "Greatest over least preload that the method of tightening gives from fastener to fastener.",
    assumed: {
      byChoice: `${key}.tightening`,
      values: valuesOf(
        tighteningMethods,
        ({ factor }) => factor,
        ({ because }) => because,
      ),
    },
  }),
});
