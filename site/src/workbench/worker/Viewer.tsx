import type { VNode } from "preact";
import { render as renderWhole } from "preact-render-to-string";
import { type Build, Nominals, type Trace, type TraceValue, traceKinds, traceOverTurn } from "trialfit";
import { prettyMarkup } from "../../data/prettyUnits.ts";
import { CurveChart } from "../../pictures/CurveChart.tsx";
import { DeckStack } from "../../pictures/DeckStack.tsx";
import { CurveTable, TABLE_TITLE } from "../../pictures/draw/CurveTable.tsx";
import { Mechanism } from "../../pictures/Mechanism.tsx";
import { RingPack } from "../../pictures/RingPack.tsx";
import { curveNotes } from "../../pictures/scene/curveNotes.ts";
import { deckStackOf } from "../../pictures/scene/deckStackOf.ts";
import { nearestScene } from "../../pictures/scene/nearestScene.ts";
import { ringPackOf } from "../../pictures/scene/ringPackOf.ts";
import { sceneOf } from "../../pictures/scene/sceneOf.ts";
import { throwsOf } from "../../pictures/scene/throwsOf.ts";
import { Throws } from "../../pictures/Throws.tsx";
import type { Choice, Drawing, FromViewer, ToViewer, View } from "../protocol.ts";
import { charts } from "./charts.ts";
import { PairViewer } from "./PairViewer.tsx";
import { readWhatCan } from "./readWhatCan.ts";

const render = (picture: VNode) => prettyMarkup(renderWhole(picture));

/** Draws the build that the page shows, at the angle at which it is turned. */
export class Viewer {
  private readonly post: (message: FromViewer) => void;
  private build: Build | undefined;
  private nominals: Nominals | undefined;
  /** Chart whose table the page has. */
  private tabulated: string | undefined;
  private readonly pair = new PairViewer();
  private readonly traced = new Map<string, readonly Trace[]>();

  constructor(post: (message: FromViewer) => void) {
    this.post = post;
  }

  take(message: ToViewer): void {
    const { sequence } = message;
    if (message.kind === "pair") {
      const { texts, angle } = message;
      this.post({ kind: "paired", sequence, mechanisms: this.pair.draw(texts, angle) });
      return;
    }
    const { view } = message;
    if (message.kind === "look") this.look(message);
    if (this.nominals === undefined) {
      this.post({ kind: "blank", sequence });
      return;
    }
    if (message.kind === "look")
      this.post({
        kind: "drawn",
        sequence,
        still: this.still(),
        charts: charts.map(nameOf),
        marks: this.marks(),
      });
    this.tabulate(sequence, view);
    this.post({ kind: "turned", sequence, mechanism: this.mechanism(view), chart: this.chart(view) });
  }

  /** The table of a chart changes with the build and the chart, not with the angle. */
  private tabulate(sequence: number, { chart }: View): void {
    if (chart === this.tabulated) return;
    this.tabulated = chart;
    const drawn = this.tracesOf(chart).filter((trace): trace is TraceValue => trace.state === "value");
    const table = drawn.length === 0 ? "" : render(<CurveTable traces={drawn} />);
    this.post({ kind: "tabulated", sequence, title: TABLE_TITLE, table });
  }

  private look({ text, file }: Extract<ToViewer, { kind: "look" }>): void {
    this.build = readWhatCan(text, file).build;
    this.nominals = this.build === undefined ? undefined : new Nominals(this.build);
    this.traced.clear();
    this.tabulated = undefined;
  }

  private still(): readonly Drawing[] {
    const stack = (id: "deckClearance" | "squishGap", title: string): Drawing => ({
      id,
      title,
      html: render(<DeckStack stack={deckStackOf(this.nominals!, id)} name={this.build!.name} />),
    });
    return [
      stack("deckClearance", "From the crankshaft to the deck"),
      stack("squishGap", "From the crankshaft to the head"),
      {
        id: "ringPack",
        title: "Ring pack",
        html: render(<RingPack pack={ringPackOf(this.nominals!)} name={this.build!.name} />),
      },
      {
        id: "throws",
        title: "Throws, seen along the crankshaft",
        html: render(<Throws throws={throwsOf(this.nominals!)} name={this.build!.name} />),
      },
    ];
  }

  /** Distances that can be marked at this build. */
  private marks(): readonly Choice[] {
    const scene = sceneOf(this.nominals!, 0);
    return scene.state === "value"
      ? scene.contacts.map(({ trace, name }) => ({ id: trace, label: name }))
      : [];
  }

  private mechanism({ angle, mark }: View): string {
    const marked = mark === "" ? {} : { mark };
    const scene = nearestScene(this.nominals!, angle, marked.mark);
    return render(<Mechanism scene={scene} {...marked} name={this.build!.name} />);
  }

  private tracesOf(chart: string): readonly Trace[] {
    const known = charts.find(({ id }) => id === chart) ?? charts[0]!;
    let traces = this.traced.get(known.id);
    if (traces === undefined) {
      traces = traceOverTurn(
        this.nominals!,
        known.traces.filter((id) => traceKinds.has(id)),
      );
      this.traced.set(known.id, traces);
    }
    return traces;
  }

  private chart({ angle, chart }: View): string {
    const traces = this.tracesOf(chart);
    return render(<CurveChart traces={traces} notes={curveNotes(traces, this.nominals!)} angle={angle} />);
  }
}

const nameOf = ({ id, label }: Choice): Choice => ({ id, label });
