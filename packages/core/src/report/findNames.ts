import { type RuleFile, ruleFiles, setFiles } from "@trialfit/rules";
import { quantities } from "../derive/generated/quantities.ts";
import { type Field, fieldLabel, fields } from "../read/fieldCatalog.ts";
import { isWord } from "../read/nearestNames.ts";
import { plainWords } from "../read/plainWords.ts";
import type { DocumentSection, ReportDocument } from "./ReportDocument.ts";

interface Named {
  readonly id: string;
  readonly title: string;
  /** What it is about beside its own words: the parts of a rule. */
  readonly about: readonly string[];
}

const plain = (text: string): string => plainWords(text).join(" ");

function sectionOf(heading: string, every: readonly Named[], words: readonly string[]): DocumentSection {
  const found = every.filter(({ id, title, about }) => {
    const text = plain([id, title, ...about].join(" "));
    return words.every((word) => text.includes(word));
  });
  return {
    heading: `${heading} (${found.length})`,
    items: found.map(({ id, title }) => ({ title, id, tone: "plain", lines: [] })),
  };
}

const ofRule = ({ id, title, parts }: RuleFile): Named => ({ id, title, about: parts });
const ofField = ({ path }: Field): Named => ({ id: path, title: fieldLabel(path), about: [] });

/** Quantities in whose name one of the words stands, and the others in what is said of it: people call things otherwise. */
function meantBy(words: readonly string[]): DocumentSection {
  const found = [...quantities.values()].filter(({ id, name, meaning }) => {
    const named = plainWords(`${id} ${name}`);
    const told = [...named, ...plainWords(meaning)];
    return words.some((word) => named.some(isWord(word))) && words.every((word) => told.some(isWord(word)));
  });
  return {
    heading: `Quantities of which these words tell (${found.length})`,
    items: found.map(({ id, name, meaning }) => ({
      title: name,
      id,
      tone: "plain",
      lines: [{ text: meaning }],
    })),
  };
}

/**
 * Every rule, quantity, field and set in whose name all these words stand, or that belongs to a part called so; where there is none, quantities whose meaning tells of them.
 * @param words as people write them: `valve lift`, or the name of a part, `flywheelFastener`
 * @returns undefined where there is none
 */
export function findNames(words: string): ReportDocument | undefined {
  const wanted = plainWords(words);
  if (wanted.length === 0) return undefined;
  const named = (id: string, title: string): Named => ({ id, title, about: [] });
  const byName = [
    sectionOf("Rules", ruleFiles.map(ofRule), wanted),
    sectionOf(
      "Quantities",
      [...quantities.values()].map(({ id, name }) => named(id, name)),
      wanted,
    ),
    sectionOf("Fields of the build file", [...fields.values()].map(ofField), wanted),
    sectionOf(
      "Sets of rules",
      setFiles.map(({ id, title }) => named(id, title)),
      wanted,
    ),
  ].filter(({ items }) => items.length > 0);
  const sections = byName.length > 0 ? byName : [meantBy(wanted)].filter(({ items }) => items.length > 0);
  if (sections.length === 0) return undefined;
  return {
    title: `Names with "${words}"`,
    lead: [{ text: "what stands in brackets is the name to explain, or to write in a rule" }],
    sections,
    closing: [],
  };
}
