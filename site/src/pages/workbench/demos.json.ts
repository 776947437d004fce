import { demoBuilds } from "../../data/demoBuilds.ts";
import type { DemoText } from "../../workbench/protocol.ts";

const demos: readonly DemoText[] = demoBuilds.map(({ id, name, story, text }) => ({ id, name, story, text }));

export const GET = () => Response.json(demos);
