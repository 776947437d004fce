import { dimension } from "../fields.ts";

/** What the springs of a fastener's joint need beside its sizes. @param clamped what it clamps */
export const springFields = (clamped: string) => ({
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
    tolerance: "5 %",
    help: `Young's modulus of what is clamped: ${clamped}.`,
  }),
  bossDiameter: dimension({
    label: "Boss diameter",
    symbol: "D_bo",
    unit: "mm",
    range: ["8 mm", "200 mm"],
    tolerance: "5 %",
    help: "Diameter of the metal round the fastener that is clamped: twice the distance from its axis to the nearest free edge. A narrow boss gives way more.",
  }),
  embedding: dimension({
    label: "Embedding",
    symbol: "f_Z",
    unit: "um",
    range: ["0 um", "40 um"],
    tolerance: "25 %",
    help: "How much the faces of thread, head and joint flatten after tightening, together.",
    assumed: {
      value: "8 um ± 4",
      because: "3 to 11 µm are usual with few, smooth faces (from memory, VDI 2230)",
    },
  }),
});

/** The same for a joint that a working load pulls open. */
export const jointFields = (clamped: string) => ({
  ...springFields(clamped),
  loadIntroduction: dimension({
    label: "Load introduction",
    symbol: "n_i",
    unit: "1",
    range: ["0", "1"],
    tolerance: "0.1",
    help: "Where between head and joint the working load enters: 1 under the head, near 0 at the joint.",
    assumed: {
      value: "0.5 ± 0.2",
      because: "loads enter about half way, 0.3 to 0.7 (from memory, VDI 2230)",
    },
  }),
});
