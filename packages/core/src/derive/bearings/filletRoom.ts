import { shellToFilletClearance } from "@trialfit/mechanics";
import { quantity } from "../Quantity.ts";
import type { Bearing, Numbers, Paths } from "./Bearing.ts";

interface FilletRoom {
  readonly expect: string;
  /** Sizes from which the distance of the shell’s edge to the cheek follows when it is not measured. */
  readonly sizes: readonly (readonly [symbol: string, path: string, example: string])[];
  readonly assumes: string;
  readonly distance: (numbers: Numbers) => number;
  readonly expectBySizes: string;
}

/** Declares the room between a shell’s edge and the fillet of its journal. */
export function filletRoom(
  { prefix, word, part, index, clearance }: Bearing,
  { expect, sizes, assumes, distance, expectBySizes }: FilletRoom,
) {
  const shared = { r_f: "2.5 mm", [clearance[0]]: "0.056 mm", q_c: "0.8 mm", w_q: "1.2 mm" };
  const C = clearance[0];
  return quantity({
    id: `${prefix}FilletRoom`,
    name: `Room to the fillet, ${word}`,
    symbol: `c_f${index}`,
    unit: "mm",
    decimals: 3,
    system: "bearings",
    meaning: `Least radial room between the ${word} shell’s edge and the fillet of the journal, with the play taken to that side; negative when the shell rides on the fillet. Larger fillets of a stroked or strengthened crankshaft need wider chamfers.`,
    inputs: {
      r_f: "crankshaft.filletRadius",
      a_e: `${part}.edgeToCheek`,
      [C]: clearance[1],
      q_c: `${part}.chamferDepth`,
      w_q: `${part}.chamferWidth`,
      ...Object.fromEntries(sizes.map(([symbol, path]) => [symbol, path])),
    } as Paths,
    routes: [{ needs: ["a_e"] }, { needs: sizes.map(([symbol]) => symbol), assumes }],
    method:
      "Half the clearance and what the chamfer leaves, less the rise of the fillet’s circle, at both ends of the chamfer; the lesser.",
    compute: (n: Numbers, _words, _tables, route) =>
      shellToFilletClearance({
        filletRadius: n.r_f!,
        axialDistance: route === 0 ? n.a_e! : distance(n),
        bearingClearance: n[C]!,
        chamferDepth: n.q_c!,
        chamferWidth: n.w_q!,
      }),
    shape: "guarded",
    hot: {
      coldOnly: "shells and journal of one bearing grow along it alike to about a hundredth of a millimetre",
    },
    valid: "round fillets that meet cheek and journal smoothly; straight chamfers",
    sources: [{ id: "plane-geometry" }],
    examples: [
      { given: { ...shared, a_e: "1.5 mm" }, expect },
      {
        given: { ...shared, ...Object.fromEntries(sizes.map(([symbol, , example]) => [symbol, example])) },
        expect: expectBySizes,
      },
    ],
    display: true,
  });
}
