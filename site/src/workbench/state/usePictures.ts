import { useEffect, useRef, useState } from "preact/hooks";
import { startWorker } from "../../worker/startWorker.ts";
import type { Choice, Drawing, FromViewer, View } from "../protocol.ts";

export interface Pictures {
  readonly still: readonly Drawing[];
  readonly charts: readonly Choice[];
  readonly marks: readonly Choice[];
  readonly mechanism: string;
  readonly chart: string;
  readonly table: { readonly title: string; readonly html: string };
  /** The file cannot be read, so that there is nothing to draw. */
  readonly blank: boolean;
}

const nothing: Pictures = {
  still: [],
  charts: [],
  marks: [],
  mechanism: "",
  chart: "",
  table: { title: "", html: "" },
  blank: false,
};

/**
 * Pictures of the build in a text, drawn in a worker of their own. Views that come while one is being drawn wait; of
 * those that wait only the last is drawn.
 */
export function usePictures(text: string | undefined, view: View): Pictures {
  const [pictures, setPictures] = useState(nothing);
  const worker = useRef<Worker | undefined>(undefined);
  const drawing = useRef(false);
  const waiting = useRef<(() => void) | undefined>(undefined);
  const sequence = useRef(0);
  const seen = useRef<string | undefined>(undefined);

  useEffect(() => {
    const made = startWorker();
    made.addEventListener("message", ({ data }: MessageEvent<FromViewer>) => {
      setPictures((before) => {
        switch (data.kind) {
          case "drawn":
            return { ...before, still: data.still, charts: data.charts, marks: data.marks, blank: false };
          case "tabulated":
            return { ...before, table: { title: data.title, html: data.table } };
          case "turned":
            return { ...before, mechanism: data.mechanism, chart: data.chart };
          case "blank":
            return { ...nothing, blank: true };
          case "paired":
            return before;
        }
      });
      if (data.kind === "drawn" || data.kind === "tabulated") return;
      drawing.current = false;
      waiting.current?.();
    });
    worker.current = made;
    return () => made.terminate();
  }, []);

  useEffect(() => {
    if (text === undefined) return;
    const send = () => {
      waiting.current = undefined;
      drawing.current = true;
      sequence.current += 1;
      const order =
        seen.current === text
          ? { kind: "turn", sequence: sequence.current, view }
          : { kind: "look", sequence: sequence.current, text, file: "build.yaml", view };
      seen.current = text;
      worker.current?.postMessage(order);
    };
    if (drawing.current) waiting.current = send;
    else send();
  }, [text, view]);
  return pictures;
}
