import { valveLength } from "./valveLength.ts";

/** The pocket in the piston’s crown under a valve. @param side index of the symbols */
export function pocketFields(side: "i" | "e") {
  const length = valveLength(side);
  return {
    pocketDepth: length(
      "Pocket depth",
      "p_",
      ["0 mm", "20 mm"],
      "0.1",
      "Depth of the pocket in the crown, square to its floor, measured from where the valve would meet the flat crown.",
      {
        assumed: {
          value: "0 mm ± 0",
          because: "no pocket is entered: the crown is taken as flat, which leaves the least room",
          unless: [`${side === "i" ? "inletValve" : "exhaustValve"}.pocketRadius`],
        },
      },
    ),
    pocketRadius: length(
      "Pocket radius",
      "R_p_",
      ["5 mm", "60 mm"],
      "0.1",
      "Radius of the pocket’s wall about its own axis.",
    ),
    pocketOffset: length(
      "Pocket offset",
      "e_p",
      ["-10 mm", "10 mm"],
      "0.3",
      "Pocket axis from valve axis at top dead centre, in the plane of the tilt; positive towards the side to which the stem leans.",
      {
        assumed: {
          value: "0 mm ± 0.5",
          because: "pockets stand within about half a millimetre of the valve (common practice)",
        },
      },
    ),
  };
}
