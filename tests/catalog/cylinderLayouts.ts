import type { Random } from "../../packages/core/src/derive/seeded.ts";

/** How the cylinders of an engine stand and fire, as its build file says it. */
export interface CylinderLayout {
  readonly block: Readonly<Record<"layout" | "cylinders" | "bankAngle" | "mainBearings", string>>;
  readonly crankshaft: {
    readonly rodsPerPin: string;
    readonly throws: readonly Readonly<Record<"pin" | "bank" | "position" | "fires", string>>[];
  };
}

interface Kind {
  readonly layout: "single" | "inline" | "vee" | "flat";
  readonly cylinders: readonly number[];
  /** Angles between the banks that are built [deg]; 0 for one row. */
  readonly bankAngles: readonly number[];
  readonly rodsPerPin: readonly (1 | 2)[];
}

const kinds: readonly Kind[] = [
  { layout: "single", cylinders: [1], bankAngles: [0], rodsPerPin: [1] },
  { layout: "inline", cylinders: [2, 3, 4, 5, 6, 8], bankAngles: [0], rodsPerPin: [1] },
  { layout: "vee", cylinders: [2, 4, 6, 8, 10, 12], bankAngles: [45, 60, 72, 90], rodsPerPin: [2] },
  { layout: "flat", cylinders: [2, 4, 6, 8, 12], bankAngles: [180], rodsPerPin: [1, 2] },
];

/** Degrees of the cycle of a four-stroke engine, and of a turn. */
const CYCLE = 720;
const TURN = 360;

export function pick<T>(list: readonly T[], random: Random): T {
  return list[Math.floor(random() * list.length)]!;
}

/** The same things in another order. */
function shuffled<T>(list: readonly T[], random: Random): readonly T[] {
  return list
    .map((one) => ({ one, at: random() }))
    .sort((a, b) => a.at - b.at)
    .map(({ one }) => one);
}

const wrapped = (angle: number, whole: number) => ((angle % whole) + whole) % whole;

/**
 * Draws how many cylinders there are, how they stand, and throws that go with it: the crankpins fire evenly in a random
 * order, two rods on one pin a bank angle apart, now and then a turn later.
 * @param spacing distance of crankpins along the crankshaft [mm]
 */
export function drawLayout(spacing: number, random: Random): CylinderLayout {
  const kind = pick(kinds, random);
  const cylinders = pick(kind.cylinders, random);
  const bankAngle = pick(kind.bankAngles, random);
  const rods = pick(kind.rodsPerPin, random);
  const pins = cylinders / rods;
  const order = shuffled(
    Array.from({ length: pins }, (_, pin) => pin),
    random,
  );
  const later = random() < 0.3 ? TURN : 0;
  const throws = Array.from({ length: cylinders }, (_, index) => {
    const pin = Math.floor(index / rods);
    const right = bankAngle > 0 && index % 2 === 1;
    const bank = right ? -bankAngle / 2 : bankAngle / 2;
    const first = (order.indexOf(pin) * CYCLE) / pins;
    const fires = rods === 2 && right ? first + bank - bankAngle / 2 + later : first;
    return {
      pin: `${wrapped(bank - fires, TURN)} deg`,
      bank: `${bank} deg`,
      position: `${pin * spacing + (rods === 2 && right ? spacing / 4 : 0)} mm`,
      fires: `${wrapped(fires, CYCLE)} deg`,
    };
  });
  return {
    block: {
      layout: kind.layout,
      cylinders: String(cylinders),
      bankAngle: `${bankAngle} deg`,
      mainBearings: String(Math.max(2, kind.layout === "vee" || random() < 0.9 ? pins + 1 : pins)),
    },
    crankshaft: { rodsPerPin: String(rods), throws },
  };
}
