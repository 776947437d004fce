import { defineRouteMiddleware, type StarlightRouteData } from "@astrojs/starlight/route-data";
import { href } from "./data/href.ts";

type Entry = StarlightRouteData["sidebar"][number];

/** The first page under an entry. */
function firstLink(entry: Entry): Extract<Entry, { type: "link" }> | undefined {
  return entry.type === "link" ? entry : entry.entries.map(firstLink).find((link) => link !== undefined);
}

/**
 * Outside the API reference its hundreds of pages shrink to one link for each library: on a phone every page
 * would carry them otherwise.
 */
export const onRequest = defineRouteMiddleware((context) => {
  if (context.url.pathname.startsWith(href("/api/"))) return;
  const route = context.locals.starlightRoute;
  const inApi = (entry: Entry) => firstLink(entry)?.href.startsWith(href("/api/")) ?? false;
  route.sidebar = route.sidebar.map((entry) => {
    if (entry.type === "link" || !inApi(entry)) return entry;
    return {
      ...entry,
      entries: entry.entries.map(
        (library) => ({ ...(firstLink(library) ?? library), label: library.label }) as Entry,
      ),
    };
  });
});
