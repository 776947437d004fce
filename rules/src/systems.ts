/** The systems of an engine, in the order in which the catalog shows them. Folder names of rules and quantities. */
export const systems = {
  targets: "Targets and operating range",
  kinematics: "Crank drive kinematics",
  compression: "Stack height, volumes and compression",
  clearances: "Clearances of moving parts",
  pistons: "Pistons and bores",
  rings: "Piston rings",
  pins: "Piston pins and small ends",
  rods: "Connecting rods and rod bolts",
  bearings: "Bearings",
  lubrication: "Oil and lubrication",
  crankshaft: "Crankshaft",
  balance: "Balance",
  torsion: "Torsional vibration",
  flywheel: "Flywheel and damper",
  "main-caps": "Block and main caps",
  fasteners: "Fasteners",
  head: "Cylinder head and gasket",
  "valve-train": "Valves and valve train",
  charge: "Air, fuel and knock",
  assembly: "Assembly",
  "first-run": "First run and operating limits",
} as const;

export type System = keyof typeof systems;
