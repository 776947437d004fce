/** What a strength is taken against. */
export type StrengthKind = "yield" | "tensile" | "fatigue";

/** Strengths of a material by temperature, each list as long as the temperatures. */
export interface Strength {
  readonly name: string;
  /** [°C], rising. */
  readonly temperatures: readonly number[];
  /** Yield or 0.2 % proof strength [MPa]. */
  readonly yield: readonly number[];
  /** Tensile strength [MPa]. */
  readonly tensile: readonly number[];
  /** Amplitude about a mean of 0 that a polished bar stands for `cycles` [MPa]. */
  readonly fatigue: readonly number[];
  readonly cycles: number;
  /** How far alloys and heats of the name lie from it, as a share. */
  readonly spread: number;
  /** For how long the material has been at its temperature; metals that are not aged by it in any engine have none. */
  readonly hours?: number;
  readonly source: string;
}

const MEMORY = "from memory";

/**
 * Strength of rods, bolts, pins and pistons against temperature. Values are typical ones, recalled and not checked line
 * by line against a handbook: standing "from memory" but for what a source names. Aluminium alloys go on softening for
 * as long as they are hot: theirs are for the hours given, and for longer use they are less. Strength between two
 * temperatures that a test would show to rise with heat is taken as level. A part maker's figures outrank all of this.
 */
export const strengths = {
  "forged-steel": {
    name: "forged carbon or micro-alloyed steel, cooled in air",
    temperatures: [20, 100, 150, 200, 250, 300],
    yield: [580, 555, 540, 530, 515, 490],
    tensile: [920, 890, 880, 880, 880, 850],
    fatigue: [390, 380, 375, 370, 360, 345],
    cycles: 1e7,
    spread: 0.15,
    source: MEMORY,
  },
  "quenched-steel": {
    name: "low-alloy steel, quenched and tempered",
    temperatures: [20, 100, 150, 200, 250, 300],
    yield: [950, 910, 885, 860, 835, 800],
    tensile: [1080, 1040, 1020, 1005, 990, 965],
    fatigue: [500, 485, 475, 465, 455, 440],
    cycles: 1e7,
    spread: 0.15,
    source: MEMORY,
  },
  "powder-steel": {
    name: "powder-metal steel, forged to density",
    temperatures: [20, 100, 150, 200, 250, 300],
    yield: [620, 595, 580, 565, 550, 525],
    tensile: [930, 900, 885, 875, 865, 840],
    fatigue: [330, 320, 315, 310, 305, 290],
    cycles: 1e7,
    spread: 0.15,
    source: MEMORY,
  },
  "ductile-iron": {
    name: "ductile (nodular) iron, pearlitic",
    temperatures: [20, 100, 150, 200, 250, 300],
    yield: [420, 400, 390, 385, 375, 360],
    tensile: [700, 670, 655, 650, 640, 610],
    fatigue: [280, 270, 265, 260, 255, 245],
    cycles: 1e7,
    spread: 0.1,
    source: MEMORY,
  },
  "case-hardened-steel": {
    name: "case-hardened steel, strength of its core",
    temperatures: [20, 100, 150, 200],
    yield: [850, 820, 800, 775],
    tensile: [1100, 1070, 1050, 1030],
    fatigue: [550, 535, 525, 510],
    cycles: 1e7,
    spread: 0.15,
    source: MEMORY,
  },
  "hot-work-steel": {
    name: "hot-work tool steel of 5 % chromium, hardened",
    temperatures: [20, 100, 150, 200, 250, 300, 400],
    yield: [1500, 1440, 1410, 1380, 1350, 1320, 1250],
    tensile: [1850, 1780, 1740, 1710, 1680, 1650, 1560],
    fatigue: [800, 770, 755, 740, 725, 710, 670],
    cycles: 1e7,
    spread: 0.15,
    source: MEMORY,
  },
  "austenitic-bolt-steel": {
    name: "austenitic bolt steel, aged",
    temperatures: [20, 100, 150, 200, 250, 300, 400],
    yield: [700, 690, 685, 675, 670, 665, 655],
    tensile: [1050, 1020, 1005, 995, 985, 975, 950],
    fatigue: [400, 390, 385, 380, 375, 370, 360],
    cycles: 1e7,
    spread: 0.1,
    source: MEMORY,
  },
  "titanium-6al-4v": {
    name: "titanium alloy Ti-6Al-4V, annealed",
    temperatures: [20, 100, 150, 200, 250, 300, 400],
    yield: [880, 755, 680, 620, 585, 555, 500],
    tensile: [950, 860, 805, 755, 720, 690, 635],
    fatigue: [500, 455, 425, 395, 375, 360, 330],
    cycles: 1e7,
    spread: 0.08,
    source: MEMORY,
  },
  "aluminium-7075": {
    name: "aluminium alloy 7075-T6",
    temperatures: [20, 100, 125, 150, 200],
    yield: [503, 440, 380, 260, 130],
    tensile: [572, 480, 410, 300, 160],
    fatigue: [159, 140, 125, 100, 65],
    cycles: 5e8,
    spread: 0.1,
    hours: 100,
    source: MEMORY,
  },
  "aluminium-2618": {
    name: "aluminium alloy 2618-T61, forged",
    temperatures: [20, 100, 150, 200, 250, 300, 350],
    yield: [372, 365, 335, 270, 165, 85, 45],
    tensile: [441, 420, 380, 315, 205, 110, 65],
    fatigue: [125, 120, 110, 98, 75, 52, 35],
    cycles: 1e8,
    spread: 0.12,
    hours: 100,
    source: `${MEMORY}; at 20 °C the 54 and 64 ksi of a printed table of typical properties of wrought alloys`,
  },
  "aluminium-4032": {
    name: "aluminium alloy 4032-T6, forged",
    temperatures: [20, 100, 150, 200, 250, 300, 350],
    yield: [317, 305, 280, 205, 110, 58, 35],
    tensile: [379, 350, 315, 240, 140, 80, 50],
    fatigue: [110, 106, 98, 82, 60, 43, 31],
    cycles: 1e8,
    spread: 0.12,
    hours: 100,
    source: MEMORY,
  },
  "cast-eutectic-aluminium": {
    name: "cast piston alloy of about 12 % silicon with copper, nickel and magnesium",
    temperatures: [20, 100, 150, 200, 250, 300, 350],
    yield: [200, 190, 175, 145, 95, 60, 38],
    tensile: [230, 220, 205, 180, 135, 95, 65],
    fatigue: [90, 85, 78, 68, 55, 42, 32],
    cycles: 1e8,
    spread: 0.15,
    hours: 100,
    source: MEMORY,
  },
  "cast-hypereutectic-aluminium": {
    name: "cast piston alloy of more than 12 % silicon with copper, nickel and magnesium",
    temperatures: [20, 100, 150, 200, 250, 300, 350],
    yield: [190, 180, 165, 140, 95, 65, 42],
    tensile: [215, 205, 190, 165, 125, 90, 62],
    fatigue: [85, 80, 74, 65, 53, 42, 32],
    cycles: 1e8,
    spread: 0.15,
    hours: 100,
    source: MEMORY,
  },
} as const satisfies Readonly<Record<string, Strength>>;

export type StrengthId = keyof typeof strengths;
