import { clientsClaim } from "workbox-core";
import type { WorkboxPlugin } from "workbox-core/types.js";
import { ExpirationPlugin } from "workbox-expiration";
import {
  cleanupOutdatedCaches,
  matchPrecache,
  type PrecacheEntry,
  precacheAndRoute,
} from "workbox-precaching";
import { registerRoute } from "workbox-routing";
import { NetworkFirst, StaleWhileRevalidate } from "workbox-strategies";
import { SEEN_PAGES, trim } from "./seenPages.ts";

/** Files of the workbench with a mark of their content, put here when the site is built (`config/offline.ts`). */
declare const OFFLINE_FILES: readonly PrecacheEntry[];
/** Address of the page that says that another was not kept. */
declare const OFFLINE_PAGE: string;

const MOST_FILES = 300;
/** So long the network is waited for before a kept page is shown [s]. */
const PATIENCE = 4;

/** Of a service worker's own world only what is used here: its types do not go with those of a page. */
const worker = globalThis as unknown as { skipWaiting(): Promise<void> };

worker.skipWaiting();
clientsClaim();
cleanupOutdatedCaches();
precacheAndRoute([...OFFLINE_FILES]);
// A page that was visited is kept as it was last; one that never was says so.
registerRoute(
  ({ sameOrigin, request }) => sameOrigin && request.mode === "navigate",
  new NetworkFirst({
    cacheName: SEEN_PAGES,
    networkTimeoutSeconds: PATIENCE,
    matchOptions: { ignoreSearch: true },
    plugins: [
      {
        cacheDidUpdate: async ({ cacheName }) => trim(await caches.open(cacheName)),
        handlerDidError: () => matchPrecache(OFFLINE_PAGE),
      },
    ],
  }),
);
// What pages ask for is kept as well, and looked for anew each time.
registerRoute(
  ({ sameOrigin, request }) => sameOrigin && request.method === "GET",
  new StaleWhileRevalidate({
    cacheName: "seen",
    plugins: [new ExpirationPlugin({ maxEntries: MOST_FILES }) as WorkboxPlugin],
  }),
);
