/** Traces that are read together, by what they are about. */
export const charts: readonly {
  readonly id: string;
  readonly label: string;
  readonly traces: readonly string[];
}[] = [
  {
    id: "clearances",
    label: "Clearances of the rod",
    traces: ["rodToCylinderGap", "rodToPanRailGap", "rodToCamshaftGap", "rodToSquirterGap"],
  },
  { id: "travel", label: "Travel of the piston", traces: ["pistonTravel"] },
  { id: "speed", label: "Speed of the piston", traces: ["pistonSpeed"] },
  { id: "acceleration", label: "Acceleration of the piston", traces: ["pistonAcceleration"] },
  { id: "pressure", label: "Pressure in the cylinder", traces: ["cylinderPressure"] },
  { id: "forces", label: "Forces on piston and rod", traces: ["gasForce", "inertiaForce", "rodForce"] },
  { id: "side", label: "Side force on the cylinder", traces: ["sideForce"] },
  { id: "bolt", label: "Outside load on one rod bolt", traces: ["rodBoltLoad"] },
  {
    id: "valves",
    label: "Valves against the piston",
    traces: ["inletLift", "exhaustLift", "inletValveGap", "exhaustValveGap"],
  },
];
