/** A word of the trade. */
export interface Term {
  readonly term: string;
  /** Other names of the same thing. */
  readonly also: readonly string[];
  /** Further wordings by which a text is known to speak of it. */
  readonly wordings: readonly string[];
  /** What it is, for somebody who hears it for the first time. */
  readonly means: string;
}

type Row = readonly [term: string, also: string, means: string, wordings?: string];

const split = (list: string) => (list === "" ? [] : list.split("|"));

const table: readonly Row[] = [
  // Crank drive
  ["Bore", "cylinder bore", "The round hole in which a piston runs, and its diameter."],
  [
    "Stroke",
    "",
    "How far a piston travels from its lowest to its highest place: twice the radius of the crank throw.",
  ],
  [
    "Crank throw",
    "",
    "One crank of the crankshaft: a crankpin with the webs at its sides. Its radius is half the stroke.",
    "the throw|each throw|throw radius|throws of the crankshaft",
  ],
  ["Crankpin", "rod journal|big-end journal", "The journal of a throw, on which a rod turns."],
  ["Journal", "", "The ground, round part of a shaft that turns in a bearing."],
  ["Main journal", "", "A journal on the crankshaft’s own axis, held by a main bearing in the block."],
  ["Web", "crank web", "The arm of the crankshaft between a main journal and a crankpin.", "webs"],
  [
    "Fillet",
    "",
    "The rounding between a journal and its web. A sharp one starts cracks; a large one needs shells that stay clear of it.",
    "fillet radius",
  ],
  [
    "Journal overlap",
    "",
    "How far crankpin and main journal overlap, seen along the shaft. More of it makes the web stiffer and stronger; more stroke takes it away.",
    "overlap of journals",
  ],
  [
    "Counterweight",
    "",
    "A mass opposite a crankpin that balances what turns, and part of what goes up and down.",
    "counterweights",
  ],
  [
    "Bobweight",
    "bob weight",
    "A weight clamped on a crankpin while the shaft is balanced, in place of rod and piston.",
  ],
  ["Balance factor", "", "The part of the oscillating mass that the counterweights balance."],
  [
    "Oscillating mass",
    "reciprocating mass",
    "What goes up and down: piston, pin, rings and the small end of the rod.",
  ],
  [
    "Rod ratio",
    "",
    "Length of the rod over the stroke. A low one leans the rod further and pushes the piston harder against the wall.",
  ],
  ["Top dead centre", "TDC", "The crank angle at which a piston is as high as it goes."],
  ["Bottom dead centre", "BDC", "The crank angle at which a piston is as low as it goes."],
  [
    "Mean piston speed",
    "",
    "Twice the stroke times the speed of rotation: a first measure of how hard an engine is run.",
  ],
  ["Thrust side", "", "The side of the bore against which the piston is pushed on the power stroke."],
  ["Firing order", "", "The order in which the cylinders fire."],
  ["Stroker", "", "An engine that is given a longer stroke than it was made with.", "longer stroke"],
  // Pistons, rings, pins
  ["Compression height", "", "Distance from the middle of the pin bore to the flat top of the piston."],
  ["Crown", "piston crown", "The top of the piston, which takes the pressure and the heat."],
  ["Dish", "", "A hollow in the crown. It adds to the volume above the piston."],
  ["Dome", "", "A raised crown. It takes away from the volume above the piston."],
  ["Valve pocket", "", "A cut in the crown that makes room for a valve.", "valve pockets|pocket"],
  ["Skirt", "piston skirt", "The part of the piston below the rings that guides it in the bore."],
  [
    "Piston clearance",
    "skirt clearance",
    "Diameter of the bore less that of the piston, where its maker says to measure it.",
    "piston to bore",
  ],
  [
    "Land",
    "",
    "The ring-shaped wall of the piston above, between or below the ring grooves.",
    "top land|second land|third land",
  ],
  [
    "Ring groove",
    "",
    "The groove in the piston in which a ring lies.",
    "top groove|oil groove|oil ring groove",
  ],
  [
    "Side clearance",
    "",
    "Room between the flank of a ring and its groove, so that the ring can move and does not stick.",
    "side clearance of",
  ],
  [
    "End gap",
    "ring gap",
    "What is left open between the two ends of a ring in its bore. Closed by heat, it breaks the ring or the land.",
    "end gaps",
  ],
  [
    "Support rail",
    "",
    "A flat ring at the floor of the oil groove that carries the oil ring where the pin bore cuts through.",
  ],
  [
    "Tangential force",
    "",
    "The pull at the ends that closes a ring to its gap: how hard it presses on the wall.",
  ],
  ["Flutter", "", "A ring that lifts from its groove’s flank at high speed and lets gas by."],
  ["Blow-by", "blowby", "Gas that leaks past the rings into the crankcase."],
  ["Pin bore", "", "The hole in the piston that holds the piston pin."],
  ["Piston pin", "gudgeon pin|wrist pin", "The pin that joins piston and rod."],
  [
    "Pin offset",
    "",
    "Distance from the pin to the middle of the piston, given to keep it quiet as it changes sides.",
  ],
  ["Pin boss", "", "The thick part of the piston around the pin bore.", "boss|bosses"],
  [
    "Retainer",
    "circlip|pin retainer|wire lock",
    "What keeps something in its place: a clip beside the piston pin, or the plate on top of a valve spring.",
  ],
  [
    "Floating pin",
    "full-floating",
    "A pin that turns both in the piston and in the rod, held by retainers.",
    "floating",
  ],
  [
    "Press fit",
    "interference fit",
    "A pin or bush larger than its hole, so that it stays by its own grip.",
    "pressed in",
  ],
  ["Interference", "", "By how much a part is larger than the hole it goes into."],
  ["Squirter", "oil jet|piston cooling", "A jet that sprays oil under the crown to cool it.", "squirters"],
  // Rods and bolts
  ["Big end", "", "The end of the rod on the crankpin."],
  ["Small end", "", "The end of the rod at the piston pin."],
  ["Rod cap", "", "The removable half of the big end.", "cap of the rod"],
  ["Beam", "shank of the rod", "The part of the rod between its two ends."],
  [
    "Rod bolt",
    "",
    "One of the bolts that hold the cap to the rod. They carry the whole pull of piston and rod at top dead centre.",
    "rod bolts",
  ],
  [
    "Centre to centre",
    "centre distance|rod length",
    "Length of a rod: from the middle of its big end to the middle of its small end.",
  ],
  ["Bush", "bushing", "A plain sleeve of bearing metal, as in the small end."],
  ["Side play", "", "Room along the crankpin beside the rods.", "side clearance of the rods|rod side"],
  ["Buckling", "", "Sideways giving way of a slender part under pressure along its length."],
  // Fasteners
  ["Preload", "clamp load", "The pull in a bolt after tightening, which presses the parts together."],
  [
    "Torque",
    "tightening torque",
    "A turning effort: what a wrench applies, or what an engine gives at its crankshaft.",
  ],
  [
    "Stretch",
    "bolt stretch",
    "How much longer a bolt gets by tightening: a better measure of its preload than torque.",
  ],
  [
    "Snug",
    "",
    "The low torque at which parts just lie together, from which an angle is counted.",
    "snug torque",
  ],
  ["Turn angle", "torque and angle", "How far a bolt is turned after it is snug.", "angle from snug"],
  ["Yield strength", "proof stress", "The stress beyond which metal stays bent or stretched.", "yield"],
  ["Tensile strength", "", "The highest stress that metal bears before it begins to tear."],
  [
    "Fatigue",
    "fatigue strength|endurance limit",
    "Breaking under loads that come and go, far below what breaks a part at once.",
  ],
  ["Thread engagement", "", "Length over which bolt and thread hold each other.", "engagement"],
  ["Thread pitch", "", "Distance from one thread to the next.", "pitch of the thread"],
  ["Stress area", "", "The cross-section that counts for a thread: between its root and its pitch diameter."],
  ["Shank", "", "The plain part of a bolt between head and thread."],
  ["Grip", "clamped length", "Thickness of all that a bolt presses together."],
  [
    "Property class",
    "strength class",
    "A pair of numbers on a bolt’s head, such as 10.9, that stands for its strength.",
  ],
  [
    "Settling",
    "embedding",
    "Roughness at joints that flattens after tightening and takes some preload with it.",
  ],
  [
    "Friction under the head",
    "",
    "What most of a wrench’s effort is lost to; lubricant changes it, and with it the preload.",
    "head friction",
  ],
  ["Joint", "bolted joint", "Parts held together by a bolt, together with that bolt."],
  ["Dowel", "locating dowel", "A pin or sleeve that places one part on another exactly.", "dowels"],
  // Bearings and oil
  ["Shell", "bearing shell", "One half of a plain bearing, pressed into its housing.", "shells"],
  [
    "Bearing clearance",
    "oil clearance",
    "Diameter of the bearing less that of its journal. Oil fills it.",
    "clearance of the bearing",
  ],
  [
    "Crush",
    "",
    "By how much a pair of shells stands proud of its housing, so that the cap presses it tight.",
  ],
  ["Housing bore", "tunnel", "The bore into which the shells go.", "bearing housing"],
  [
    "Oil film",
    "film thickness",
    "The layer of oil that carries a journal so that metal does not touch.",
    "least film",
  ],
  ["Unit load", "", "Load of a bearing over its projected area, diameter times width."],
  [
    "Thrust bearing",
    "thrust face",
    "The bearing that keeps the crankshaft from moving along its axis.",
    "thrust bearings",
  ],
  ["End play", "end float|end clearance", "How far a shaft can move along its axis."],
  ["Out of round", "out-of-round|ovality", "Difference between two diameters at one height."],
  ["Taper", "", "Difference of diameter between two heights of a bore or journal."],
  [
    "Run-out",
    "runout",
    "How much a turning part swings to and fro under a dial indicator.",
    "bend of the crankshaft",
  ],
  ["Line bore", "line honing", "Machining all main bearing housings in one line.", "line-bored|align"],
  ["Viscosity", "", "How thick an oil is. It falls as the oil gets hot."],
  ["Sump", "oil pan", "The pan under the engine that holds the oil.", "wet sump"],
  ["Dry sump", "", "An oil system that pumps the oil out of the pan into a tank."],
  ["Pickup", "oil pickup", "The mouth of the pipe through which the pump draws its oil."],
  ["Windage", "", "Air and oil whipped up by the crankshaft; it costs power and froths the oil."],
  ["Gallery", "oil gallery", "A drilled passage that carries oil.", "galleries"],
  ["Gauge", "dial bore gauge|micrometer|feeler gauge", "An instrument that tells a size."],
  // Block
  ["Deck", "deck surface|deck face", "The flat face of the block on which the head gasket lies."],
  ["Deck height", "", "Distance from the crankshaft’s axis to the deck."],
  [
    "Deck clearance",
    "",
    "How far the flat top of the piston stays below the deck at top dead centre; negative when it stands proud.",
  ],
  ["Main cap", "bearing cap", "The removable half of a main bearing’s housing.", "main caps"],
  [
    "Cap walk",
    "fretting",
    "A main cap that shifts on its register under load, leaving polished or pitted marks.",
    "cap walks",
  ],
  [
    "Register",
    "cap register",
    "The step in the block into which a main cap is pressed, so that it cannot move sideways.",
    "registers",
  ],
  ["Girdle", "", "A frame that ties the main caps together."],
  ["Liner", "sleeve", "A separate cylinder wall set into the block.", "sleeves|liners"],
  [
    "Honing",
    "cross-hatch",
    "Finishing a bore with stones, which leaves crossed fine scratches that hold oil.",
    "hone|honed",
  ],
  [
    "Torque plate",
    "deck plate|honing plate",
    "A thick plate bolted on in place of the head, so that a bore is honed in the shape it will have.",
  ],
  [
    "Water jacket",
    "coolant passage",
    "The hollow around cylinders and chambers through which coolant flows.",
    "water jackets",
  ],
  ["Clearance notch", "notch", "A cut at the lower edge of a cylinder that makes room for the rod."],
  // Head, gasket, valve train
  [
    "Head gasket",
    "gasket",
    "The seal between block and head. Its thickness when pressed counts in the compression ratio.",
  ],
  ["Line load", "", "Clamping force for each length of the gasket’s bead."],
  ["Chamber", "combustion chamber", "The hollow in the head above the piston.", "chamber volume"],
  [
    "Squish",
    "quench|squish band",
    "The narrow gap between crown and head at top dead centre that drives the charge inwards.",
  ],
  ["Compression ratio", "", "Volume above the piston at bottom dead centre over that at top dead centre."],
  [
    "Valve lift",
    "",
    "How far a valve is off its seat.",
    "lift table|lift of the|lift at|lift over|least lift",
  ],
  ["Duration", "", "Crank angle over which a valve is lifted more than a stated amount."],
  ["Lobe", "cam lobe|lobe lift", "The raised part of a cam. Its lift is that of the follower."],
  ["Lobe centre", "centreline|lobe separation", "Crank angle at which a lobe lifts most."],
  ["Base circle", "", "The round part of a cam that lifts nothing."],
  ["Lash", "valve lash|valve clearance", "The gap left in the valve drive so that a hot valve still shuts."],
  ["Rocker", "rocker arm", "A lever between cam or pushrod and valve.", "rocker ratio"],
  ["Pushrod", "", "A rod that carries the cam’s motion up to a rocker.", "pushrods"],
  ["Follower", "lifter|tappet|bucket", "The part that rides on the cam."],
  [
    "Valve float",
    "",
    "A valve that no longer follows its cam since the spring is too weak for the speed.",
    "float of the valves",
  ],
  ["Coil bind", "solid height", "A spring pressed until its coils touch."],
  ["Seat force", "seat pressure", "Force of a valve spring with the valve shut."],
  ["Installed height", "", "Length of a valve spring with the valve shut."],
  ["Surge", "spring surge", "Waves that run along a valve spring when it is shaken near its own frequency."],
  ["Valve guide", "", "The tube in which a valve’s stem slides.", "guide|guide bore"],
  ["Valve seat", "", "The ring in the head on which a valve shuts.", "seat width"],
  ["Stem", "valve stem", "The long round part of a valve."],
  ["Checking lift", "", "The lift at which a cam maker counts the opening and closing angles."],
  ["Degreeing", "degree wheel", "Checking by a degree wheel that the cam opens and shuts when it should."],
  // Air, fuel, heat
  ["Boost", "", "Pressure in the intake above that of the air outside.", "manifold pressure|boosted"],
  [
    "Volumetric efficiency",
    "",
    "Air that a cylinder takes in, against what would fill it at the state in the manifold.",
  ],
  [
    "Mean effective pressure",
    "BMEP",
    "Work of one cycle over the displacement: compares engines of any size.",
    "brake mean",
  ],
  [
    "Displacement",
    "swept volume",
    "Volume through which the pistons move: bore area times stroke times cylinders.",
  ],
  ["Knock", "detonation", "Charge that burns all at once ahead of the flame, with a hammering pressure."],
  ["Octane", "octane number|RON", "How well a fuel resists knock."],
  ["Spark timing", "ignition timing", "Crank angle at which the charge is lit."],
  ["Air-fuel ratio", "lambda", "Mass of air over mass of fuel.", "air to fuel"],
  [
    "Injector",
    "",
    "A valve that sprays fuel; how much it can give limits the power.",
    "injectors|injector flow",
  ],
  ["Charge temperature", "", "Temperature of what goes into the cylinder."],
  ["Peak cylinder pressure", "peak pressure", "The highest gas pressure of a cycle."],
  // Vibration and flywheel
  [
    "Torsional vibration",
    "",
    "Twisting to and fro of the crankshaft under the cylinders’ pushes.",
    "torsional",
  ],
  [
    "Damper",
    "torsional damper|viscous damper",
    "A ring on the crankshaft’s nose that takes the twist out of it.",
  ],
  [
    "Natural frequency",
    "",
    "The frequency at which something swings by itself after a blow.",
    "natural frequencies",
  ],
  [
    "Engine order",
    "",
    "How many times in one turn of the crankshaft a vibration comes.",
    "of the order that|half order|exciting order",
  ],
  ["Critical speed", "", "A speed at which an order meets a natural frequency.", "critical speeds"],
  [
    "Flywheel",
    "",
    "The disc at the end of the crankshaft that evens out its turning and carries the clutch.",
  ],
  ["Moment of inertia", "", "How much something resists being made to turn faster.", "inertia"],
  [
    "Bursting",
    "",
    "Flying apart of something that turns too fast.",
    "can burst|they burst|burst without|fly apart",
  ],
  // Assembly and running
  [
    "Trial assembly",
    "mock-up",
    "Putting the engine together dry, to measure and look, before the last time.",
  ],
  [
    "Break-in",
    "running in",
    "The first hours, in which rings and bores wear to each other.",
    "run in|first start",
  ],
  [
    "Assembly lubricant",
    "assembly lube",
    "Paste or oil on parts before the first start, and under bolt heads as their maker says.",
    "moly",
  ],
  ["Redline", "speed limit|overspeed", "The highest speed of rotation that the engine is meant to see."],
  ["Modelling clay", "clay", "Soft putty that shows by its squeezed thickness how much room there is."],
  [
    "Thermal expansion",
    "growth with heat",
    "Growth of a part as it gets hot. Aluminium grows nearly twice as much as iron.",
    "expands|grows hot",
  ],
  ["Roughness", "surface finish", "Height of a surface’s fine peaks, in micrometres."],
  ["Flatness", "", "How far a face strays from a plane.", "flat within"],
];

/** Words of the trade that rules, fields and quantities use, sorted. Common knowledge of the trade, in our own words. */
export const glossary: readonly Term[] = table
  .map(([term, also, means, wordings = ""]) => ({
    term,
    also: split(also),
    wordings: split(wordings),
    means,
  }))
  .sort((a, b) => (a.term.toLowerCase() < b.term.toLowerCase() ? -1 : 1));
