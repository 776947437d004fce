import { useEffect, useRef, useState } from "preact/hooks";
import { startWorker } from "../../worker/startWorker.ts";
import type { Both } from "../pairProtocol.ts";
import type { FromViewer, ToViewer } from "../protocol.ts";

/**
 * Pictures of two builds at one crank angle and to one scale, drawn in a worker of their own. What comes while they are
 * being drawn waits; of that only the last is drawn.
 * @param angle from firing top dead centre [rad]
 * @returns markup of both, empty for a file that cannot be read; undefined before they were drawn
 */
export function usePairPictures([bench, other]: Both<string>, angle: number): Both<string> | undefined {
  const [pictures, setPictures] = useState<Both<string> | undefined>(undefined);
  const worker = useRef<Worker | undefined>(undefined);
  const drawing = useRef(false);
  const waiting = useRef<(() => void) | undefined>(undefined);
  const sequence = useRef(0);

  useEffect(() => {
    const made = startWorker();
    made.addEventListener("message", ({ data }: MessageEvent<FromViewer>) => {
      if (data.kind !== "paired") return;
      setPictures(data.mechanisms);
      drawing.current = false;
      waiting.current?.();
    });
    worker.current = made;
    return () => made.terminate();
  }, []);

  useEffect(() => {
    const send = () => {
      waiting.current = undefined;
      drawing.current = true;
      sequence.current += 1;
      const order: ToViewer = { kind: "pair", sequence: sequence.current, texts: [bench, other], angle };
      worker.current?.postMessage(order);
    };
    if (drawing.current) waiting.current = send;
    else send();
  }, [bench, other, angle]);
  return pictures;
}
