import { gzipSync } from "node:zlib";
import type { Page } from "@playwright/test";

/**
 * Counts the scripts that a page asks for from now on, those that wait for a first touch among them.
 * @returns asks for their compressed sizes [bytes] by address; waits for every body, which may come after its effect
 */
export function countScripts(page: Page): () => Promise<ReadonlyMap<string, number>> {
  const bodies: Promise<readonly [address: string, size: number]>[] = [];
  page.on("response", (response) => {
    if (!/javascript/.test(response.headers()["content-type"] ?? "")) return;
    bodies.push(response.body().then((body) => [response.url(), gzipSync(body).length]));
  });
  return async () => new Map(await Promise.all(bodies));
}
