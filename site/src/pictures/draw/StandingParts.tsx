import type { MechanismScene } from "../scene/Scene.ts";
import { Boxes } from "./Boxes.tsx";
import { hatchPath, linePath, shapePath } from "./path.ts";

/** Between the lines of cut metal [mm]. */
const HATCH = 4;

/** Walls, gasket, head, rails: what stands still. */
export function StandingParts({ scene: { cylinder, surroundings } }: { readonly scene: MechanismScene }) {
  return (
    <g>
      {cylinder && (
        <g>
          <Boxes of={cylinder.metal} kind="cut" />
          <path class="hatch" d={cylinder.metal.map((box) => hatchPath(box, HATCH)).join("")} />
          <Boxes of={cylinder.liners} kind="part" />
          <Boxes of={cylinder.gasket} kind="solid" />
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
