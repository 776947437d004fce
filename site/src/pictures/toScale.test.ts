import { readdirSync, readFileSync } from "node:fs";
import { h } from "preact";
import { render } from "preact-render-to-string";
import { Nominals, readBuildText } from "trialfit";
import { describe, expect, it } from "vitest";
import { BoltedJoint } from "./BoltedJoint.tsx";
import { Flywheel } from "./Flywheel.tsx";
import { JournalBearing, playFactor } from "./JournalBearing.tsx";
import { Mechanism } from "./Mechanism.tsx";
import { PinSection } from "./PinSection.tsx";
import { RingPack } from "./RingPack.tsx";
import { bearingOf } from "./scene/bearingOf.ts";
import { flywheelOf } from "./scene/flywheelOf.ts";
import { jointOf } from "./scene/jointOf.ts";
import { pinSectionOf } from "./scene/pinSectionOf.ts";
import { ringPackOf } from "./scene/ringPackOf.ts";
import { sceneOf } from "./scene/sceneOf.ts";
import { throwSideOf } from "./scene/throwSideOf.ts";
import { valveSpringOf } from "./scene/valveSpringOf.ts";
import { ThrowSide } from "./ThrowSide.tsx";
import { ValveSpring } from "./ValveSpring.tsx";

const folder = new URL("../../../packages/core/demo/", import.meta.url);
const builds = readdirSync(folder)
  .filter((file) => file.endsWith(".yaml"))
  .map((file) => readBuildText(readFileSync(new URL(file, folder), "utf8"), file))
  .map((build) => [build.name, new Nominals(build)] as const);

/** Units of the picture for a millimetre, by each of its scale bars: what the bar is long, over what it says. */
function scales(svg: string): readonly number[] {
  const bars = svg.matchAll(/class="scale" d="[^"]*?h([\d.]+)M[^"]*"[^>]*><\/path><text[^>]*>([\d.]+) mm/g);
  return [...bars].map(([, long, says]) => Number(long) / Number(says));
}

/** Numbers of an attribute of everything of a class. */
function sizes(svg: string, kind: string, attribute: string): readonly number[] {
  return [...svg.matchAll(/<(?:rect|circle) ([^>]*)>/g)]
    .map(([, attributes]) => attributes!)
    .filter((attributes) => attributes.includes(`class="${kind}"`))
    .map((attributes) => Number(new RegExp(`(?:^| )${attribute}="([\\d.-]+)"`).exec(attributes)?.[1]));
}

describe.each(builds)("%s, measured in the drawing", (_, nominals) => {
  const mm = (path: string) => nominals.size(path)! * 1e3;

  it("the cylinder is as wide, and its scale bar as long, as they say", () => {
    const svg = render(h(Mechanism, { scene: sceneOf(nominals, 1) }));
    const [perMm] = scales(svg);
    expect(Number(/scale\(([\d.]+)\)/.exec(svg)![1])).toBeCloseTo(perMm!, 6);
    expect(sizes(svg, "part", "r")).toContainEqual(expect.closeTo(mm("crankshaft.crankpinDiameter") / 2, 6));
    expect(sizes(svg, "part", "r")).toContainEqual(expect.closeTo(mm("pistonPin.outerDiameter") / 2, 6));
  });

  it("bolts are clamped and engaged as long as they say", () => {
    let counted = 0;
    for (const part of ["rodBolt", "mainFastener", "headFastener", "flywheelFastener"] as const) {
      const svg = render(h(BoltedJoint, { joint: jointOf(nominals, part) }));
      const [perMm] = scales(svg);
      expect(sizes(svg, "piston", "height")[0]! / perMm!).toBeCloseTo(mm(`${part}.grip`), 3);
      const [shank, thread] = sizes(svg, "chief", "height").map((one) => one / perMm!);
      expect(shank! + thread!).toBeCloseTo(mm(`${part}.grip`) + mm(`${part}.engagement`), 3);
      expect(sizes(svg, "chief", "width")[1]! / perMm!).toBeCloseTo(mm(`${part}.threadDiameter`), 3);
      counted += 1;
    }
    expect(counted).toBe(4);
  });

  it("the play of a bearing is drawn as many times too wide as it says", () => {
    for (const which of ["main", "rod"] as const) {
      const bearing = bearingOf(nominals, which);
      if (bearing.state !== "value") throw new Error(bearing.state);
      const svg = render(h(JournalBearing, { bearing }));
      const [shell] = sizes(svg, "part", "r");
      const [journal] = sizes(svg, "chief", "r");
      const [housing] = sizes(svg, "piston", "r");
      const perMm = (2 * housing!) / bearing.housing;
      expect((2 * shell!) / perMm).toBeCloseTo(bearing.journal + bearing.clearance, 3);
      const factor = (2 * (shell! - journal!)) / perMm / bearing.clearance;
      expect(Math.abs(factor / playFactor(bearing) - 1)).toBeLessThan(0.05);
    }
  });

  it("lands, grooves, rings and pin bore lie where their sizes put them", () => {
    const pack = ringPackOf(nominals);
    if (pack.state !== "value") throw new Error(pack.state);
    const { grooves, depth, pinDepth, pinRadius, overPin } = pack;
    expect(grooves).toHaveLength(3);
    expect(grooves.at(-1)!.top + grooves.at(-1)!.height).toBeCloseTo(depth, 6);
    expect(pinDepth - pinRadius - depth).toBeCloseTo(overPin, 6);
    const svg = render(h(RingPack, { pack }));
    expect(svg.includes("mark struck")).toBe(overPin < 0);
    // What is said of a groove and its ring differs by the clearance between them.
    const [groove, ring] = [/top groove ([\d.]+)</, />ring ([\d.]+)</].map((said) =>
      Number(said.exec(svg)![1]),
    );
    expect(groove! - ring!).toBeCloseTo(mm("topRingSideClearance"), 6);
    expect(svg.match(/>ring /g)).toHaveLength(3);
    const large = scales(svg)[1]!;
    const rings = sizes(svg, "solid", "height");
    expect(rings).toHaveLength(3);
    expect(rings[0]! / large).toBeCloseTo(mm("ringSet.topRingHeight"), 3);
    expect(sizes(svg, "solid", "width")[0]! / large).toBeCloseTo(mm("ringSet.topRingRadialThickness"), 3);
  });

  it("pin, throw, spring and flywheel are as large as they say", () => {
    const pin = render(h(PinSection, { pin: pinSectionOf(nominals) }));
    expect(sizes(pin, "part", "width")[0]! / scales(pin)[0]!).toBeCloseTo(mm("pistonPin.length"), 3);
    const side = throwSideOf(nominals);
    const web = render(h(ThrowSide, { side }));
    expect(sizes(web, "piston", "width")[0]! / scales(web)[0]!).toBeCloseTo(mm("crankshaft.webThickness"), 3);
    if (side.state !== "value") throw new Error(side.state);
    expect((side.main + side.pin) / 2 - side.throwRadius).toBeCloseTo(side.overlap, 6);
    const spring = render(h(ValveSpring, { valve: valveSpringOf(nominals, "inlet") }));
    expect(Number(/scale\(([\d.]+)\)/.exec(spring)![1])).toBeCloseTo(scales(spring)[0]!, 6);
    const coils = sizes(spring, "part", "cy");
    const wire = mm("valveSpring.wireDiameter");
    const half = coils.length / 2;
    const high = (ends: readonly number[]) => Math.max(...ends) - Math.min(...ends) + wire;
    const lift = mm("inletValveLift");
    expect(high(coils.slice(0, half)) - high(coils.slice(half))).toBeGreaterThan(0.85 * lift);
    expect(high(coils.slice(0, half))).toBeLessThanOrEqual(mm("valveSpring.installedHeight") + 1e-6);
    const wheel = render(h(Flywheel, { wheel: flywheelOf(nominals) }));
    expect((2 * sizes(wheel, "piston", "r")[0]!) / scales(wheel)[0]!).toBeCloseTo(
      mm("flywheel.outerDiameter"),
      3,
    );
  });
});
