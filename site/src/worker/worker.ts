import type { LiveRequest } from "../live/LiveRequest.ts";
import type { ToDesk } from "../workbench/deskProtocol.ts";
import type { ToViewer, ToWorker } from "../workbench/protocol.ts";

type Message = ToWorker | ToViewer | ToDesk | LiveRequest;

/** Runs once, at the first call. */
function once<T>(make: () => Promise<T>): () => Promise<T> {
  let made: Promise<T> | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

const post = (message: unknown) => postMessage(message);
const bench = once(async () => new (await import("../workbench/worker/Bench.ts")).Bench(post));
const viewer = once(async () => new (await import("../workbench/worker/Viewer.tsx")).Viewer(post));
const desk = once(async () => new (await import("../workbench/worker/Desk.ts")).Desk(post));
const liveJudge = once(async () => new (await import("../live/LiveJudge.ts")).LiveJudge(post));

async function take(message: Message): Promise<void> {
  if ("sequence" in message) (await viewer()).take(message);
  else if ("errand" in message) await (await desk()).take(message);
  else if ("revision" in message) await (await bench()).take(message);
  else await (await liveJudge()).take(message);
}

// Listens before anything else is there: a message that comes to a worker without a listener is lost.
addEventListener("message", ({ data }: MessageEvent<Message>) => {
  take(data).catch((error: unknown) => {
    if ("revision" in data) post({ kind: "failed", revision: data.revision, message: String(error) });
    // The page hears of it as of any error of a worker.
    else reportError(error);
  });
});
