import { ruleFiles } from "@trialfit/rules";

const TITLES: ReadonlyMap<string, string> = new Map(ruleFiles.map(({ id, title }) => [id, title]));
/** A rule in words of the evaluator; paths of fields, which have a dot, are none. */
const BRACKETS = /\[([a-z0-9-]+)\]/g;

const retold = (text: string, tell: (title: string, id: string) => string): string =>
  text.replaceAll(BRACKETS, (whole, id: string) => {
    const title = TITLES.get(id);
    return title === undefined ? whole : tell(title, id);
  });

/** Words that name rules by their ids, with titles in their place. */
export const withTitles = (text: string): string => retold(text, (title) => `“${title}”`);

/** The same for a page that makes links of them: `[id|title]`. A rule of a set of one's own has no page, and stays. */
export const withLinks = (text: string): string => retold(text, (title, id) => `[${id}|${title}]`);
