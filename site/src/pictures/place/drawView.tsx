import { type Nominals, traceKinds, traceOverTurn } from "trialfit";
import { BoltedJoint } from "../BoltedJoint.tsx";
import { CurveChart } from "../CurveChart.tsx";
import { DeckStack } from "../DeckStack.tsx";
import { radians } from "../draw/degrees.ts";
import { Flywheel } from "../Flywheel.tsx";
import { JournalBearing } from "../JournalBearing.tsx";
import { Mechanism } from "../Mechanism.tsx";
import { PinSection } from "../PinSection.tsx";
import { RingPack } from "../RingPack.tsx";
import { bearingOf } from "../scene/bearingOf.ts";
import { curveNotes } from "../scene/curveNotes.ts";
import { deckStackOf } from "../scene/deckStackOf.ts";
import { flywheelOf } from "../scene/flywheelOf.ts";
import { jointOf } from "../scene/jointOf.ts";
import { nearestScene } from "../scene/nearestScene.ts";
import { pinSectionOf } from "../scene/pinSectionOf.ts";
import type { KnownBands } from "../scene/printed.ts";
import { ringPackOf } from "../scene/ringPackOf.ts";
import { said } from "../scene/said.ts";
import { sceneOf } from "../scene/sceneOf.ts";
import { throwSideOf } from "../scene/throwSideOf.ts";
import { throwsOf } from "../scene/throwsOf.ts";
import { torqueOf } from "../scene/torqueOf.ts";
import { valveSpringOf } from "../scene/valveSpringOf.ts";
import { ThrowSide } from "../ThrowSide.tsx";
import { Throws } from "../Throws.tsx";
import { TorqueCurve } from "../TorqueCurve.tsx";
import { ValveSpring } from "../ValveSpring.tsx";
import type { View } from "./View.ts";

/** Drawn of a build, or undefined when it does not give enough for this view. */
type Drawn = preact.JSX.Element | undefined;

/** A scene drawn, when there is one. */
function of<S extends { readonly state: string }>(scene: S, draw: (scene: S) => preact.JSX.Element): Drawn {
  return scene.state === "value" ? draw(scene) : undefined;
}

/** What a picture says beside what it shows. */
export interface Telling {
  /** Name of the build. */
  readonly name?: string;
  /** Quantities whose numbers stand under a picture that has none of its own. */
  readonly tells?: readonly string[];
  /** What was searched of the build before. */
  readonly bands?: KnownBands;
}

type Mechanical = View & { readonly kind: "mechanism" };

/** The crank angle that a view asks for; undefined when the build does not give it. */
function angleOf({ mark, at }: Mechanical, nominals: Nominals): number | undefined {
  if (typeof at === "string") return nominals.size(at);
  if (at !== undefined || mark === undefined || !traceKinds.has(mark)) return radians(at ?? 60);
  const [trace] = traceOverTurn(nominals, [mark]);
  return trace?.state === "value" ? trace.marked.angle : undefined;
}

function mechanism(view: Mechanical, nominals: Nominals, { name, tells, bands }: Telling): Drawn {
  const angle = angleOf(view, nominals);
  if (angle === undefined) return undefined;
  const { mark } = view;
  const follows = mark !== undefined && traceKinds.get(mark)?.contact !== undefined;
  return of(follows ? nearestScene(nominals, angle, mark) : sceneOf(nominals, angle), (scene) => (
    <Mechanism
      scene={scene}
      mark={mark ?? "none"}
      notes={(tells ?? []).flatMap((id) => said(nominals, id, bands))}
      {...(name === undefined ? {} : { name })}
    />
  ));
}

/**
 * Draws a view of a build.
 * @returns the picture, or undefined when the build does not give what it needs
 */
export function drawView(view: View, nominals: Nominals, telling: Telling = {}): Drawn {
  const { name } = telling;
  const named = name === undefined ? {} : { name };
  switch (view.kind) {
    case "mechanism":
      return mechanism(view, nominals, telling);
    case "curves": {
      const traces = traceOverTurn(nominals, view.traces).filter(({ state }) => state === "value");
      return traces.length === 0 ? undefined : (
        <CurveChart traces={traces} notes={curveNotes(traces, nominals)} table />
      );
    }
    case "deck-stack":
      return of(deckStackOf(nominals, view.result), (stack) => <DeckStack stack={stack} {...named} />);
    case "ring-pack":
      return of(ringPackOf(nominals), (pack) => <RingPack pack={pack} {...named} />);
    case "joint":
      return of(jointOf(nominals, view.part), (joint) => <BoltedJoint joint={joint} {...named} />);
    case "bearing":
      return of(bearingOf(nominals, view.which), (bearing) => (
        <JournalBearing bearing={bearing} {...named} />
      ));
    case "valve-spring":
      return of(valveSpringOf(nominals, view.side), (valve) => <ValveSpring valve={valve} {...named} />);
    case "pin":
      return of(pinSectionOf(nominals), (pin) => <PinSection pin={pin} {...named} />);
    case "throws":
      return of(throwsOf(nominals), (throws) => <Throws throws={throws} {...named} />);
    case "throw-side":
      return of(throwSideOf(nominals), (side) => <ThrowSide side={side} {...named} />);
    case "flywheel":
      return of(flywheelOf(nominals), (wheel) => <Flywheel wheel={wheel} {...named} />);
    case "torque":
      return of(torqueOf(nominals), (torque) => <TorqueCurve torque={torque} {...named} />);
  }
}
