import { fieldLabel } from "trialfit";
import { angleWords } from "./draw/angleWords.ts";
import { ContactMark } from "./draw/ContactMark.tsx";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture, WIDTH } from "./draw/Picture.tsx";
import { hatchPath, linePath, shapePath } from "./draw/path.ts";
import { ScaleBar } from "./draw/ScaleBar.tsx";
import type { Box, ContactScene, MechanismScene, NoScene } from "./scene/Scene.ts";

interface Props {
  /** From `sceneOf(nominals, angle)`; give a new one for every angle. */
  readonly scene: MechanismScene | NoScene;
  /** Id of the trace whose nearest place is marked; the nearest of all when left out, `none` for no mark. */
  readonly mark?: string;
  /** Name of the build, for the description. */
  readonly name?: string;
  /** Lines of text under the drawing, said in its description as well. */
  readonly notes?: readonly string[];
}

const TOP = 24;
const BOTTOM = 28;
/** Tallest that the engine is drawn, in units of the picture. */
const MOST_HEIGHT = 470;
const HATCH = 4;

/** The nearest place that a picture marks. */
export function markedContact({ contacts }: MechanismScene, mark?: string): ContactScene | undefined {
  return mark === undefined ? contacts[0] : contacts.find(({ trace }) => trace === mark);
}

/** What the picture shows, in words with its numbers. */
export function describeMechanism(
  scene: MechanismScene,
  { name, mark, notes = [] }: Omit<Props, "scene"> = {},
): string {
  const one = markedContact(scene, mark);
  const near = one === undefined ? "" : ` ${one.name}: ${one.text}.`;
  return `One cylinder${name === undefined ? "" : ` of ${name}`} in section, to scale, ${angleWords(scene.angle)}.${near}${notes.map((note) => ` ${note}.`).join("")}`;
}

const boxes = (of: readonly Box[], kind: string) =>
  of.map((box) => <rect class={kind} x={box.x} y={box.y} width={box.width} height={box.height} />);

/** One cylinder in section at a crank angle, to scale, with the nearest place marked. */
export function Mechanism({ scene, ...telling }: Props) {
  if (scene.state !== "value") return <NotDrawn scene={scene} />;
  const { box } = scene;
  const perMm = Math.min((WIDTH - 8) / box.width, MOST_HEIGHT / box.height);
  const left = (WIDTH - box.width * perMm) / 2 - box.x * perMm;
  const top = TOP - box.y * perMm;
  const height = TOP + box.height * perMm + BOTTOM;
  const contact = markedContact(scene, telling.mark);
  return (
    <Picture height={height} notes={telling.notes ?? []} description={describeMechanism(scene, telling)}>
      <g transform={`translate(${left} ${top}) scale(${perMm})`}>
        <Behind scene={scene} />
        <Fixed scene={scene} />
        <Moving scene={scene} />
      </g>
      <text class="strong" x={6} y={15}>
        {angleWords(scene.angle)}
      </text>
      <ScaleBar x={8} y={height - 12} perMm={perMm} most={110} />
      <text x={WIDTH - 6} y={height - 8} text-anchor="end">
        to scale
      </text>
      {contact && (
        <ContactMark
          contact={contact}
          at={(point) => ({ x: left + point.x * perMm, y: top + point.y * perMm })}
        />
      )}
    </Picture>
  );
}

/** Crank, camshaft and what stands behind the rod. */
function Behind({ scene: { crank, surroundings } }: { readonly scene: MechanismScene }) {
  const { camshaft, crankcase } = surroundings;
  return (
    <g>
      {crankcase !== undefined && <circle class="fine" r={crankcase} />}
      <circle class="fine" r={crank.throwRadius} />
      {crank.counterweightRadius !== undefined && <circle class="dashed" r={crank.counterweightRadius} />}
      <path class="behind" d={shapePath(crank.counterweight)} />
      {crank.mainJournal !== undefined && <circle class="part" r={crank.mainJournal} />}
      {camshaft && (
        <g>
          <circle class="dashed" cx={camshaft.x} cy={camshaft.y} r={camshaft.sweep} />
          <circle class="part" cx={camshaft.x} cy={camshaft.y} r={camshaft.base} />
        </g>
      )}
    </g>
  );
}

/** Walls, gasket, head, rails: what stands still. */
function Fixed({ scene: { cylinder, surroundings } }: { readonly scene: MechanismScene }) {
  return (
    <g>
      {cylinder && (
        <g>
          {boxes(cylinder.metal, "cut")}
          <path class="hatch" d={cylinder.metal.map((box) => hatchPath(box, HATCH)).join("")} />
          {boxes(cylinder.liners, "part")}
          {boxes(cylinder.gasket, "solid")}
          {cylinder.chord.map((line) => (
            <path class="dashed" d={linePath(line)} />
          ))}
        </g>
      )}
      {surroundings.rails.map((rail) => (
        <path class="cut" d={shapePath(rail)} />
      ))}
      {surroundings.squirter && (
        <circle
          class="solid"
          cx={surroundings.squirter.x}
          cy={surroundings.squirter.y}
          r={Math.max(surroundings.squirter.radius, 0.8)}
        />
      )}
    </g>
  );
}

/** Piston, rod, pin, valves. */
function Moving({ scene: { piston, rod, crank, valves } }: { readonly scene: MechanismScene }) {
  return (
    <g>
      {valves.map(({ stem, head }) => (
        <g>
          <path class="part" d={shapePath(stem)} />
          <path class="part" d={shapePath(head)} />
        </g>
      ))}
      {piston && (
        <g transform={`translate(${piston.at.x} ${piston.at.y})`}>
          {piston.boss && boxes([piston.boss], "behind")}
          <path class="piston" d={shapePath(piston.section)} />
          {piston.pockets.map((pocket) => (
            <path class="hollow" d={shapePath(pocket)} />
          ))}
          {boxes(piston.rings, "solid")}
        </g>
      )}
      {rod.shapes.map((shape) => (
        <path class="chief-edge" d={shapePath(shape)} />
      ))}
      {rod.discs.map(({ x, y, radius }) => (
        <circle class="chief-edge" cx={x} cy={y} r={radius} />
      ))}
      {rod.shapes.map((shape) => (
        <path class="chief-fill" d={shapePath(shape)} />
      ))}
      {rod.discs.map(({ x, y, radius }) => (
        <circle class="chief-fill" cx={x} cy={y} r={radius} />
      ))}
      {rod.parting.length === 4 && (
        <path class="chief-line" d={linePath(rod.parting.slice(0, 2)) + linePath(rod.parting.slice(2))} />
      )}
      {rod.bores.map(({ x, y, radius }) => (
        <circle class="part" cx={x} cy={y} r={radius} />
      ))}
      {piston?.pin && (
        <g transform={`translate(${piston.at.x} ${piston.at.y})`}>
          <circle class="part" r={piston.pin.radius} />
          {piston.pinHole !== undefined && <circle class="behind" r={piston.pinHole} />}
        </g>
      )}
      {crank.crankpin.radius !== undefined && (
        <circle class="part" cx={crank.crankpin.x} cy={crank.crankpin.y} r={crank.crankpin.radius} />
      )}
      <path class="fine" d={linePath(rod.axis)} />
      <path class="line" d="M-4 0H4M0 -4V4" />
    </g>
  );
}

/** What would add to the picture, for a caption. */
export function leftOutWords({ leftOut }: MechanismScene): string {
  return leftOut.map(fieldLabel).join(", ");
}
