import type { MechanismScene } from "../scene/Scene.ts";
import { Boxes } from "./Boxes.tsx";
import { linePath, shapePath } from "./path.ts";

/** Piston, rod, pin, valves. */
export function MovingParts({ scene: { piston, rod, crank, valves } }: { readonly scene: MechanismScene }) {
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
          {piston.boss && <Boxes of={[piston.boss]} kind="behind" />}
          <path class="piston" d={shapePath(piston.section)} />
          {piston.pockets.map((pocket) => (
            <path class="hollow" d={shapePath(pocket)} />
          ))}
          <Boxes of={piston.rings} kind="solid" />
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
