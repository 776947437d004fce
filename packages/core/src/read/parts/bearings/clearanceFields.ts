import type { PositionKind } from "../../FieldSpec.ts";
import { choice, dimension } from "../../fields.ts";

/** What was found when the clearance of main or rod bearings was measured, and how surely. */
export function clearanceFields(where: "main" | "rod", per: PositionKind) {
  return {
    measuredClearance: dimension({
      label: "Measured clearance",
      symbol: "C_me",
      unit: "mm",
      per,
      range: ["-0.2 mm", "0.6 mm"],
      tolerance: "0.005",
      help: `Oil clearance of the ${where} bearing across the diameter, measured with shells in place and the cap tightened, square to the joint: to be held against the one that the sizes give.`,
    }),
    clearanceMethod: choice({
      label: "How the clearance is measured",
      help: "What the clearance is measured with.",
      options: {
        gauge: "bore gauge in the tightened shells and micrometer on the journal",
        strip: "plastic gauging strip crushed under the cap",
      },
    }),
    clearanceUncertainty: dimension({
      label: "Uncertainty of the clearance",
      symbol: "U_C",
      unit: "mm",
      range: ["0.0005 mm", "0.1 mm"],
      exact: "is itself an uncertainty, the widest that is claimed",
      help: "Expanded uncertainty of the measured clearance (k = 2): it lies within plus or minus this.",
      assumed: {
        byChoice: `${where}Bearing.clearanceMethod`,
        values: {
          gauge: {
            value: "0.006 mm ± 0.001",
            because: "a bore gauge and a micrometer together leave about 5 to 7 µm (from memory)",
          },
          strip: {
            value: "0.013 mm ± 0.002",
            because: "a gauging strip is read in steps of about 25 µm (from memory)",
          },
        },
      },
    }),
    clearanceWindow: dimension({
      label: "Window of the clearance",
      symbol: "W_C",
      unit: "mm",
      range: ["0.002 mm", "0.3 mm"],
      exact: "a limit that its maker or the builder sets, not a size that is measured",
      help: "Greatest less least clearance that the builder or the bearing maker allows.",
    }),
  };
}
