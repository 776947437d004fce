import type { StarlightUserConfig } from "@astrojs/starlight/types";
import { ruleFiles, type System, systems } from "@trialfit/rules";
import { quantities } from "trialfit";
import { apiReferences } from "./apiReferences.ts";

type Sidebar = NonNullable<StarlightUserConfig["sidebar"]>;
interface Entry {
  readonly system: System;
  readonly label: string;
  readonly link: string;
}

/** One folded group for each system that has an entry, in the order of the systems. */
function bySystem(entries: readonly Entry[]): Sidebar {
  return Object.entries(systems).flatMap(([system, label]) => {
    const items = entries
      .filter((entry) => entry.system === system)
      .map(({ label, link }) => ({ label, link }));
    return items.length === 0 ? [] : [{ label, collapsed: true, items }];
  });
}

const rules = ruleFiles.map(({ id, title, system }) => ({ system, label: title, link: `/rules/${id}/` }));
const values = [...quantities.values()].map(({ id, name, system }) => ({
  system,
  label: name,
  link: `/quantities/${id}/`,
}));

/** The navigation: guides by hand, everything else from the catalogs. */
export const sidebar: Sidebar = [
  { label: "Workbench", link: "/workbench/" },
  {
    label: "Guides",
    items: [
      { label: "First build in ten minutes", link: "/guides/first-check/" },
      { label: "From an idea to an order list", link: "/guides/order-list/" },
      { label: "Sizes that are missing", link: "/guides/missing-sizes/" },
      { label: "When something does not hold", link: "/guides/when-it-does-not-hold/" },
      { label: "Search the parts list", link: "/guides/search-parts/" },
      { label: "Trial assembly", link: "/guides/trial-assembly/" },
      { label: "The papers of the job", link: "/guides/papers/" },
      { label: "Reading a verdict", link: "/guides/verdicts/" },
      { label: "How sure is it", link: "/guides/how-sure/" },
      { label: "Use it from code", link: "/guides/from-code/" },
      { label: "Write a rule", link: "/guides/write-a-rule/" },
      { label: "Safety", link: "/guides/safety/" },
      { label: "The build file", link: "/build-file/" },
    ],
  },
  {
    label: "Rules",
    items: [
      { label: "All rules", link: "/rules/" },
      { label: "Sets of rules", link: "/sets/" },
      ...bySystem(rules),
    ],
  },
  { label: "Quantities", items: [{ label: "All quantities", link: "/quantities/" }, ...bySystem(values)] },
  {
    label: "Look up",
    items: [
      { label: "Sources and limits", link: "/sources/" },
      { label: "Glossary", link: "/glossary/" },
      { label: "Units", link: "/units/" },
    ],
  },
  {
    label: "API",
    items: [{ label: "All libraries", link: "/api/" }, ...apiReferences.map((reference) => reference.group)],
  },
];
