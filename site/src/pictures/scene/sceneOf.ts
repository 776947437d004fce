import { bankTilts, pinHeight, requireSliderCrank } from "@trialfit/mechanics";
import type { Nominals } from "trialfit";
import { bankWords } from "./bankWords.ts";
import { boxOf } from "./boxOf.ts";
import { crankOf } from "./crankOf.ts";
import { cylinderOf } from "./cylinderOf.ts";
import { pistonOf } from "./pistonOf.ts";
import { rodContactsOf } from "./rodContactsOf.ts";
import { rodOf } from "./rodOf.ts";
import type { MechanismScene, NoScene } from "./Scene.ts";
import { Sizes } from "./Sizes.ts";
import { surroundingsOf } from "./surroundingsOf.ts";
import { toMm } from "./toMm.ts";
import { valveContacts } from "./valveContacts.ts";
import { valvesOf } from "./valvesOf.ts";

type SceneAt = (angle: number) => MechanismScene | NoScene;

const essential = ["throwRadius", "connectingRod.length", "pinLineOffset"] as const;
const kept = new WeakMap<Nominals, SceneAt[]>();

function prepare(nominals: Nominals, bank: number): SceneAt {
  const sizes = new Sizes(nominals);
  const [throwRadius, rodLength, pinLineOffset] = essential.map((path) => sizes.si(path));
  if (throwRadius === undefined || rodLength === undefined || pinLineOffset === undefined) {
    const { missing } = sizes;
    return () => ({ state: "missing", missing });
  }
  const crank = { throwRadius, rodLength, pinLineOffset };
  try {
    requireSliderCrank(crank);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    const { message: reason } = error;
    return () => ({ state: "impossible", reason });
  }
  const tilts = bankTilts(nominals.size("block.bankAngle") ?? 0);
  const tilt = tilts[bank] ?? tilts[0]!;
  const cylinder = cylinderOf(sizes);
  const piston = pistonOf(sizes);
  const surroundings = surroundingsOf(sizes, tilt);
  const [rodAt, crankAt, valvesAt] = [rodOf(sizes, crank), crankOf(sizes, crank), valvesOf(sizes)];
  const rodContacts = rodContactsOf(nominals, tilt);
  const box = boxOf({
    cylinder,
    // Of every bank: a picture that goes from one to the other keeps its place.
    surroundings: tilts.map((one) => surroundingsOf(sizes, one)),
    rodAt,
    crank: crankAt(0),
    valves: valvesAt(0),
  });
  const seenIn = bankWords(nominals, tilt);
  const leftOut = sizes.missing;
  return (angle) => {
    const valves = valvesAt(angle);
    const contacts = [...rodContacts(angle), ...valveContacts(valves)];
    return {
      state: "value",
      angle,
      bank: seenIn,
      box,
      cylinder,
      piston: piston && {
        ...piston,
        at: { x: toMm(pinLineOffset), y: -toMm(pinHeight(crank, angle)) },
      },
      rod: rodAt(angle),
      crank: crankAt(angle),
      valves,
      surroundings,
      contacts: contacts.sort((a, b) => a.clearance - b.clearance),
      leftOut,
    };
  };
}

/**
 * One cylinder of a build at a crank angle, as plain data to draw. What does not turn is worked out once for each
 * `Nominals`, so that a picture may follow the crankshaft; an angle takes some 2 ms.
 * @param nominals the build
 * @param angle from firing top dead centre [rad]
 * @param bank which bank, 0 or 1: they see the camshaft and the pan rails from different sides
 */
export function sceneOf(nominals: Nominals, angle: number, bank = 0): MechanismScene | NoScene {
  const banks = kept.get(nominals) ?? [];
  banks[bank] ??= prepare(nominals, bank);
  kept.set(nominals, banks);
  return banks[bank](angle);
}
