import { judgeChanged } from "./judgeChanged.ts";
import type { LiveRequest } from "./LiveRequest.ts";

/** The evaluator off the page's own thread, so that typing never waits for it. */
const scope = globalThis as unknown as Pick<Worker, "postMessage" | "addEventListener">;

let last: LiveRequest | undefined;
let busy = false;

/** Judges the newest request; those that were overtaken while one was being judged are left out. */
async function work(): Promise<void> {
  if (busy) return;
  busy = true;
  while (last !== undefined) {
    const request = last;
    last = undefined;
    scope.postMessage(await judgeChanged(request));
    // A pause, so that a request that came meanwhile takes its place.
    await new Promise((resolve) => setTimeout(resolve));
  }
  busy = false;
}

scope.addEventListener("message", (event) => {
  last = (event as MessageEvent<LiveRequest>).data;
  void work();
});
