// Is a screw sold that holds the stack: long enough to bite, short enough not to meet the bottom of its hole.

import { type CodeEntry, type Finding, finding, type Span } from "../../diagnostics/finding.ts";
import { type SoldScrew, screwFor, soldScrews, stackScrewNeed } from "../../parts/screw-need.ts";
import type { Rule } from "../rule.ts";
import { measureMm, millimetres } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/screw-length",
  severity: "query",
  title: "no screw of a length that is sold fits the stack",
  why: "A screw of the stack runs through every layer in front and must reach one diameter into its insert (common practice), and not to the bottom of the hole. Where the sold lengths jump over that, change a layer's depth by a millimetre or two, or cut a longer screw.",
  example: `stack:
  - { layer: backing, sheet: aluminium-2 }
  - { layer: gap, air: 31 mm }
  - { layer: spacer, print: black-petg, depth: 14 mm }
fixings: { screws: m3, dowels: 3 mm }`,
};

export const screwLength: Rule = {
  entry,
  move: null,
  judge: ({ layout, printedParts, catalogue }) => {
    const need = stackScrewNeed(layout, printedParts, catalogue);
    if (need === null || need.ends === "nut" || need.most === null) return [];
    const sold = soldScrews(need.thread, catalogue);
    const owner = layout.layers.find(({ id }) => id === need.owner);
    return owner === undefined || screwFor(need, sold) !== null
      ? []
      : [unsold({ ...need, most: need.most }, sold, owner.design.written.span)];
  },
};

/** From the thinnest to the thickest that the layers in front may be. */
const unsold = (
  {
    thread,
    least,
    most,
    owner,
  }: {
    readonly thread: string;
    readonly least: number;
    readonly most: number;
    readonly owner: string;
  },
  screws: readonly SoldScrew[],
  span: Span,
): Finding => {
  const sold = screws.map(({ length }) => length);
  const shorter = sold.findLast((length) => length < least);
  const longer = sold.find((length) => length > most);
  const words = [
    shorter === undefined ? null : `${millimetres(shorter, least)} is too short`,
    longer === undefined ? null : `${millimetres(longer, most)} too long`,
  ].filter((word) => word !== null);
  return finding(entry, {
    message: `The stack's ${thread} screws must be ${millimetres(least)} to ${millimetres(most)} long to bite in ${owner} and not meet the bottom; of those sold ${words.join(", ")}.`,
    span,
    subjects: [owner],
    measured: measureMm(shorter ?? longer ?? 0),
    limit: measureMm(shorter === undefined ? most : least),
    source: { kind: "geometry", name: "layers in front, thread and hole" },
  });
};
