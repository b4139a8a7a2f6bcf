// A report in Markdown. Whatever a builder wrote is words in it and nothing else.

import { markdownTable, markdownText } from "./markdown-table.ts";
import type { Report, ReportSection } from "./report.ts";
import { rowWords } from "./report-cells.ts";

export const reportMarkdown = ({ title, facts, sections }: Report): string =>
  [
    `# ${markdownText(title)}`,
    "",
    ...facts.flatMap((fact) => [markdownText(fact), ""]),
    ...sections.flatMap(sectionLines),
  ].join("\n");

const sectionLines = ({ heading, words, table }: ReportSection): readonly string[] => [
  `## ${markdownText(heading)}`,
  "",
  ...words.flatMap((line) => [markdownText(line), ""]),
  ...(table === null
    ? []
    : [
        markdownTable(
          table.columns.map(({ title, kind }) => ({
            title,
            align: kind === "number" ? "right" : "left",
          })),
          rowWords(table),
        ),
      ]),
];
