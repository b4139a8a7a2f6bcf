// What hands do with tools, part by part, in the order in which the parts lie in the stack.

import { markdownTable, markdownText } from "../export/markdown-table.ts";
import { decimal } from "../geometry/number.ts";
import type { HandOperation, SheetPart } from "../parts/sheet-part.ts";
import type { PackFile } from "./pack-file.ts";
import { paperFile } from "./paper-file.ts";

export const handOperationsPaper = (parts: readonly SheetPart[]): PackFile | null => {
  const worked = parts.filter(({ handOperations }) => handOperations.length > 0);
  if (worked.length === 0) return null;
  return paperFile(
    "hand-operations",
    "hand-operations.md",
    [
      "# Hand operations",
      "",
      "Places are millimetres from the lower left corner of the nominal outline, seen from the front.",
      "",
      ...worked.flatMap((part) => [
        `## ${markdownText(part.title)}`,
        "",
        markdownTable(
          [
            { title: "what", align: "left" },
            { title: "where", align: "left" },
            { title: "tool", align: "left" },
            { title: "from the", align: "left" },
            { title: "depth", align: "right" },
            { title: "x", align: "right" },
            { title: "y", align: "right" },
          ],
          part.handOperations.map(operationRow),
        ),
      ]),
    ].join("\n"),
  );
};

const operationRow = ({
  what,
  feature,
  tool,
  side,
  depth,
  at,
}: HandOperation): readonly string[] => [
  what,
  feature,
  tool,
  side,
  depth === null ? (at === null ? "" : "through") : `${decimal(depth, 2)} mm`,
  at === null ? "" : decimal(at.x, 3),
  at === null ? "" : decimal(at.y, 3),
];
