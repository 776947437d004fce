import { defineRouteMiddleware, type StarlightRouteData } from "@astrojs/starlight/route-data";
import { href } from "./data/href.ts";

type Entry = StarlightRouteData["sidebar"][number];

/** The first page under an entry. */
function firstLink(entry: Entry): Extract<Entry, { type: "link" }> | undefined {
  return entry.type === "link" ? entry : entry.entries.map(firstLink).find((link) => link !== undefined);
}

/** A library as one link to the list of all that it has, two folders down. */
function linkTo(library: Extract<Entry, { type: "group" }>): Entry {
  const first = firstLink(library);
  if (first === undefined) return library;
  const root = href("/api/");
  return {
    ...first,
    label: library.label,
    href: `${root}${first.href.slice(root.length).replace(/\/.*/, "/")}`,
  };
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
      entries: entry.entries.map((library) => (library.type === "link" ? library : linkTo(library))),
    };
  });
});
