import { test } from "@fast-check/vitest";
import { between, MPa, mm, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { type CurvedSection, curvedBeamStress } from "./curvedBeamStress.ts";

const section: CurvedSection = { innerRadius: 25.5 * mm, depth: 8 * mm, width: 20 * mm };

// Shigley's Mechanical Engineering Design, crane hook of figure 3-35: inside radius 2 in, outside 6 in, 0.75 in thick;
// its stresses are printed in the figure, its load of 5000 lbf is from memory.
test("published: the crane hook, 16.9 and -5.63 kpsi", () => {
  const hook = { innerRadius: 2, depth: 4, width: 0.75 };
  const { inner, outer } = curvedBeamStress(hook, { tension: 5000, moment: 5000 * 4 });
  near(inner, 16_900, 50);
  near(outer, -5630, 5);
});

const load = { tension: 10_000, moment: 60 };

test.prop([between(3, 6)])("a slender beam is a straight one: N / A ± 6 M / (b h^2)", (decades) => {
  const slender = { ...section, innerRadius: 10 ** decades * section.depth };
  const { inner, outer } = curvedBeamStress(slender, load);
  const [direct, bending] = [
    load.tension / (section.depth * section.width),
    (6 * load.moment) / (section.width * section.depth ** 2),
  ];
  nearly(inner, direct + bending, 10 ** -decades);
  nearly(outer, direct - bending, 10 ** -decades);
});

test.prop([between(5, 200), between(2, 40), between(-200, 200), between(-3e4, 3e4)])(
  "the stresses across the section come back to the load",
  (innerRadius, depth, moment, tension) => {
    const whole = { innerRadius: innerRadius * mm, depth: depth * mm, width: 20 * mm };
    const { inner, outer } = curvedBeamStress(whole, { tension, moment });
    // Winkler: sigma = p + q / r. Both from the two sides, then summed over the section.
    const [ri, ro] = [whole.innerRadius, whole.innerRadius + whole.depth];
    const q = (inner - outer) / (1 / ri - 1 / ro);
    const p = inner - q / ri;
    const [b, log, middle] = [whole.width, Math.log(ro / ri), (ri + ro) / 2];
    near(
      b * (p * whole.depth + q * log),
      tension,
      1e-7 * (Math.abs(tension) + Math.abs(moment) / middle + 1),
    );
    const about = b * ((p * (ro ** 2 - ri ** 2)) / 2 + q * whole.depth) - tension * middle;
    near(-about, moment, 1e-7 * (Math.abs(moment) + Math.abs(tension) * middle + 1e-3));
  },
);

test("the series takes over from the closed form without a step", () => {
  const at = (x: number) =>
    curvedBeamStress({ ...section, innerRadius: section.depth / (2 * x) - section.depth / 2 }, load);
  nearly(at(0.02 - 1e-9).inner, at(0.02 + 1e-9).inner, 1e-8);
});

test("boundary", () => {
  const { inner, outer } = curvedBeamStress(section, { tension: 16_000, moment: 0 });
  nearly(inner, 100 * MPa);
  nearly(outer, 100 * MPa);
  refuses(() => curvedBeamStress({ ...section, innerRadius: 0 }, load), "innerRadius");
  refusesNonFinite(curvedBeamStress, section, load);
});
