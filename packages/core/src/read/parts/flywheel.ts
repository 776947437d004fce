import { choice, count, dimension } from "../fields.ts";
import { densityField } from "../materialFields.ts";
import { part } from "../part.ts";

const materials = {
  steel: "steel",
  "grey-iron": "grey-iron",
  "ductile-iron": "ductile-iron",
  aluminium: "wrought-aluminium",
} as const;

/** The flywheel. */
export const flywheel = part(
  { key: "flywheel", id: "flywheel", label: "Flywheel", help: "The flywheel with what is bolted to it." },
  {
    material: choice({
      label: "Flywheel material",
      help: "What the disc is made of.",
      options: {
        steel: "forged or rolled steel",
        "grey-iron": "grey cast iron",
        "ductile-iron": "ductile (nodular) iron",
        aluminium: "aluminium alloy with a steel face",
      },
    }),
    outerDiameter: dimension({
      label: "Flywheel diameter",
      symbol: "D_f",
      unit: "mm",
      range: ["80 mm", "800 mm"],
      tolerance: "0.5",
      help: "Outer diameter of the disc.",
    }),
    holeDiameter: dimension({
      label: "Hole diameter",
      symbol: "d_f",
      unit: "mm",
      range: ["5 mm", "200 mm"],
      tolerance: "0.5",
      help: "Diameter of the hole in the middle.",
    }),
    inertia: dimension({
      label: "Flywheel inertia",
      symbol: "J_f",
      unit: "kg m2",
      range: ["0.001 kg m2", "50 kg m2"],
      tolerance: "3 %",
      help: "Moment of inertia of flywheel, clutch cover and ring gear.",
    }),
    ratedSpeed: dimension({
      label: "Certified speed of the flywheel",
      symbol: "n_fw",
      unit: "rpm",
      range: ["1000 rpm", "25000 rpm"],
      exact: "a limit that its maker or the builder sets, not a size that is measured",
      help: "Highest crankshaft speed for which the flywheel is certified by its maker.",
    }),
    density: densityField("flywheel.material", "f", materials),
    strength: dimension({
      label: "Flywheel strength",
      symbol: "R_f",
      unit: "MPa",
      range: ["80 MPa", "1500 MPa"],
      tolerance: "10 %",
      help: "Yield strength of a steel or aluminium disc, tensile strength of an iron one, which does not yield.",
      assumed: {
        byChoice: "flywheel.material",
        values: {
          "grey-iron": {
            value: "200 MPa ± 50",
            because:
              "grey iron of flywheels breaks at about 150 to 250 MPa (from memory); many rules forbid it at high speed",
          },
        },
      },
    }),
    stressRaise: dimension({
      label: "Stress raise at bolt holes",
      symbol: "k_f",
      unit: "1",
      range: ["1", "4"],
      tolerance: "10 %",
      help: "How many times the stress at holes and steps is that of a plain disc.",
      assumed: { value: "2.5 ± 0.5", because: "holes raise the stress two to three times (common practice)" },
    }),
    boltCircleDiameter: dimension({
      label: "Bolt circle diameter",
      symbol: "D_bc",
      unit: "mm",
      range: ["20 mm", "300 mm"],
      tolerance: "0.2",
      help: "Diameter of the circle of the bolts that hold the flywheel to the crankshaft.",
    }),
    boltCount: count({
      label: "Flywheel bolts",
      symbol: "n_f",
      help: "Bolts that hold the flywheel to the crankshaft.",
      least: 2,
      most: 24,
    }),
    jointFriction: dimension({
      label: "Friction of the flywheel joint",
      symbol: "mu_j",
      unit: "1",
      range: ["0.05", "0.5"],
      tolerance: "0.02",
      help: "Friction between flywheel and crankshaft flange.",
      assumed: { value: "0.15 ± 0.03", because: "dry clean steel joints slip at 0.12 to 0.18 (from memory)" },
    }),
  },
);
