/** One step of building an engine up. */
export interface AssemblyStep {
  readonly title: string;
  /** Keys of the parts that go in with it: its checks are those of rules on these parts. */
  readonly parts: readonly string[];
  /** What the hands do, before the checks. */
  readonly work: string;
  /** Whether the crankshaft is turned after it, and the torque that this takes is written down. */
  readonly turned?: true;
}

/** The order in which parts go together. Common practice for engines with a crankcase that is closed from below. */
export const assemblySteps: readonly AssemblyStep[] = [
  {
    title: "Clean block, galleries and threads",
    parts: ["block", "liner", "ventilation"],
    work: "Last wash, brushes through every gallery, threads chased, bores wiped until a white cloth stays white; oil at once.",
  },
  {
    title: "Main bearings and crankshaft",
    parts: ["mainCap", "mainFastener", "mainBearing", "crankshaft"],
    work: "Shells in dry housings, faces oiled, crankshaft laid in with two people or a hoist, caps drawn down evenly in steps.",
    turned: true,
  },
  {
    title: "Camshaft",
    parts: ["camshaft"],
    work: "Lobes and bearings coated with assembly lubricant, the camshaft guided in without touching its bearings.",
  },
  {
    title: "Rings, pins and pistons",
    parts: ["ringSet", "pistonPin", "piston"],
    work: "Gaps filed in their own bores, rings turned as the maker shows, pins and retainers, pistons through a tapered sleeve.",
  },
  {
    title: "Connecting rods",
    parts: ["connectingRod", "rodBearing", "rodBolt"],
    work: "Each rod on its own pin and in its own direction, bolts covered on the way in, then tightened to the sheet.",
    turned: true,
  },
  {
    title: "Timing drive and valve timing",
    parts: ["combustion"],
    work: "Camshaft drive on its marks, then the timing found by degree wheel and dial indicator.",
    turned: true,
  },
  {
    title: "Head gasket and cylinder heads",
    parts: ["headGasket", "cylinderHead", "headFastener"],
    work: "Faces dry and clean, gasket the right way round, fasteners drawn down in the order and steps of the maker.",
  },
  {
    title: "Valves, springs and valve drive",
    parts: ["inletValve", "exhaustValve", "valveSpring", "valveDrive"],
    work: "Followers, pushrods or shafts in their own places; lash set cold; turned by hand twice before any tool.",
    turned: true,
  },
  {
    title: "Damper, flywheel and starter",
    parts: ["damper", "flywheel", "flywheelFastener", "starter"],
    work: "Faces clean and dry, flywheel on its dowel, damper drawn on with its tool and never hammered.",
    turned: true,
  },
  {
    title: "Oil pump, pickup and pan",
    parts: ["oil"],
    work: "Pump primed, pickup at its height and locked, pan closed last of all that is below.",
  },
  {
    title: "Induction and fuel",
    parts: ["induction", "fuel"],
    work: "Tract closed and clean, fuel lines pressed off away from anything that ignites.",
  },
];
