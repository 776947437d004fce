import type { SliderCrank } from "@trialfit/mechanics";
import type { CrankScene, Point } from "./Scene.ts";
import type { Sizes } from "./Sizes.ts";
import { toMm } from "./toMm.ts";

/** Points on the rim of the counterweight. */
const ON_RIM = 24;

/** The throw with its counterweight at a crank angle; `crank(angle)` is cheap. */
export function crankOf(sizes: Sizes, { throwRadius }: SliderCrank): (angle: number) => CrankScene {
  const radius = toMm(throwRadius);
  const pin = sizes.mm("crankshaft.crankpinDiameter");
  const main = sizes.mm("crankshaft.mainJournalDiameter");
  const rim = sizes.mm("crankshaft.counterweightRadius");
  const halfSpan = sizes.si("crankshaft.counterweightHalfSpan");
  return (angle) => {
    const at = (turned: number, length: number): Point => ({
      x: length * Math.sin(angle + turned),
      y: -length * Math.cos(angle + turned),
    });
    const crankpin = at(0, radius);
    const arc =
      rim === undefined || halfSpan === undefined
        ? []
        : Array.from({ length: ON_RIM + 1 }, (_, step) =>
            at(Math.PI + halfSpan * ((2 * step) / ON_RIM - 1), rim),
          );
    const cheek = (pin ?? 0) / 2 + 4;
    // The cheek between rim and crankpin is not given: it is drawn as straight lines round the pin.
    const shoulders = [Math.PI / 2, -Math.PI / 2].map((way) => {
      const out = at(way, cheek);
      return { x: crankpin.x + out.x, y: crankpin.y + out.y };
    });
    const top = at(0, radius + cheek);
    return {
      throwRadius: radius,
      crankpin: { ...crankpin, radius: pin === undefined ? undefined : pin / 2 },
      mainJournal: main === undefined ? undefined : main / 2,
      counterweight: arc.length === 0 ? [] : [...arc, shoulders[1]!, top, shoulders[0]!],
      counterweightRadius: rim,
    };
  };
}
