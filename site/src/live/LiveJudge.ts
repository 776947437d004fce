import { judgeChanged } from "./judgeChanged.ts";
import type { LiveAnswer } from "./LiveAnswer.ts";
import type { LiveRequest } from "./LiveRequest.ts";

/** Judges the newest request; those that were overtaken while one was being judged are left out. */
export class LiveJudge {
  private readonly post: (answer: LiveAnswer) => void;
  private last: LiveRequest | undefined;
  private busy = false;

  constructor(post: (answer: LiveAnswer) => void) {
    this.post = post;
  }

  async take(newest: LiveRequest): Promise<void> {
    this.last = newest;
    if (this.busy) return;
    this.busy = true;
    try {
      while (this.last !== undefined) {
        const request: LiveRequest = this.last;
        this.last = undefined;
        this.post(await judgeChanged(request));
        // A pause, so that a request that came meanwhile takes its place.
        await new Promise((resolve) => setTimeout(resolve));
      }
    } finally {
      this.busy = false;
    }
  }
}
