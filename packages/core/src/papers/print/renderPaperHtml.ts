import { DISCLAIMER } from "../../report/describeReport.ts";
import type {
  Cell,
  Gate,
  Paper,
  PaperGrid,
  PaperHead,
  PaperSection,
  PaperSet,
  PaperStep,
  PaperTable,
  Piece,
} from "../Paper.ts";
import { escapeHtml } from "./escapeHtml.ts";
import { type PaperSize, paperStyle } from "./paperStyle.ts";

function piece(one: Piece): string {
  if (typeof one === "string") return escapeHtml(one);
  switch (one.kind) {
    case "number":
      return `<data value="${one.value}" data-of="${escapeHtml(one.of)}">${escapeHtml(one.text)}</data>`;
    case "tick":
      return `<span class="tick" role="img" aria-label="${escapeHtml(`box: ${one.label}`)}"></span>`;
    case "blank":
      return `<span class="blank${one.wide === true ? " wide" : ""}"><span class="line" role="img" aria-label="${escapeHtml(`to write in: ${one.label}`)}">${escapeHtml(one.unit ?? "")}</span>${escapeHtml(one.label)}</span>`;
  }
}

const cell = (pieces: Cell): string => pieces.map(piece).join("");

function table({ columns, widths, rows }: PaperTable): string {
  const sum = widths?.reduce((total, one) => total + one, 0) ?? 1;
  const cols = (widths ?? []).map((one) => `<col class="w${Math.round((20 * one) / sum)}">`).join("");
  const head = columns.map((column) => `<th scope="col">${escapeHtml(column)}</th>`).join("");
  const body = rows.map((row) => `<tr>${row.map((one) => `<td>${cell(one)}</td>`).join("")}</tr>`).join("\n");
  return `<table class="sheet${widths === undefined ? "" : " fixed"}"><colgroup>${cols}</colgroup><thead><tr>${head}</tr></thead><tbody>\n${body}\n</tbody></table>`;
}

function grid({ corner, columns, rows }: PaperGrid): string {
  const head = columns.map((column) => `<th scope="col">${escapeHtml(column)}</th>`).join("");
  const body = rows
    .map(
      ({ name, cells }) =>
        `<tr><th scope="row">${escapeHtml(name)}</th>${cells.map((one) => `<td>${one.map(gridPiece).join("")}</td>`).join("")}</tr>`,
    )
    .join("\n");
  return `<table class="grid"><thead><tr><th scope="col">${escapeHtml(corner)}</th>${head}</tr></thead><tbody>\n${body}\n</tbody></table>`;
}

/** In a grid the row and the column say what a blank is for. */
function gridPiece(one: Piece): string {
  return typeof one === "object" && one.kind === "blank"
    ? `<span class="cell" role="img" aria-label="${escapeHtml(`to write in: ${one.label}`)}"></span>`
    : piece(one);
}

/** One box for all that stands at a place: several as a list. */
function caution(texts: readonly string[]): string {
  const items = texts.map((text) => `<li>${escapeHtml(text)}</li>`).join("");
  if (texts.length === 0) return "";
  return texts.length === 1
    ? `<p class="caution"><strong>Caution.</strong> ${escapeHtml(texts[0]!)}</p>`
    : `<div class="caution"><strong>Cautions.</strong><ul>${items}</ul></div>`;
}

function step({ title, hold, lines, grid: places, cautions = [] }: PaperStep): string {
  const body = lines.map((line) => `<p>${cell(line)}</p>`).join("");
  return `<div class="step${hold === true ? " hold" : ""}"><h3>${escapeHtml(title)}</h3>${caution(cautions)}${body}${places === undefined ? "" : grid(places)}</div>`;
}

function section({ heading, intro, cautions = [], body }: PaperSection): string {
  const head = [
    `<h2>${escapeHtml(heading)}</h2>`,
    intro === undefined ? "" : `<p>${escapeHtml(intro)}</p>`,
    caution(cautions),
  ];
  if (body.kind === "table") return ["<section>", ...head, table(body), "</section>"].join("\n");
  const [first, ...rest] = body.steps.map(step);
  return ['<section><div class="begin">', ...head, first, "</div>", ...rest, "</section>"].join("\n");
}

function gate({ waitsFor, override }: Gate): string {
  if (waitsFor.length === 0) return "";
  const list = `<ul>${waitsFor.map((one) => `<li>${escapeHtml(one)}</li>`).join("")}</ul>`;
  return override === undefined
    ? `<div class="gate"><strong>HELD: not to be used yet.</strong> It waits for:${list}</div>`
    : `<div class="gate"><strong>Let pass by ${escapeHtml(override.by)}:</strong> ${escapeHtml(override.because)}. Still open:${list}</div>`;
}

function header({ build, revision, date, hash, rules }: PaperHead): string {
  const points = [
    ["Build", build],
    ["Revision", revision],
    ["Date", date],
    ["Hash", hash],
    ["Rules", rules],
  ];
  const cells = points
    .map(([name, text]) => `<td>${name}<br><strong>${escapeHtml(text!)}</strong></td>`)
    .join("");
  return `<header><table><colgroup><col class="w7"><col class="w2"><col class="w3"><col class="w3"><col class="w5"></colgroup><tr>${cells}</tr></table></header>`;
}

/** One paper, without the page around it. A paper that is held shows what it waits for, and nothing else. */
export function paperArticle(paper: Paper, head: PaperHead): string {
  const held =
    paper.gate !== undefined && paper.gate.waitsFor.length > 0 && paper.gate.override === undefined;
  return [
    `<article id="${paper.id}">${header(head)}`,
    `<h1>${escapeHtml(paper.title)}</h1><p>${escapeHtml(paper.purpose)}</p>`,
    paper.gate === undefined ? "" : gate(paper.gate),
    ...(held ? [] : paper.sections.map(section)),
    held || paper.signatures.length === 0
      ? ""
      : `<div class="signatures">${paper.signatures.map((one) => `<div>${escapeHtml(one)}</div>`).join("")}</div>`,
    `<footer>${escapeHtml(DISCLAIMER)}</footer></article>`,
  ].join("\n");
}

/** Text of a string in CSS. */
const cssText = (text: string) => text.replace(/[\\"]/g, "\\$&").replace(/[\n\r<>]/g, " ");

/** Papers as one page to print. */
export function renderPaperHtml({ head, papers }: PaperSet, size: PaperSize): string {
  const title = papers.length === 1 ? `${papers[0]!.title}: ${head.build}` : `Papers: ${head.build}`;
  const running = cssText(
    `${head.build} · rev. ${head.revision} · ${head.date} · ${head.hash} · ${head.rules}`,
  );
  return [
    "<!doctype html>",
    '<html lang="en"><head><meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${escapeHtml(title)}</title>`,
    `<style>${paperStyle(size, running)}</style></head><body>`,
    ...papers.map((paper) => paperArticle(paper, head)),
    "</body></html>",
    "",
  ].join("\n");
}
