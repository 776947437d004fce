import { positive, requireAll, requireThat } from "../check/requireAll.ts";

/** A layer of clamped metal. */
export interface ClampedLayer {
  /** along the fastener [m], > 0 */
  readonly length: number;
  /** [Pa], > 0 */
  readonly elasticModulus: number;
}

/** The zone of the clamped parts that a fastener presses: a cone that widens away from its head. */
export interface PressureZone {
  /** outer diameter of the face under head, nut or washer [m], above the hole's */
  readonly headDiameter: number;
  /** of the hole through the clamped parts [m], > 0 */
  readonly holeDiameter: number;
  /** of the metal round the fastener, beyond which the zone cannot spread [m], above the hole's */
  readonly outerDiameter: number;
  /** tangent of the half angle of the cone [-], > 0; see {@link pressureConeTangent} */
  readonly tangent: number;
  /** `nut`: a second cone widens from the nut and both meet at half the grip; `thread`: one cone, into a tapped part */
  readonly into: "nut" | "thread";
  /** from the head to the nut or the tapped part, at least one */
  readonly layers: readonly ClampedLayer[];
}

/** Below this relative change of width a slice is a plain sleeve: the closed form of the cone loses its digits. */
const SLEEVE = 1e-7;

/** Compliance of a slice whose outer diameter goes evenly from one value to another. */
function sliceCompliance(layer: ClampedLayer, from: number, to: number, hole: number): number {
  const { length, elasticModulus } = layer;
  const scale = (2 * length) / (Math.PI * elasticModulus);
  if (Math.abs(to - from) < SLEEVE * from) return (2 * scale) / (from ** 2 - hole ** 2);
  const ratio = ((to - hole) * (from + hole)) / ((to + hole) * (from - hole));
  return (scale / (hole * (to - from))) * Math.log(ratio);
}

/**
 * Elastic compliance of clamped parts by the zone that is pressed: a cone, cut off where the metal round the
 * fastener ends (a sleeve from there on), through layers of any metals.
 * @param zone sizes [m], tangent of the cone and layers
 * @returns compliance [m/N]
 * @throws RangeError when a value is out of range or there is no layer
 *
 * Source: VDI 2230-1 (deformation cone and sleeve); Shigley's Mechanical Engineering Design (member stiffness) is
 * the case of a head of 1.5 d, a hole of d and half angles of 30 degrees.
 */
export function pressureZoneCompliance(zone: PressureZone): number {
  const { headDiameter, holeDiameter, outerDiameter, tangent, into, layers } = zone;
  requireAll(positive, { holeDiameter, tangent });
  requireAll({ above: holeDiameter }, { headDiameter, outerDiameter });
  requireThat(layers.length > 0, "layers", layers.length, "at least one layer");
  for (const { length, elasticModulus } of layers) requireAll(positive, { length, elasticModulus });
  const grip = layers.reduce((sum, { length }) => sum + length, 0);
  const widthAt = (depth: number) => {
    const spread = into === "nut" ? Math.min(depth, grip - depth) : depth;
    return Math.min(outerDiameter, headDiameter + 2 * tangent * Math.max(0, spread));
  };
  // Between these depths the outer diameter runs straight.
  const full = (outerDiameter - headDiameter) / (2 * tangent);
  const bends = into === "nut" ? [full, grip / 2, grip - full] : [full];
  let top = 0;
  let compliance = 0;
  for (const { length, elasticModulus } of layers) {
    const bottom = top + length;
    const inside = bends.filter((depth) => depth > top && depth < bottom).sort((a, b) => a - b);
    const edges = [top, ...inside, bottom];
    for (let i = 1; i < edges.length; i++) {
      const [from, to] = [edges[i - 1]!, edges[i]!];
      if (to <= from) continue;
      compliance += sliceCompliance(
        { length: to - from, elasticModulus },
        widthAt(from),
        widthAt(to),
        holeDiameter,
      );
    }
    top = bottom;
  }
  return compliance;
}

/**
 * Tangent of the half angle of the pressed cone: about 0.6 (31 degrees) in wide thick parts, less in narrow ones.
 * A fit to finite-element results.
 * @param input.grip clamped length [m], > 0
 * @param input.headDiameter of the face under head or nut [m], > 0
 * @param input.outerDiameter of the metal round the fastener [m], at least the face's; beyond ten times the face it
 * counts as ten times
 * @param input.into `nut` or `thread`
 * @returns tangent [-]
 * @throws RangeError when a value is out of range, or where the fit gives no cone (very short grips)
 *
 * Source: VDI 2230-1 (coefficients from memory).
 */
export function pressureConeTangent(input: {
  grip: number;
  headDiameter: number;
  outerDiameter: number;
  into: "nut" | "thread";
}): number {
  const { grip, headDiameter, outerDiameter, into } = input;
  requireAll(positive, { grip, headDiameter });
  requireAll({ atLeast: headDiameter }, { outerDiameter });
  const slenderness = grip / headDiameter;
  const width = Math.min(WIDEST, outerDiameter / headDiameter);
  const tangent =
    into === "nut"
      ? 0.362 + 0.032 * Math.log(slenderness / 2) + 0.153 * Math.log(width)
      : 0.348 + 0.013 * Math.log(slenderness) + 0.193 * Math.log(width);
  requireThat(tangent > 0, "grip", grip, "a grip long enough for the fit");
  return tangent;
}

/** Widest part of the fit, in diameters of the face. */
const WIDEST = 10;
