/** A thread by its usual name: major diameter and pitch, as the build file writes them. */
export interface Thread {
  readonly diameter: string;
  readonly pitch: string;
  /** Stress area as its standard prints it, where it lists the thread; held against the standard's formula in the tests. */
  readonly stressArea?: string;
}

function metric(diameter: number, pitch: number, area?: string): readonly [string, Thread] {
  const sizes = { diameter: `${diameter} mm`, pitch: `${pitch} mm` };
  return [`M${diameter}x${pitch}`, area === undefined ? sizes : { ...sizes, stressArea: `${area} mm2` }];
}

const inch = (size: string, perInch: number, area: string): readonly [string, Thread] => [
  `${size}-${perInch}`,
  { diameter: `${size} in`, pitch: `1/${perInch} in`, stressArea: `${area} in2` },
];

/**
 * Threads of engine fasteners. A thread's name states its sizes, so there is nothing to recall but which are usual.
 * Source: ISO 261, ISO 262 and ISO 724 (metric sizes), ISO 898-1 (metric stress areas, coarse and fine), ASME B1.1
 * (UNC and UNF, as printed in Shigley's Mechanical Engineering Design). Areas that are not in the published rows of
 * the tests are from memory. M9 and M11 stand in no table of ISO 898-1.
 */
export const threads: Readonly<Record<string, Thread>> = Object.fromEntries([
  metric(6, 1, "20.1"),
  metric(7, 1, "28.9"),
  metric(8, 1.25, "36.6"),
  metric(8, 1, "39.2"),
  metric(9, 1),
  metric(10, 1.5, "58.0"),
  metric(10, 1.25, "61.2"),
  metric(10, 1, "64.5"),
  metric(11, 1.5),
  metric(11, 1.25),
  metric(12, 1.75, "84.3"),
  metric(12, 1.5, "88.1"),
  metric(12, 1.25, "92.1"),
  metric(14, 2, "115"),
  metric(14, 1.5, "125"),
  metric(16, 2, "157"),
  metric(16, 1.5, "167"),
  inch("1/4", 20, "0.0318"),
  inch("1/4", 28, "0.0364"),
  inch("5/16", 18, "0.0524"),
  inch("5/16", 24, "0.058"),
  inch("3/8", 16, "0.0775"),
  inch("3/8", 24, "0.0878"),
  inch("7/16", 14, "0.1063"),
  inch("7/16", 20, "0.1187"),
  inch("1/2", 13, "0.1419"),
  inch("1/2", 20, "0.160"),
  inch("9/16", 12, "0.182"),
  inch("9/16", 18, "0.203"),
  inch("5/8", 11, "0.226"),
  inch("5/8", 18, "0.256"),
]);
