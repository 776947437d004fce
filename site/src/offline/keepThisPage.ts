import { SEEN_PAGES, trim } from "./seenPages.ts";

/**
 * Before the service worker is there, a page keeps a copy of itself: what was read before the workbench was opened can
 * be read without a network afterwards. Where the service worker is there, it does that.
 */
async function keep(): Promise<void> {
  if (!("caches" in globalThis) || navigator.serviceWorker?.controller !== null) return;
  const cache = await caches.open(SEEN_PAGES);
  await cache.add(location.pathname);
  await trim(cache);
}

if (import.meta.env.PROD)
  addEventListener("load", () => {
    keep().catch(() => {
      // Without room or without a network nothing is kept; the page itself is there.
    });
  });
