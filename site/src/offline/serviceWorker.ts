import { clientsClaim } from "workbox-core";
import type { WorkboxPlugin } from "workbox-core/types.js";
import { ExpirationPlugin } from "workbox-expiration";
import { cleanupOutdatedCaches, type PrecacheEntry, precacheAndRoute } from "workbox-precaching";
import { registerRoute } from "workbox-routing";
import { StaleWhileRevalidate } from "workbox-strategies";

/** Files of the workbench with a mark of their content, put here when the site is built (`config/offline.ts`). */
declare const OFFLINE_FILES: readonly PrecacheEntry[];

const MOST_PAGES = 300;

/** Of a service worker's own world only what is used here: its types do not go with those of a page. */
const worker = globalThis as unknown as { skipWaiting(): Promise<void> };

worker.skipWaiting();
clientsClaim();
cleanupOutdatedCaches();
precacheAndRoute([...OFFLINE_FILES]);
// Other pages are kept once they have been seen, and looked for anew each time.
registerRoute(
  ({ sameOrigin, request }) => sameOrigin && request.method === "GET",
  new StaleWhileRevalidate({
    cacheName: "seen",
    plugins: [new ExpirationPlugin({ maxEntries: MOST_PAGES }) as WorkboxPlugin],
  }),
);
