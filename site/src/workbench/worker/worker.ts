import type { ToViewer, ToWorker } from "../protocol.ts";
import { Bench } from "./Bench.ts";
import { Viewer } from "./Viewer.tsx";

// The page starts this twice: one judges, the other draws, so that a turning picture does not wait for verdicts.
const bench = new Bench((message) => postMessage(message));
const viewer = new Viewer((message) => postMessage(message));

addEventListener("message", ({ data }: MessageEvent<ToWorker | ToViewer>) => {
  if ("sequence" in data) viewer.take(data);
  else
    bench.take(data).catch((error: unknown) => {
      postMessage({ kind: "failed", revision: data.revision, message: String(error) });
    });
});
