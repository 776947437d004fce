import { useEffect } from "preact/hooks";
import type { SolvePhase } from "trialfit";
import type { ChoosingGround, SizeText } from "../../choosingProtocol.ts";
import type { Wanted } from "../../protocol.ts";
import type { BenchState } from "../../state/BenchState.ts";
import { choosing } from "../../state/ChoosingStore.ts";
import { Seeking } from "./Seeking.tsx";
import { SolutionAnswer } from "./SolutionAnswer.tsx";

interface Props {
  readonly wanted: readonly { readonly path: string; readonly label: string; readonly entry: Wanted }[];
  readonly state: BenchState;
  readonly now: ChoosingGround;
  readonly nameOf: (path: string) => string | undefined;
  readonly goTo: (path: string) => void;
  readonly called: number;
  readonly take: (sizes: readonly SizeText[]) => void;
}

const BUTTON = "find-sizes";
/** The last call that was followed: coming back from another view is none. */
let heard = 0;
const doing = {
  sizes: "Finding the sizes…",
  rules: "Judging the build with the sizes found…",
} as const satisfies Record<SolvePhase, string>;

/** Within what a size is looked for, where that is said. */
function within({ from, to, step }: Wanted): string {
  const between = from === "" && to === "" ? "" : ` from ${from || "its least"} to ${to || "its most"}`;
  return `${between}${step === "" ? "" : ` in steps of ${step}`}`;
}

/** The sizes that are to be found, the button that finds them, and the answer. */
export function SizesPanel({ wanted, state, now, nameOf, goTo, called, take }: Props) {
  useEffect(() => {
    if (called === heard) return;
    heard = called;
    const button = document.getElementById(BUTTON);
    button?.scrollIntoView({ block: "center" });
    button?.focus({ preventScroll: true });
  }, [called]);
  const asked = choosing.sizes;
  const isAbout = choosing.isAbout(now);
  const aims = Object.keys(state.entries).filter((path) => path.startsWith("aims.")).length;
  const said =
    asked?.failure !== undefined
      ? "The sizes could not be sought."
      : (asked?.view?.lead.map(({ text }) => text).join(" ") ?? "");
  return (
    <section class="choosing" aria-labelledby="choosing-sizes">
      <h3 id="choosing-sizes">Sizes to be found</h3>
      {wanted.length > 0 && (
        <ul class="wanted-sizes">
          {wanted.map(({ path, label, entry }) => (
            <li key={path}>
              <button type="button" class="link" onClick={() => goTo(path)}>
                {label}
              </button>
              <span class="quiet">{within(entry)}</span>
            </li>
          ))}
        </ul>
      )}
      {wanted.length > 0 && aims === 0 && (
        <p>
          What are they to reach?{" "}
          <button type="button" class="link" onClick={() => goTo("aims.quantity")}>
            State an aim
          </button>
          : a quantity, with a value or a bound.
        </p>
      )}
      {wanted.length > 0 && (
        <Seeking
          words={{ begin: "Find the sizes", end: "Stop looking", anew: "Find them anew" }}
          id={BUTTON}
          doing={asked?.progress === undefined ? undefined : doing[asked.progress]}
          said={said}
          answered={asked?.view !== undefined}
          disabled={aims === 0 && asked?.progress === undefined}
          begin={() => choosing.find(now)}
          end={() => choosing.leave("find")}
        />
      )}
      {asked?.failure !== undefined && (
        <p class="trouble" role="alert">
          {asked.failure}
        </p>
      )}
      {asked?.view !== undefined && (
        <>
          {!isAbout && (
            <p class="trouble" role="status">
              The build has changed since these were found: find them anew before one is taken.
            </p>
          )}
          <SolutionAnswer
            view={asked.view}
            isAbout={isAbout}
            entries={state.entries}
            nameOf={nameOf}
            goTo={goTo}
            take={take}
          />
        </>
      )}
    </section>
  );
}
