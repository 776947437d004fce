import { propertyClasses } from "../../tables/propertyClasses.ts";
import { threads } from "../../tables/threads.ts";
import type { AssumedValue } from "../FieldSpec.ts";
import { choice, count, dimension } from "../fields.ts";
import { part } from "../part.ts";

const words = <T>(table: Readonly<Record<string, T>>, text: (name: string, one: T) => string) =>
  Object.fromEntries(Object.entries(table).map(([name, one]) => [name, text(name, one)]));

const values = <T>(
  table: Readonly<Record<string, T>>,
  of: (one: T) => string,
  because: (name: string, one: T) => string,
) =>
  Object.fromEntries(
    Object.entries(table).map(([name, one]): [string, AssumedValue] => [
      name,
      { value: of(one), because: because(name, one) },
    ]),
  );

const threadOf = (key: string) => ({
  thread: choice({
    label: "Thread",
    help: "Name of the thread, for its diameter and pitch.",
    options: words(threads, (_, { diameter, pitch }) => `${diameter}, pitch ${pitch}`),
  }),
  threadDiameter: dimension({
    label: "Thread diameter",
    symbol: "d",
    unit: "mm",
    range: ["4 mm", "30 mm"],
    help: "Major (nominal) diameter of the thread.",
    assumed: {
      byChoice: `${key}.thread`,
      values: values(
        threads,
        ({ diameter }) => `${diameter} ± 0`,
        (name) => `the thread is ${name}`,
      ),
    },
  }),
  threadPitch: dimension({
    label: "Thread pitch",
    symbol: "P",
    unit: "mm",
    range: ["0.4 mm", "4 mm"],
    help: "Distance from thread to thread; for an inch thread, 1 in divided by the threads per inch: 1/20 in.",
    assumed: {
      byChoice: `${key}.thread`,
      values: values(
        threads,
        ({ pitch }) => `${pitch} ± 0`,
        (name) => `the thread is ${name}`,
      ),
    },
  }),
});

/** Strengths of a fastener, which its class gives where its maker does not. @param key of the part in the build file */
export function strengthFields(key: string) {
  const byClass = (of: "yield" | "tensile") => ({
    byChoice: `${key}.propertyClass`,
    values: values(
      propertyClasses,
      (one) => `${Math.round(one[of])} MPa ± 0`,
      (_, { name }) => `least ${of === "yield" ? "yield" : "tensile"} strength of ${name}`,
    ),
  });
  return {
    propertyClass: choice({
      label: "Property class",
      help: "Class or grade that is marked on the head; left out where the maker states strengths.",
      options: words(propertyClasses, (_, { name }) => name),
    }),
    yieldStrength: dimension({
      label: "Yield strength",
      symbol: "R_p",
      unit: "MPa",
      range: ["200 MPa", "2500 MPa"],
      help: "Yield strength or 0.2 % proof strength from the maker's sheet or the property class.",
      assumed: byClass("yield"),
    }),
    tensileStrength: dimension({
      label: "Tensile strength",
      symbol: "R_m",
      unit: "MPa",
      range: ["250 MPa", "2800 MPa"],
      help: "Tensile strength from the maker's sheet or the property class.",
      assumed: byClass("tensile"),
    }),
    enduranceStrength: dimension({
      label: "Endurance strength of the thread",
      symbol: "S_e",
      unit: "MPa",
      range: ["20 MPa", "400 MPa"],
      help: "Stress amplitude that the thread stands for ever, its notch included.",
      assumed: {
        value: "60 MPa ± 15",
        because:
          "rolled threads of 8 to 14 mm stand about 45 to 75 MPa, whatever their class (from memory, form of VDI 2230)",
      },
    }),
  };
}

/** What the elastic joint of a fastener needs beside its sizes. @param clamped what it clamps */
export function jointFields(clamped: string) {
  return {
    grip: dimension({
      label: "Grip",
      symbol: "l_k",
      unit: "mm",
      range: ["5 mm", "400 mm"],
      tolerance: "0.5",
      help: `Thickness that is clamped between head or nut and thread: ${clamped}.`,
    }),
    freeThread: dimension({
      label: "Free thread in the grip",
      symbol: "l_ft",
      unit: "mm",
      range: ["0 mm", "200 mm"],
      tolerance: "0.5",
      help: "Length of thread inside the grip that is not engaged.",
    }),
    clampedModulus: dimension({
      label: "Modulus of the clamped parts",
      symbol: "E_k",
      unit: "GPa",
      range: ["30 GPa", "260 GPa"],
      help: `Young's modulus of what is clamped: ${clamped}.`,
    }),
    loadIntroduction: dimension({
      label: "Load introduction",
      symbol: "n_i",
      unit: "1",
      range: ["0", "1"],
      help: "Where between head and joint the working load enters: 1 under the head, near 0 at the joint.",
      assumed: {
        value: "0.5 ± 0.2",
        because: "loads enter about half way, 0.3 to 0.7 (from memory, VDI 2230)",
      },
    }),
    embedding: dimension({
      label: "Embedding",
      symbol: "f_Z",
      unit: "um",
      range: ["0 um", "40 um"],
      help: "How much the faces of thread, head and joint flatten after tightening, together.",
      assumed: {
        value: "8 um ± 4",
        because: "3 to 11 µm are usual with few, smooth faces (from memory, VDI 2230)",
      },
    }),
  };
}

/** What any screwed joint of the bottom end or head needs to know of one fastener. */
function fastenerFields(key: string, where: string) {
  return {
    ...threadOf(key),
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
    ...strengthFields(key),
    engagement: dimension({
      label: "Thread engagement",
      symbol: "m_e",
      unit: "mm",
      range: ["2 mm", "120 mm"],
      tolerance: "0.5",
      help: "Length of thread engaged in the block: turns counted × pitch.",
    }),
    tightening: choice({
      label: "Tightening method",
      help: "How the final preload is set.",
      options: {
        stretch: "by measured stretch",
        angle: "by a snug torque and an angle, or to yield",
        torque: "by torque wrench with the friction of a tested lubricant",
        guessed: "by torque wrench with a friction that is guessed",
      },
    }),
    tighteningFactor: dimension({
      label: "Tightening factor",
      symbol: "alpha_A",
      unit: "1",
      range: ["1", "4"],
      help: "Greatest over least preload that the method of tightening gives from fastener to fastener.",
      assumed: {
        byChoice: `${key}.tightening`,
        values: {
          stretch: {
            value: "1.15 ± 0.05",
            because: "measured stretch scatters by 1.1 to 1.2 (from memory, VDI 2230)",
          },
          angle: {
            value: "1.3 ± 0.1",
            because: "torque and angle scatter by 1.2 to 1.4 (from memory, VDI 2230)",
          },
          torque: {
            value: "1.5 ± 0.1",
            because: "a torque wrench with tested friction scatters by 1.4 to 1.6 (from memory, VDI 2230)",
          },
          guessed: {
            value: "1.9 ± 0.3",
            because: "a torque wrench with guessed friction scatters by 1.6 to 2.2 (from memory, VDI 2230)",
          },
        },
      },
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
    ...fastenerFields("mainFastener", "main"),
    ...jointFields("the cap with its washer"),
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
    ...fastenerFields("headFastener", "head"),
    ...jointFields("head and gasket with the washer"),
  },
);

/** The bolts that hold the flywheel. */
export const flywheelFastener = part(
  {
    key: "flywheelFastener",
    id: "flywheel-fastener",
    label: "Flywheel fasteners",
    help: "The bolts that hold the flywheel to the crankshaft.",
  },
  fastenerFields("flywheelFastener", "flywheel"),
);
