import { instruments } from "./instruments.ts";
import { type Material, type MaterialProperty, materials } from "./materials.ts";
import { propertyClasses } from "./propertyClasses.ts";
import { type Strength, strengths } from "./strengths.ts";
import { threadShear } from "./threadShear.ts";
import { threads } from "./threads.ts";
import { tighteningMethods } from "./tighteningMethods.ts";
import { waysOfMaking } from "./waysOfMaking.ts";

/** A table of values that a build need not state, as people read it. */
export interface RecalledTable {
  /** Name of its file. */
  readonly id: string;
  readonly title: string;
  /** Where its values come from, and what outranks them. */
  readonly about: string;
  /** Headings; the first column names the row. */
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

const band = ({ usual, spread }: MaterialProperty) => `${usual} ± ${spread}`;
const times = (count: number) => count.toExponential().replace("+", "");
const percent = (share: number) => `± ${Math.round(share * 100)} %`;

/** Every table of which at least a part is recalled and not checked against a source: there to be disputed. */
export const recalledTables: readonly RecalledTable[] = [
  {
    id: "instruments",
    title: "What instruments achieve",
    about:
      "Expanded uncertainty of one careful reading in a shop (k = 2). The shop’s own figure outranks it.",
    columns: ["Instrument", "Uncertainty"],
    rows: Object.entries(instruments).map(([name, { uncertainty }]) => [name, uncertainty]),
  },
  {
    id: "waysOfMaking",
    title: "What ways of making keep",
    about:
      "The coarse end of what shops usually keep, as a grade of ISO 286-1: the widths of the grades are the standard’s, which grade belongs to which way is recalled. A stated tolerance outranks it.",
    columns: ["Way of making", "Grade"],
    rows: Object.values(waysOfMaking).map(({ help, grade }) => [help, `IT${grade}`]),
  },
  {
    id: "materials",
    title: "Materials",
    about:
      "Typical values between 20 °C and 200 °C, and how far alloys of the name lie from them. A part maker’s sheet outranks them.",
    columns: ["Material", "Expansion [1e-6/K]", "Modulus [GPa]", "Poisson’s ratio", "Density [kg/m3]"],
    rows: Object.values<Material>(materials).map(({ name, expansion, modulus, poisson, density }) => [
      name,
      ...[expansion, modulus, poisson, density].map(band),
    ]),
  },
  {
    id: "strengths",
    title: "Strengths against temperature",
    about:
      "Typical values; aluminium alloys for the hours given, for longer use they are less. A part maker’s figures outrank them.",
    columns: [
      "Material",
      "At [°C]",
      "Yield [MPa]",
      "Tensile [MPa]",
      "Fatigue [MPa]",
      "Cycles, hours",
      "Spread",
      "From",
    ],
    rows: Object.values<Strength>(strengths).map((one) => [
      one.name,
      ...[one.temperatures, one.yield, one.tensile, one.fatigue].map((list) => list.join(", ")),
      one.hours === undefined ? times(one.cycles) : `${times(one.cycles)}, ${one.hours} h`,
      percent(one.spread),
      one.source,
    ]),
  },
  {
    id: "threadShear",
    title: "Shear strength of tapped metals",
    about: "Taken for the thread in a part by the metal of the part; alloys differ widely.",
    columns: ["Metal", "Shear strength", "Because"],
    rows: Object.entries(threadShear).map(([metal, { value, because }]) => [metal, value, because]),
  },
  {
    id: "tighteningMethods",
    title: "Scatter of preload by tightening method",
    about: "Greatest over least preload, after the table of tightening factors of VDI 2230-1, as recalled.",
    columns: ["Method", "Factor", "Because"],
    rows: Object.values(tighteningMethods).map(({ name, factor, because }) => [name, factor, because]),
  },
  {
    id: "propertyClasses",
    title: "Strength classes of fasteners",
    about:
      "As the standards that are named print them, but for what says so. The maker’s figures outrank them.",
    columns: ["Class", "Proof [MPa]", "Yield [MPa]", "Tensile [MPa]"],
    rows: Object.values(propertyClasses).map(({ name, proof, yield: yieldStrength, tensile }) => [
      name,
      ...[proof, yieldStrength, tensile].map((value) => String(Math.round(value))),
    ]),
  },
  {
    id: "threads",
    title: "Threads",
    about:
      "Sizes are what the names say. Stress areas are those of ISO 898-1 and ASME B1.1; those of which no printed row was at hand are recalled, and all are held to the formula of their standard.",
    columns: ["Thread", "Diameter", "Pitch", "Stress area"],
    rows: Object.entries(threads).map(([name, { diameter, pitch, stressArea }]) => [
      name,
      diameter,
      pitch,
      stressArea ?? "by the formula",
    ]),
  },
];
