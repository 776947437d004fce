import { startWorker } from "../../worker/startWorker.ts";
import type { DeskWork, FromDesk, ToDesk } from "../deskProtocol.ts";

/** A message to the desk, before it is counted. */
type Order = ToDesk extends infer One
  ? One extends { kind: DeskWork }
    ? Omit<One, "errand">
    : never
  : never;

/** The worker that writes papers and finds sizes and changes, started when it is first asked for something. */
export class DeskClient {
  private worker: Worker | undefined;
  private errand = 0;
  private readonly hearers = new Map<DeskWork, { readonly errand: number; hear(answer: FromDesk): void }>();

  /** Asks for something; what was asked for before of the same kind is not answered any more. */
  ask(order: Order, hear: (answer: FromDesk) => void): void {
    this.errand += 1;
    const { errand } = this;
    this.hearers.set(order.kind, { errand, hear });
    this.started().postMessage({ ...order, errand });
  }

  /** Ends what was asked for last of this kind: it is not answered any more. */
  leave(of: DeskWork): void {
    const { errand } = this;
    this.hearers.delete(of);
    this.worker?.postMessage({ kind: "leave", of, errand } satisfies ToDesk);
  }

  private started(): Worker {
    if (this.worker !== undefined) return this.worker;
    const worker = startWorker();
    worker.addEventListener("message", ({ data }: MessageEvent<FromDesk>) => {
      for (const { errand, hear } of this.hearers.values()) if (errand === data.errand) hear(data);
    });
    worker.addEventListener("error", (event) => {
      for (const { errand, hear } of this.hearers.values())
        hear({ kind: "failed", errand, message: event.message || "the worker stopped" });
    });
    this.worker = worker;
    return worker;
  }
}

/** One for the page, so that papers go on being written while something else is looked at. */
export const desk = new DeskClient();
