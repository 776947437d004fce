import { type CriticalSpeed, criticalsWithin } from "@trialfit/mechanics";
import { formatNumber } from "../units/formatNumber.ts";
import { quantity } from "./Quantity.ts";

/** Beyond the twelfth order the gas torque of an engine has little left. Source: common practice. */
export const GREATEST_ORDER = 12;

interface CriticalsInRange {
  readonly id: string;
  readonly name: string;
  readonly symbol: string;
  readonly meaning: string;
  /** Symbol and path of the natural frequency, and an example of it. */
  readonly frequency: readonly [symbol: string, path: string, example: string];
  /** Which of the orders count. */
  readonly counts: (critical: CriticalSpeed) => boolean;
  readonly words: string;
  readonly expect: string;
}

/** Declares how many orders meet a natural frequency between the lowest and the highest speed, and lists them. */
export function criticalsInRange(declared: CriticalsInRange) {
  const { frequency, counts, words, expect, ...own } = declared;
  const [f, path, example] = frequency;
  const met = (n: Readonly<Record<string, number>>) =>
    criticalsWithin({
      angularFrequency: 2 * Math.PI * n[f]!,
      cylinders: n.z!,
      greatestOrder: GREATEST_ORDER,
      lowest: n.n_l!,
      highest: n.n!,
    }).filter(counts);
  return quantity({
    ...own,
    unit: "1",
    decimals: 0,
    system: "torsion",
    inputs: {
      [f]: path,
      z: "block.cylinders",
      n_l: "targets.lowestSpeed",
      n: "targets.speed",
    } as Readonly<Record<string, string>>,
    method: `Frequency over order, for the half and whole orders up to the twelfth; ${words} that give a speed from the lowest to the highest are counted.`,
    compute: (n) => met(n).length,
    listing: (n) =>
      met(n).map(({ order, angularSpeed, major }) => ({
        label: "order",
        text: `${order} at ${formatNumber(angularSpeed, "rpm", { decimals: 0 })}, ${major ? "major" : "minor"}`,
      })),
    shape: "guarded",
    valid: "at the nominal values; even firing: with uneven firing other orders can be as strong",
    sources: [{ id: "taylor" }],
    examples: [{ given: { [f]: example, z: "6", n_l: "1500 rpm", n: "7600 rpm" }, expect }],
    display: true,
    nominalOnly: true,
  });
}
