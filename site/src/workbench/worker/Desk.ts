import { formatProblem, InputError } from "trialfit";
import type { DeskWork, FromDesk, ToDesk } from "../deskProtocol.ts";
import type { PaperDesk } from "./PaperDesk.ts";

/** Why older work ends. */
const OUTDATED = new Error("something newer was asked for");

type Work = Exclude<ToDesk, { kind: "leave" }>;

/**
 * Does what takes its time: writes papers, finds sizes and changes, says how numbers come about. Of each kind what was asked for last; what does it
 * is fetched when it is first asked for.
 */
export class Desk {
  private readonly post: (message: FromDesk) => void;
  private readonly stops = new Map<DeskWork, AbortController>();
  private paperDesk: Promise<PaperDesk> | undefined;

  constructor(post: (message: FromDesk) => void) {
    this.post = post;
  }

  /** Does what the page asks; answers come through `post`, none for what something newer came after or what was left. */
  async take(message: ToDesk): Promise<void> {
    const kind = message.kind === "leave" ? message.of : message.kind;
    this.stops.get(kind)?.abort(OUTDATED);
    if (message.kind === "leave") return;
    const stop = new AbortController();
    this.stops.set(message.kind, stop);
    try {
      await this.work(message, stop.signal);
    } catch (error) {
      if (error === OUTDATED) return;
      const told = error instanceof InputError ? error.problems.map(formatProblem).join("\n") : String(error);
      this.post({ kind: "failed", errand: message.errand, message: told });
    }
  }

  private async work(message: Work, signal: AbortSignal): Promise<void> {
    const { errand } = message;
    const tell = (answer: FromDesk) => {
      signal.throwIfAborted();
      this.post(answer);
    };
    switch (message.kind) {
      case "write":
        return (await this.papers()).write(message, signal);
      case "limits":
        return (await this.papers()).limits(message, signal);
      case "find": {
        const { findSizes } = await import("./findSizes.ts");
        const view = await findSizes(
          message.ground,
          (phase) => tell({ kind: "finding", errand, phase }),
          signal,
        );
        return tell({ kind: "found", errand, view });
      }
      case "trace": {
        const { traceNumbers } = await import("./traceNumbers.ts");
        return tell({ kind: "traced", errand, traces: traceNumbers(message) });
      }
      case "mend": {
        const { findChanges } = await import("./findChanges.ts");
        const { ground, rule } = message;
        const view = await findChanges(
          ground,
          rule,
          (progress) => tell({ kind: "mending", errand, progress }),
          signal,
        );
        return tell({ kind: "mended", errand, view });
      }
    }
  }

  private papers(): Promise<PaperDesk> {
    this.paperDesk ??= import("./PaperDesk.ts").then(({ PaperDesk: Papers }) => new Papers(this.post));
    return this.paperDesk;
  }
}
