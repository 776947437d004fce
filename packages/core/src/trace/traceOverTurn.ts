import { isContradiction } from "../derive/isContradiction.ts";
import type { Build } from "../read/Build.ts";
import { fields } from "../read/fieldCatalog.ts";
import { contactFrom, ownAngle } from "./atAngle.ts";
import { extremesOf } from "./extremesOf.ts";
import { Nominals } from "./Nominals.ts";
import type { Trace, TracePoint } from "./Trace.ts";
import type { Take, TraceKind } from "./TraceKind.ts";
import { traceKinds } from "./traceKinds.ts";

const TURN = 2 * Math.PI;
/** One degree: finer than any lobe of the motion, and the grid of the pressure. */
const PER_TURN = 360;

/** The point that an extreme means. */
function pointOf(take: Take, { least, greatest }: { least: TracePoint; greatest: TracePoint }): TracePoint {
  if (take === "greatest") return greatest;
  if (take === "size") return Math.abs(least.value) > Math.abs(greatest.value) ? least : greatest;
  return least;
}

/** Speeds among the inputs: a trace of forces holds for one speed only. */
function speedsOf({ inputs }: TraceKind): readonly string[] {
  return Object.values(inputs).filter((path) => {
    const spec = fields.get(path)?.spec;
    return spec?.kind === "dimension" && spec.unit === "rpm";
  });
}

function traceOf(nominals: Nominals, kind: TraceKind): Trace {
  const { id, name, meaning, unit, decimals } = kind;
  const named = { id, name, meaning, unit, decimals };
  const { missing, assumed, takenFor, take } = nominals.ask(kind);
  if (missing.length > 0) return { ...named, state: "missing", missing };
  try {
    const taken = take();
    const samples = kind.turns * PER_TURN;
    const angles = Array.from({ length: 2 * PER_TURN + 1 }, (_, index) => (index / PER_TURN) * TURN);
    const repeats = <T>(of: (angle: number) => T): readonly T[] => {
      const first = angles.slice(0, samples).map(of);
      return angles.map((_, index) => first[index % samples]!);
    };
    const contact = contactFrom(kind, taken);
    const places = contact && repeats(contact);
    const over = kind.over(taken);
    const value = (angle: number) => over(ownAngle(kind, angle));
    const values = places === undefined ? repeats(value) : places.map(({ clearance }) => clearance);
    const ends = extremesOf(angles.slice(0, samples + 1), values.slice(0, samples + 1), value);
    const [extreme] = kind.extremes;
    const marked = { ...pointOf(extreme.take, ends), extreme };
    return {
      ...named,
      state: "value",
      angles,
      values,
      ...ends,
      marked,
      ...(contact === undefined ? {} : { places: places!, markedPlace: contact(marked.angle) }),
      speeds: speedsOf(kind),
      assumed,
      takenFor,
    };
  } catch (error) {
    if (!isContradiction(error)) throw error;
    return { ...named, state: "impossible", reason: error.message };
  }
}

/**
 * What happens over two turns of the crankshaft, from firing top dead centre, at the nominal values of a build.
 * @param build a build, or its nominal values where the same build is asked again
 * @param kinds ids of `traceKinds`; every one when left out
 * @returns one trace for each, in the order asked: plain data in SI, or what is missing, or why it cannot be
 * @throws Error when there is no trace of that name
 */
export function traceOverTurn(
  build: Build | Nominals,
  kinds: Iterable<string> = traceKinds.keys(),
): readonly Trace[] {
  const nominals = build instanceof Nominals ? build : new Nominals(build);
  return [...kinds].map((id) => {
    const kind = traceKinds.get(id);
    if (kind === undefined) throw new Error(`no trace is called "${id}"`);
    return traceOf(nominals, kind);
  });
}
