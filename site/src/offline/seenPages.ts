/** Name of the cache of pages that were visited; the same for the page that puts itself in and for the service worker. */
export const SEEN_PAGES = "seen-pages";

/** So many visited pages are kept, the last ones. */
export const MOST_PAGES = 120;

/** Takes the oldest out of a cache that holds more than it may. */
export async function trim(cache: Cache): Promise<void> {
  const kept = await cache.keys();
  for (const oldest of kept.slice(0, Math.max(0, kept.length - MOST_PAGES))) await cache.delete(oldest);
}
