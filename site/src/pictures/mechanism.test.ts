import { readdirSync, readFileSync } from "node:fs";
import { type ComponentChildren, h, isValidElement, toChildArray, type VNode } from "preact";
import { render } from "preact-render-to-string";
import { formatNumber, Nominals, readBuildText, traceAt, traceKinds, traceOverTurn } from "trialfit";
import { describe, expect, it } from "vitest";
import { CurveChart } from "./CurveChart.tsx";
import { DeckStack } from "./DeckStack.tsx";
import { describeMechanism, Mechanism } from "./Mechanism.tsx";
import { curveNotes } from "./scene/curveNotes.ts";
import { deckStackOf } from "./scene/deckStackOf.ts";
import { nearestScene } from "./scene/nearestScene.ts";
import type { MechanismScene, NoScene, Point } from "./scene/Scene.ts";
import { sceneOf } from "./scene/sceneOf.ts";

const folder = new URL("../../../packages/core/demo/", import.meta.url);
const builds = readdirSync(folder)
  .filter((file) => file.endsWith(".yaml"))
  .map((file) => readBuildText(readFileSync(new URL(file, folder), "utf8"), file));
const angles = Array.from({ length: 72 }, (_, i) => (i / 18) * Math.PI);
const apart = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y);

const drawn = (nominals: Nominals, angle: number) => whole(sceneOf(nominals, angle));

function whole(scene: MechanismScene | NoScene): MechanismScene {
  if (scene.state !== "value") throw new Error(scene.state);
  return scene;
}

describe.each(builds.map((build) => [build.name, new Nominals(build)] as const))(
  "%s, drawn",
  (_, nominals) => {
    const mm = (path: string) => nominals.size(path)! * 1e3;

    it("keeps its lengths at every angle", () => {
      expect(angles.length).toBeGreaterThan(0);
      const heights: number[] = [];
      for (const angle of angles) {
        const { rod, crank, piston, cylinder, box } = drawn(nominals, angle);
        expect(apart(...rod.axis)).toBeCloseTo(mm("connectingRod.length"), 6);
        expect(apart({ x: 0, y: 0 }, crank.crankpin)).toBeCloseTo(mm("throwRadius"), 6);
        expect(apart(rod.axis[0], crank.crankpin)).toBeCloseTo(0, 6);
        expect(apart(rod.axis[1], piston!.at)).toBeCloseTo(0, 6);
        expect(cylinder!.right - cylinder!.left).toBeCloseTo(mm("block.bore"), 6);
        expect(box).toEqual(drawn(nominals, 0).box);
        const crown = piston!.at.y - mm("piston.compressionHeight");
        expect(Math.min(...piston!.section.map(({ y }) => y)) + piston!.at.y).toBeCloseTo(crown, 6);
        heights.push(crown - cylinder!.deck);
        for (const { x } of piston!.section)
          expect(Math.abs(x + piston!.at.x - (cylinder!.left + cylinder!.right) / 2)).toBeLessThan(
            mm("block.bore") / 2,
          );
      }
      expect(Math.min(...heights)).toBeCloseTo(mm("deckClearance"), 2);
      expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(mm("pistonStroke"), 2);
    });

    it("marks the nearest places as far apart as it says", () => {
      let counted = 0;
      for (const angle of angles.slice(0, 36))
        for (const { trace, from, to, clearance } of drawn(nominals, angle).contacts) {
          const uncertain = trace.startsWith("rodTo") ? mm("connectingRod.outlineTolerance") : 0;
          expect(apart(from, to)).toBeCloseTo(Math.abs(clearance * 1e3 + uncertain), 4);
          counted += 1;
        }
      expect(counted).toBeGreaterThan(100);
    });

    it("marks the catalog's least clearance at the catalog's angle, seen from the bank that it means", () => {
      const named = [
        ["rodToCylinderGap", "rodToCylinderAngle", "rodToCylinderClearance"],
        ["rodToPanRailGap", "rodToPanRailAngle", "rodToPanRail"],
        ["rodToCamshaftGap", "rodToCamshaftAngle", "rodToCamshaft"],
      ] as const;
      let counted = 0;
      for (const [trace, angle, least] of named) {
        const at = nominals.size(angle);
        if (at === undefined) continue;
        const { contacts } = whole(nearestScene(nominals, at, trace));
        expect(contacts.find((one) => one.trace === trace)!.clearance).toBeCloseTo(nominals.size(least)!, 6);
        counted += 1;
      }
      expect(counted).toBeGreaterThanOrEqual(2);
    });

    it("says of every gap what its curve says at the same angle, whichever bank that is", () => {
      const gaps = ["rodToCylinderGap", "rodToPanRailGap", "rodToCamshaftGap", "rodToSquirterGap"] as const;
      let counted = 0;
      for (const degrees of [0, 38, 90, 142, 218, 322, 398, 640]) {
        const angle = (degrees / 180) * Math.PI;
        const curve = gaps.flatMap((trace) => {
          const value = traceAt(nominals, trace)?.(angle);
          return value === undefined ? [] : [{ trace, value }];
        });
        for (const { trace, value } of curve) {
          const scene = whole(nearestScene(nominals, angle, trace));
          const marked = scene.contacts.find((one) => one.trace === trace)!;
          expect(marked.clearance, `${trace} at ${degrees}°`).toBeCloseTo(value, 9);
          expect(describeMechanism(scene, { mark: trace })).toContain(`: ${marked.text}.`);
          counted += 1;
        }
        const nearest = whole(nearestScene(nominals, angle)).contacts[0]!;
        expect(nearest.clearance).toBeLessThanOrEqual(Math.min(...curve.map(({ value }) => value)) + 1e-9);
      }
      expect(counted).toBeGreaterThanOrEqual(16);
    });

    it("says which bank and which cylinders it shows, where there are two", () => {
      const two = nominals.size("block.bankAngle") !== 0;
      const said = [0, 1].map((bank) => whole(sceneOf(nominals, 0, bank)).bank);
      expect(said).toEqual(
        two
          ? [
              "Bank that leans 45° with the rotation: cylinders 1, 3, 5, 7",
              "Bank that leans 45° against the rotation: cylinders 2, 4, 6, 8",
            ]
          : [undefined, undefined],
      );
    });

    it("says its numbers to people who do not see it", () => {
      const scene = drawn(nominals, nominals.size("rodToCylinderAngle")!);
      const html = render(h(Mechanism, { scene, mark: "rodToCylinderGap" }));
      const { text } = scene.contacts.find(({ trace }) => trace === "rodToCylinderGap")!;
      expect(html).toMatch(new RegExp(`role="img" aria-label="[^"]*${text}`));
      const stack = render(h(DeckStack, { stack: deckStackOf(nominals) }));
      expect(stack).toMatch(/role="img" aria-label="[^"]*Deck clearance: -?[\d.]+ mm/);
      const curves = render(
        h(CurveChart, { traces: traceOverTurn(nominals, ["rodForce", "sideForce"]), table: true }),
      );
      expect(curves).toMatch(/role="img" aria-label="[^"]*Force in the rod: -[\d.]+ kN to [\d.]+ kN/);
      expect(curves.match(/<th scope="row">/g)).toHaveLength(25);
    });
  },
);

it.each(builds.map((build) => new Nominals(build)))(
  "says at which speed a curve holds, wherever it holds at one only",
  (nominals) => {
    let count = 0;
    for (const trace of traceOverTurn(nominals, [...traceKinds.keys()])) {
      if (trace.state !== "value") continue;
      const notes = curveNotes([trace], nominals);
      expect(notes, trace.id).toHaveLength(trace.speeds.length > 0 ? 1 : 0);
      for (const path of trace.speeds) {
        expect(notes[0], trace.id).toContain(`${formatNumber(nominals.size(path)!, "rpm")} (`);
        expect(render(h(CurveChart, { traces: [trace], notes }))).toContain(trace.name);
        count += 1;
      }
    }
    expect(count).toBeGreaterThanOrEqual(11);
  },
);

it("a picture for which a size is missing, or cannot be, says so", () => {
  const [build] = builds;
  const values = new Map(build!.values);
  values.delete("connectingRod.length");
  const without = new Nominals({ ...build!, values });
  expect(sceneOf(without, 0)).toMatchObject({ state: "missing", missing: ["connectingRod.length"] });
  expect(render(h(DeckStack, { stack: deckStackOf(without) }))).toContain("Not drawn: it needs");
  const length = build!.values.get("connectingRod.length")!;
  if (length.kind !== "dimension") throw new Error("no length");
  const short = new Nominals({
    ...build!,
    values: values.set("connectingRod.length", { ...length, nominal: 0.03 }),
  });
  expect(sceneOf(short, 0)).toMatchObject({ state: "impossible" });
});

it("the slider of a chart stands at the cursor and hands on the angle that it is moved to", () => {
  const traces = traceOverTurn(builds[0]!, ["pistonTravel"]);
  const moved: number[] = [];
  const chart = CurveChart({ traces, angle: Math.PI, onAngle: (angle) => moved.push(angle) });
  const html = render(chart);
  expect(html).toMatch(/<input type="range" min="0" max="720" step="1" value="180"/);
  expect(html).toContain('aria-valuetext="180° after firing TDC"');
  const children = (node: VNode) =>
    toChildArray(node.props.children as ComponentChildren).filter(isValidElement);
  const slider = children(chart)
    .flatMap(children)
    .find(({ type }) => type === "input") as VNode<{ onInput: (event: object) => void }>;
  slider.props.onInput({ currentTarget: { valueAsNumber: 90 } });
  expect(moved).toEqual([Math.PI / 2]);
});
