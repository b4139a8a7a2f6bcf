// A report as one HTML page that needs nothing else: no script, no address, its style and its picture inside.
// Takes the report and a picture as the SVG that our own exporter wrote; every word of the design is escaped.

import type { Report, ReportSection, ReportTable } from "./report.ts";
import { rowWords } from "./report-cells.ts";
import { xmlText } from "./xml-text.ts";

/** As long as a cell of the Markdown may be: findings run to several sentences. */
const LONGEST = 2000;

const STYLE = [
  "body{font:15px/1.45 sans-serif;color:#1a1a1a;background:#fff;margin:2em auto;max-width:70em;padding:0 1em}",
  "table{border-collapse:collapse;margin:.5em 0 1.5em;width:100%}",
  "th,td{border-bottom:1px solid #b3b3b3;padding:.25em .6em;text-align:left;vertical-align:top}",
  "th{color:#33506b}td.number,th.number{text-align:right;font-variant-numeric:tabular-nums}",
  "svg{max-width:100%;height:auto;border:1px solid #b3b3b3}",
  "h2{margin-top:2em}",
  "@media print{body{margin:0;max-width:none}h2{break-after:avoid}tr{break-inside:avoid}}",
].join("");

/** Nothing may be loaded and nothing run, whatever a reader does with the file (W3C Content Security Policy Level 3). */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'";

export const reportHtml = (report: Report, picture: string | null): string => {
  const title = words(report.title);
  return [
    "<!DOCTYPE html>",
    '<html lang="en">',
    "<head>",
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${POLICY}">`,
    '<meta name="viewport" content="width=device-width">',
    `<title>${title}</title>`,
    `<style>${STYLE}</style>`,
    "</head>",
    "<body>",
    `<h1>${title}</h1>`,
    ...report.facts.map((fact) => `<p>${words(fact)}</p>`),
    ...(picture === null ? [] : [`<figure>${withoutDeclaration(picture)}</figure>`]),
    ...report.sections.map(sectionMarkup),
    "</body>",
    "</html>",
    "",
  ].join("\n");
};

const words = (text: string): string => xmlText(text, LONGEST);

const withoutDeclaration = (svg: string): string => svg.replace(/^<\?xml[^>]*\?>\s*/, "");

const sectionMarkup = (section: ReportSection): string =>
  [
    `<section id="${words(section.id)}">`,
    `<h2>${words(section.heading)}</h2>`,
    ...section.words.map((line) => `<p>${words(line)}</p>`),
    ...(section.table === null ? [] : [tableMarkup(section.table)]),
    "</section>",
  ].join("\n");

const tableMarkup = (table: ReportTable): string => {
  const { columns } = table;
  const row = (cells: readonly string[], tag: "th" | "td"): string =>
    `<tr>${cells.map((cell, index) => cellMarkup(cell, tag, columns[index]?.kind === "number")).join("")}</tr>`;
  const titles = columns.map(({ title }) => title);
  const body = rowWords(table).map((cells) => row(cells, "td"));
  return [
    "<table>",
    `<thead>${row(titles, "th")}</thead>`,
    "<tbody>",
    ...body,
    "</tbody>",
    "</table>",
  ].join("\n");
};

const cellMarkup = (cell: string, tag: "th" | "td", isNumber: boolean): string =>
  `<${tag}${isNumber ? ' class="number"' : ""}>${words(cell)}</${tag}>`;
