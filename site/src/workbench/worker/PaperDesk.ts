import { readBuildText } from "trialfit";
import {
  limitsOf,
  makePaperSource,
  onTerms,
  type PaperSource,
  renderPaperHtml,
  renderPaperMarkdown,
  sheetText,
  writeFrom,
  writeRecord,
} from "trialfit/papers";
import type { FromDesk, PaperGround, ToDesk, WrittenSet } from "../deskProtocol.ts";

type Of<Kind> = Extract<ToDesk, { kind: Kind }>;

/** Writes papers, and finds the limits of what is measured. */
export class PaperDesk {
  private readonly post: (message: FromDesk) => void;
  /** What the latest build was judged to be: other units and gates let pass need no judging. */
  private latest: { readonly key: string; readonly source: PaperSource } | undefined;

  constructor(post: (message: FromDesk) => void) {
    this.post = post;
  }

  async write({ errand, ground, order }: Of<"write">, signal: AbortSignal): Promise<void> {
    const { size, passed, ...options } = order;
    this.post({ kind: "progress", errand, progress: {} });
    const { revision, ...others } = options;
    const papers = await writeFrom(await this.sourceOf(ground, signal), {
      ...others,
      ...(revision.trim() === "" ? {} : { revision: revision.trim() }),
      overrides: new Map(Object.entries(passed)),
      signal,
      told: (progress) => this.post({ kind: "progress", errand, progress }),
    });
    const { head, sheet } = papers;
    const written: WrittenSet = {
      html: renderPaperHtml(papers, size),
      papers: papers.papers.map((paper) => ({
        id: paper.id,
        title: paper.title,
        ...(paper.gate === undefined ? {} : { gate: paper.gate }),
        ...(paper.lines === undefined ? {} : { lines: paper.lines }),
        html: renderPaperHtml({ head, papers: [paper] }, size),
        markdown: renderPaperMarkdown(paper, head),
      })),
      ...(sheet.length === 0 ? {} : { sheet: sheetText(sheet) }),
      ...(order.only.includes("engine-record") ? { record: writeRecord(papers, ground.text) } : {}),
    };
    this.post({ kind: "written", errand, written });
  }

  async limits({ errand, ground, path, units }: Of<"limits">, signal: AbortSignal): Promise<void> {
    const source = onTerms(await this.sourceOf(ground, signal), { units });
    const limits = await limitsOf(source, path, signal);
    this.post({ kind: "limits", errand, path, limits });
  }

  private async sourceOf(ground: PaperGround, signal: AbortSignal): Promise<PaperSource> {
    const key = JSON.stringify(ground);
    if (this.latest?.key === key) return this.latest.source;
    const { text, file, set, before } = ground;
    const source = await makePaperSource(readBuildText(text, file), {
      ...(set === undefined ? {} : { sets: [set] }),
      ...(before === undefined ? {} : { before: readBuildText(before, "the kept build") }),
      signal,
    });
    this.latest = { key, source };
    return source;
  }
}
