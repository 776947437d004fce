import type { CellList } from "./CellList.ts";
import { orderBy } from "./orderBy.ts";

/** Cells of one element and one part that touch along the crank angle, so hold one valley or a few. */
export interface CellGroup {
  readonly curve: number;
  readonly part: number;
  /** crank angles in the middle of the first cell and of the last [rad] */
  readonly first: number;
  last: number;
  /** largest of its cells */
  halfAngle: number;
  halfT: number;
  /** along the element, middles of the outermost cells */
  from: number;
  to: number;
  /** no point of the group is nearer than this [m] */
  bound: number;
}

/**
 * Cells that can hold a distance below a given one, in groups.
 * @param cells of a sweep
 * @param below a distance that was found [m]
 */
export function cellGroups(cells: CellList, below: number): CellGroup[] {
  const kinds = new Map<number, CellGroup[]>();
  const lastHalf = new Map<number, number>();
  const order = orderBy(cells.angle, cells.length);
  for (let place = 0; place < cells.length; place++) {
    const i = order[place]!;
    const bound = cells.bound[i]!;
    if (bound >= below) continue;
    const [curve, part, angle] = [cells.curve[i]!, cells.part[i]!, cells.angle[i]!];
    const [halfAngle, t, halfT] = [cells.halfAngle[i]!, cells.t[i]!, cells.halfT[i]!];
    const kind = curve * 65_536 + part;
    const groups = kinds.get(kind) ?? [];
    if (groups.length === 0) kinds.set(kind, groups);
    const group = groups[groups.length - 1];
    if (group !== undefined && angle - group.last <= 1.01 * (halfAngle + lastHalf.get(kind)!)) {
      group.last = angle;
      group.halfAngle = Math.max(group.halfAngle, halfAngle);
      group.halfT = Math.max(group.halfT, halfT);
      group.from = Math.min(group.from, t);
      group.to = Math.max(group.to, t);
      group.bound = Math.min(group.bound, bound);
    } else {
      groups.push({ curve, part, first: angle, last: angle, halfAngle, halfT, from: t, to: t, bound });
    }
    lastHalf.set(kind, halfAngle);
  }
  // In the order of elements and parts, as equal bounds are looked at in this order.
  return [...kinds].sort(([a], [b]) => a - b).flatMap(([, groups]) => groups);
}
