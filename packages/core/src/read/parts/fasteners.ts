import { choice, count, dimension } from "../fields.ts";
import { part } from "../part.ts";

/** What any screwed joint of the bottom end or head needs to know of one fastener. */
function fastenerFields(where: string) {
  return {
    threadDiameter: dimension({
      label: "Thread diameter",
      symbol: "d",
      unit: "mm",
      range: ["4 mm", "30 mm"],
      help: "Major (nominal) diameter of the thread.",
    }),
    threadPitch: dimension({
      label: "Thread pitch",
      symbol: "P",
      unit: "mm",
      range: ["0.4 mm", "4 mm"],
      help: "Distance from thread to thread; for an inch thread, 1 in divided by the threads per inch: 1/20 in.",
    }),
    shankArea: dimension({
      label: "Shank section",
      symbol: "A_sh",
      unit: "mm2",
      range: ["8 mm2", "800 mm2"],
      tolerance: "2 %",
      help: "Smallest section outside the thread.",
    }),
    headFrictionDiameter: dimension({
      label: "Friction diameter under the head",
      symbol: "D_k",
      unit: "mm",
      range: ["5 mm", "60 mm"],
      tolerance: "0.2",
      help: "Mean diameter of the face on which nut or head turns: (outer + hole)/2.",
    }),
    threadFriction: dimension({
      label: "Thread friction",
      symbol: "mu_t",
      unit: "1",
      range: ["0.03", "0.5"],
      tolerance: "0.03",
      help: "Friction coefficient in the thread for the lubricant used.",
    }),
    headFriction: dimension({
      label: "Friction under the head",
      symbol: "mu_h",
      unit: "1",
      range: ["0.03", "0.5"],
      tolerance: "0.03",
      help: "Friction coefficient under nut or head for the lubricant used.",
    }),
    torque: dimension({
      label: "Final torque",
      symbol: "T_f",
      unit: "N m",
      range: ["2 N m", "800 N m"],
      tolerance: "4 %",
      help: `Final tightening torque of one ${where} fastener, with the lubricant of its sheet.`,
    }),
    yieldStrength: dimension({
      label: "Yield strength",
      symbol: "R_p",
      unit: "MPa",
      range: ["200 MPa", "2500 MPa"],
      help: "Yield strength or 0.2 % proof strength from the maker's sheet or the property class.",
    }),
    engagement: dimension({
      label: "Thread engagement",
      symbol: "m_e",
      unit: "mm",
      range: ["2 mm", "120 mm"],
      tolerance: "0.5",
      help: "Length of thread engaged in the block: turns counted × pitch.",
    }),
  };
}

/** Studs or bolts of the main caps. */
export const mainFastener = part(
  {
    key: "mainFastener",
    id: "main-fastener",
    label: "Main fasteners",
    help: "Studs or bolts of the main caps.",
  },
  {
    size: choice({
      label: "Stud size",
      help: "Against the engine's own main fasteners.",
      options: {
        original: "same thread as the engine was made with",
        larger: "larger thread, block drilled for it",
      },
    }),
    ...fastenerFields("main"),
  },
);

/** Studs or bolts of the cylinder head. */
export const headFastener = part(
  {
    key: "headFastener",
    id: "head-fastener",
    label: "Head fasteners",
    help: "Studs or bolts of the cylinder head.",
  },
  {
    perCylinder: count({
      label: "Fasteners round one cylinder",
      symbol: "n_h",
      help: "Fasteners that stand round one cylinder, each counted whole, those shared with a neighbour too.",
      least: 2,
      most: 12,
    }),
    ...fastenerFields("head"),
  },
);
