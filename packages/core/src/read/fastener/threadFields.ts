import { threads } from "../../tables/threads.ts";
import { choice, dimension } from "../fields.ts";
import { valuesOf, wordsOf } from "./eachOf.ts";

/** The thread of a fastener by its name or by its sizes. @param key of the part in the build file */
export const threadFields = (key: string) => ({
  thread: choice({
    label: "Thread",
    help: "Name of the thread, for its diameter and pitch.",
    options: wordsOf(threads, ({ diameter, pitch }) => `${diameter}, pitch ${pitch}`),
  }),
  threadDiameter: dimension({
    label: "Thread diameter",
    symbol: "d",
    unit: "mm",
    range: ["4 mm", "30 mm"],
    exact:
      "the nominal size by which the thread is named; what threads are made to is part of their standard",
    help: "Major (nominal) diameter of the thread.",
    assumed: {
      byChoice: `${key}.thread`,
      values: valuesOf(
        threads,
        ({ diameter }) => `${diameter} ± 0`,
        (_, name) => `the thread is ${name}`,
      ),
    },
  }),
  threadPitch: dimension({
    label: "Thread pitch",
    symbol: "P",
    unit: "mm",
    range: ["0.4 mm", "4 mm"],
    exact:
      "the nominal size by which the thread is named; what threads are made to is part of their standard",
    help: "Distance from thread to thread; for an inch thread, 1 in divided by the threads per inch: 1/20 in.",
    assumed: {
      byChoice: `${key}.thread`,
      values: valuesOf(
        threads,
        ({ pitch }) => `${pitch} ± 0`,
        (_, name) => `the thread is ${name}`,
      ),
    },
  }),
});
