import { angleWords } from "./draw/angleWords.ts";
import { BehindRod } from "./draw/BehindRod.tsx";
import { ContactMark } from "./draw/ContactMark.tsx";
import { MovingParts } from "./draw/MovingParts.tsx";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture, WIDTH } from "./draw/Picture.tsx";
import { ScaleBar } from "./draw/ScaleBar.tsx";
import { StandingParts } from "./draw/StandingParts.tsx";
import { markedContact } from "./scene/markedContact.ts";
import type { Box, MechanismScene, NoScene } from "./scene/Scene.ts";

interface Props {
  /** From `sceneOf(nominals, angle)`; give a new one for every angle. */
  readonly scene: MechanismScene | NoScene;
  /** Id of the trace whose nearest place is marked; the nearest of all when left out, `none` for no mark. */
  readonly mark?: string;
  /** Name of the build, for the description. */
  readonly name?: string;
  /** What is drawn, where two pictures are to have one scale: both their boxes (`commonBox`). */
  readonly frame?: Box;
  /** Lines of text under the drawing, said in its description as well. */
  readonly notes?: readonly string[];
}

const TOP = 24;
const BOTTOM = 28;
/** Tallest that the engine is drawn, in units of the picture. */
const MOST_HEIGHT = 470;

/** What the picture shows, in words with its numbers. */
export function describeMechanism(
  scene: MechanismScene,
  { name, mark, notes = [] }: Omit<Props, "scene" | "frame"> = {},
): string {
  const one = markedContact(scene, mark);
  const near = one === undefined ? "" : ` ${one.name}: ${one.text}.`;
  return `One cylinder${name === undefined ? "" : ` of ${name}`} in section, to scale, ${angleWords(scene.angle)}.${scene.bank === undefined ? "" : ` ${scene.bank}.`}${near}${notes.map((note) => ` ${note}.`).join("")}`;
}

/** One cylinder in section at a crank angle, to scale, with the nearest place marked. */
export function Mechanism({ scene, frame, ...telling }: Props) {
  if (scene.state !== "value") return <NotDrawn scene={scene} />;
  const box = frame ?? scene.box;
  const perMm = Math.min((WIDTH - 8) / box.width, MOST_HEIGHT / box.height);
  const left = (WIDTH - box.width * perMm) / 2 - box.x * perMm;
  const top = TOP - box.y * perMm;
  const height = TOP + box.height * perMm + BOTTOM;
  const contact = markedContact(scene, telling.mark);
  const notes = [...(scene.bank === undefined ? [] : [scene.bank]), ...(telling.notes ?? [])];
  return (
    <Picture height={height} notes={notes} description={describeMechanism(scene, telling)}>
      <g transform={`translate(${left} ${top}) scale(${perMm})`}>
        <BehindRod scene={scene} />
        <StandingParts scene={scene} />
        <MovingParts scene={scene} />
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
