import type { ToWorker } from "../protocol.ts";
import { Bench } from "./Bench.ts";

const bench = new Bench((message) => postMessage(message));

addEventListener("message", ({ data }: MessageEvent<ToWorker>) => {
  bench.take(data).catch((error: unknown) => {
    postMessage({ kind: "failed", revision: data.revision, message: String(error) });
  });
});
