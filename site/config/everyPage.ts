import { readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import type { AstroIntegration } from "astro";
import { builtPages } from "./builtPages.ts";

/** A page as it is listed. */
interface Listed {
  /** Below the folder of the site: `rules/`, `404.html`. */
  readonly path: string;
  /** As HTML has it. */
  readonly title: string;
}

/** Where the lists go, in the page that has them. */
const PLACE = "<!--every page-->";
const LIST = "pages/index.html";
/** What the pages are called that stand in no folder of several. */
const ALONE = "By themselves";

const topOf = ({ path }: Listed): string => /^([^/]+)\/./.exec(path)?.[1] ?? "";

/** Pages by their folder, one that has a page alone with the others of that kind; each group is called by its first page. */
function groupsOf(
  pages: readonly Listed[],
): readonly { readonly title: string; readonly pages: readonly Listed[] }[] {
  const folders = Map.groupBy(pages, topOf);
  const alone = [...folders].flatMap(([top, all]) => (top === "" ? all : []));
  // The page of a folder itself stands first in it.
  const isOf =
    (top: string) =>
    ({ path }: Listed) =>
      path === `${top}/`;
  const groups = [...folders].flatMap(([top, all]) => {
    if (top === "") return [];
    const first = alone.find(isOf(top));
    return [
      {
        title: first?.title ?? `${top[0]!.toUpperCase()}${top.slice(1)}`,
        pages: [...(first ? [first] : []), ...all],
      },
    ];
  });
  const grouped = new Set(groups.flatMap((group) => group.pages));
  return [{ title: ALONE, pages: alone.filter((page) => !grouped.has(page)) }, ...groups];
}

/** Lists of links, a heading with its count over each. */
export function listPages(pages: readonly Listed[], root: string): string {
  const groups = groupsOf(pages);
  const word = (at: number) => `group-${at + 1}`;
  const contents = groups.map(
    ({ title, pages: all }, at) =>
      `<li><a href="#${word(at)}">${title}</a> <span class="number">${all.length}</span></li>`,
  );
  const lists = groups.map(({ title, pages: all }, at) => {
    const links = all.map(({ path, title: name }) => `<li><a href="${root}${path}">${name}</a></li>`);
    return `<section><h2 id="${word(at)}">${title} <span class="number">(${all.length})</span></h2><ul class="plain-list pages">${links.join("")}</ul></section>`;
  });
  return `<p class="number">${pages.length} pages</p><ul>${contents.join("")}</ul>${lists.join("")}`;
}

/** Fills the page that lists every page, from the pages that were built. @throws Error when that page has no place for it */
export function everyPage(base = "/"): AstroIntegration {
  const root = base.endsWith("/") ? base : `${base}/`;
  return {
    name: "every-page",
    hooks: {
      "astro:build:done": async ({ dir, logger }) => {
        const { folder, names } = await builtPages(dir);
        const pages = await Promise.all(
          names.map(async (name): Promise<Listed> => {
            const html = await readFile(join(folder, name), "utf8");
            const title = /<title>([^<|]*)/.exec(html)?.[1]?.trim() ?? name;
            return { path: name.replaceAll("\\", "/").replace(/(^|\/)index\.html$/, "$1"), title };
          }),
        );
        const file = join(folder, LIST);
        const html = await readFile(file, "utf8");
        if (!html.includes(PLACE)) throw new Error(`${LIST} has no place for the list of every page`);
        await writeFile(file, html.replace(PLACE, listPages(pages, root)));
        logger.info(`${pages.length} pages listed`);
      },
    },
  };
}
