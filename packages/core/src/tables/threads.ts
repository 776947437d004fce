/** A thread by its usual name: major diameter and pitch, as the build file writes them. */
export interface Thread {
  readonly diameter: string;
  readonly pitch: string;
}

const metric = (diameter: number, pitch: number): readonly [string, Thread] => [
  `M${diameter}x${pitch}`,
  { diameter: `${diameter} mm`, pitch: `${pitch} mm` },
];
const inch = (size: string, perInch: number): readonly [string, Thread] => [
  `${size}-${perInch}`,
  { diameter: `${size} in`, pitch: `1/${perInch} in` },
];

/**
 * Threads of engine fasteners. A thread's name states its sizes, so there is nothing to recall but which are usual.
 * Source: ISO 261 and ISO 262 (metric sizes), ASME B1.1 (UNC and UNF).
 */
export const threads: Readonly<Record<string, Thread>> = Object.fromEntries([
  metric(6, 1),
  metric(7, 1),
  metric(8, 1.25),
  metric(8, 1),
  metric(9, 1),
  metric(10, 1.5),
  metric(10, 1.25),
  metric(10, 1),
  metric(11, 1.5),
  metric(11, 1.25),
  metric(12, 1.75),
  metric(12, 1.5),
  metric(12, 1.25),
  metric(14, 2),
  metric(14, 1.5),
  inch("1/4", 20),
  inch("1/4", 28),
  inch("5/16", 18),
  inch("5/16", 24),
  inch("3/8", 16),
  inch("3/8", 24),
  inch("7/16", 14),
  inch("7/16", 20),
  inch("1/2", 13),
  inch("1/2", 20),
  inch("9/16", 12),
  inch("9/16", 18),
  inch("5/8", 11),
  inch("5/8", 18),
]);
