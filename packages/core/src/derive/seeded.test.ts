import { describe, expect, it } from "vitest";
import { seeded, xoshiro128 } from "./seeded.ts";

const take = (random: () => number, count: number) => Array.from({ length: count }, random);

describe("seeded numbers", () => {
  it("are those of the reference program", () => {
    // From the reference program in C, printed in test-rom/testdata.asm of https://github.com/edorfaus/xoshiro-6502.
    const whole = xoshiro128([0x964d_4a0c, 0xd40a_b895, 0xad7f_decb, 0x3006_f0f0]);
    expect(take(whole, 4)).toEqual([0xf139_1922, 0x6fe5_3806, 0xa5be_2840, 0xf510_ee70]);
  });
  it("depend on seed, name and count, and on nothing else", () => {
    const of = (seed: number, name: string, count: number) => take(seeded(seed, name, count), 3).join();
    const all = [0, 1, 2 ** 32 - 1].flatMap((seed) =>
      ["block.bore", "block.deckHeight", ""].flatMap((name) =>
        [0, 1, 999_999].map((count) => of(seed, name, count)),
      ),
    );
    expect(new Set(all).size).toBe(27);
    expect(of(1, "block.bore", 0)).toBe(of(1, "block.bore", 0));
  });
  it("stay the same from release to release", () => {
    expect(take(seeded(1, "block.bore", 0), 3)).toMatchInlineSnapshot(`
      [
        0.24229985616443483,
        0.3415519045625638,
        0.4887512419420321,
      ]
    `);
  });
  it("lie evenly from 0 to 1, from the first of each on", () => {
    const firsts = Array.from({ length: 20_000 }, (_, count) => seeded(7, "block.bore", count)());
    const bins = Array.from({ length: 20 }, () => 0);
    for (const value of firsts) bins[Math.floor(value * 20)]! += 1;
    // Chi-square with 19 degrees of freedom: 43.8 is passed by 1 in 1000 (from memory).
    const chi = bins.reduce((total, count) => total + (count - 1000) ** 2 / 1000, 0);
    expect(chi).toBeLessThan(43.8);
    const mean = (list: readonly number[]) => list.reduce((total, one) => total + one, 0) / list.length;
    const followed = firsts.slice(1).map((value, index) => (value - 0.5) * (firsts[index]! - 0.5));
    expect(Math.abs(mean(followed))).toBeLessThan(4 / 12 / Math.sqrt(firsts.length));
  });
});
