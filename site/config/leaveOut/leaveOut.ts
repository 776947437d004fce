import type { Plugin } from "vite";
import { withoutProperties } from "./withoutProperties.ts";

/** What tests, explanations and the pages of the catalog read of declarations, and a worker that judges does not. */
const leftOut: readonly { readonly where: RegExp; readonly gone: readonly string[] }[] = [
  { where: /\/core\/dist\/derive\//, gone: ["examples"] },
  { where: /\/rules\/dist\/generated\/catalog\.js$/, gone: ["examples"] },
];

/**
 * Leaves parts of declarations out of workers.
 * @throws Error at the end of a build in which one of the places had nothing to leave out
 */
export function leaveOut(): Plugin {
  const unused = new Set(leftOut);
  return {
    name: "leave-out",
    transform(code, id) {
      const here = leftOut.find(({ where }) => where.test(id));
      if (here === undefined) return undefined;
      const rest = withoutProperties(code, here.gone);
      if (rest.length < code.length) unused.delete(here);
      return { code: rest, map: null };
    },
    generateBundle() {
      if (unused.size > 0)
        throw new Error(`nothing to leave out at ${[...unused].map(({ where }) => where)}`);
    },
  };
}
