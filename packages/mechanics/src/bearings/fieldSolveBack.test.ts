import { falls, goesAs, rises, solvesBack } from "../check/solvesBack.test-support.ts";
import { deg, kN, mm, rpm, um } from "../check/support.test-support.ts";
import { CYCLE_SAMPLES } from "../loads/crankpinLoadCycle.ts";
import { leastFilmOverCycle } from "./leastFilmOverCycle.ts";
import { mainBearingLoads } from "./mainBearingLoads.ts";
import { reynoldsFilm } from "./reynoldsFilm.ts";

/** A film is solved in milliseconds: few drawn ones, on a coarse mesh. */
const FEW = 2;
const coarse = { around: 60, along: 8 };
const film = { eccentricity: falls(0.2, 0.85), lengthRatio: falls(0.3, 1.2) };
solvesBack(reynoldsFilm, film, (v) => reynoldsFilm(v, coarse).sommerfeld, FEW);

// The path of the journal is the same for all bearings of one proportion under loads that grow with their area.
solvesBack(
  leastFilmOverCycle,
  { size: goesAs(1, 0.7, 1.5) },
  ({ size }) =>
    leastFilmOverCycle({
      viscosity: 8e-3,
      angularSpeed: 6000 * rpm,
      journalDiameter: 48 * mm * size,
      length: 18 * mm * size,
      radialClearance: 30 * um * size,
      load: (angle) => ({
        x: 4 * kN * size ** 2 * Math.sin(angle),
        y: size ** 2 * (9 * kN * Math.cos(angle / 2) ** 6 - 5 * kN * Math.cos(angle)),
      }),
      meanTurning: () => -0.5,
    }).film,
  FEW,
);

// At top dead centre of a throw that presses its bearings down the cylinder.
solvesBack(
  mainBearingLoads,
  {
    level: rises(30 * kN, 60 * kN),
    bank: falls(5 * deg, 80 * deg),
    balanceMass: falls(0.2, 1),
    throwRadius: falls(35 * mm, 50 * mm),
    angularSpeed: falls(3000 * rpm, 6000 * rpm),
  },
  ({ level, bank, ...crankshaft }) => {
    const rod = { x: new Float64Array(CYCLE_SAMPLES), y: new Float64Array(CYCLE_SAMPLES).fill(level) };
    const cylinders = [{ bank, position: 0, fires: 0 }];
    return mainBearingLoads({ ...crankshaft, rod, cylinders, rodsPerPin: 1 })[1]!.y[0]!;
  },
);
