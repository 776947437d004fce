import { getCollection } from "astro:content";

/** A library that people use from code, as its package is called, with the folder of its reference. */
export interface Library {
  readonly name: string;
  readonly folder: string;
  readonly groups: readonly {
    readonly kind: string;
    readonly entries: readonly {
      readonly title: string;
      readonly path: `/${string}`;
      readonly about: string;
    }[];
  }[];
}

/** What somebody looks for first stands first. */
const KINDS = ["functions", "classes", "interfaces", "type-aliases", "variables"];

/** The first sentence of what the code says of itself, without its links. */
function aboutOf(body: string): string {
  const text = body
    .replace(/```[\s\S]*?```/g, "")
    .split(/\n\s*\n/)
    .map((block) => block.trim())
    .find((block) => block !== "" && !/^(>|#|\||-|\*\*)/.test(block));
  if (text === undefined) return "";
  const plain = text
    .replace(/\[([^\]]*)\]\([^)]*\)/g, "$1")
    .replace(/[`\\]/g, "")
    .replace(/\s+/g, " ");
  return /^.*?\.(?= |$)/.exec(plain)?.[0] ?? plain;
}

const pages = await getCollection("docs", ({ id }) => id.startsWith("api/"));

/** Every library of the reference, from the pages that were written of its code. */
export const libraries: readonly Library[] = pages
  .filter(({ id }) => /^api\/[^/]+\/readme$/.test(id))
  .map(({ id, data }) => {
    const folder = id.split("/")[1]!;
    const own = pages.filter((page) => page.id.startsWith(`api/${folder}/`));
    const kinds = [...new Set(own.map((page) => page.id.split("/")[2]!))].filter((kind) => kind !== "readme");
    return {
      name: data.title,
      folder,
      groups: kinds
        .sort((a, b) => KINDS.indexOf(a) - KINDS.indexOf(b))
        .map((kind) => ({
          kind,
          entries: own
            .filter((page) => page.id.split("/")[2] === kind)
            .map((page) => ({
              title: page.data.title,
              path: `/${page.id}/` as const,
              about: aboutOf(page.body ?? ""),
            }))
            .sort((a, b) => a.title.localeCompare(b.title, "en")),
        })),
    };
  })
  .sort((a, b) => a.folder.localeCompare(b.folder, "en"));
