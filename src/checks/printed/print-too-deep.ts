// A printed part that reaches farther behind the face than the design gives room.

import { spanOf } from "../../design/written.ts";
import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import type { PrintedPart, PrintedRole } from "../../parts/printed/printed-part.ts";
import { isOver } from "../limits.ts";
import { roundedUp } from "../round-length.ts";
import type { PanelFacts, Rule } from "../rule.ts";
import { lengthWords, measureMm } from "../words.ts";

const entry: CodeEntry = {
  code: "checks/print-too-deep",
  severity: "fault",
  title: "a printed part deeper than the room behind the panel",
  why: "A tray's plate lies behind its boards, a lamp box's lid behind its lamps: they need room behind the face as a body does. What stands against a rib or a wall keeps the panel from its seat.",
  example: `depth: 40 mm
stack:
  - { layer: face, sheet: aluminium-2 }
  - { layer: spacer, print: black-petg, depth: 14 mm }
  - { layer: tray, behind: 20 mm, boards: [avr-328-45x18] }
fixings: { screws: m3, dowels: 3 mm }
components: {}`,
};

export const printTooDeep: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const { design } = facts.layout;
    const room = design.depth;
    if (room === null) return [];
    const depthSpan = spanOf(design.written, "depth");
    const words = lengthWords(facts, depthSpan);
    return facts.printedParts.filter(standsBehind).flatMap((part) => {
      const reach = reachOf(part, facts);
      if (!isOver(reach, room)) return [];
      const value = roundedUp(facts, depthSpan, reach);
      return [
        finding(entry, {
          message: `${nameOf(part)} reaches ${words(reach, room)} behind the face; depth: gives ${words(room, reach)}, ${words(reach - room, 0)} too little. Where there is as much behind the panel, depth: ${value} holds it.${shallower(part, reach - room, facts)}`,
          span: part.span,
          related: [{ what: "depth", span: depthSpan }],
          subjects: [part.owner],
          measured: measureMm(reach),
          limit: measureMm(room),
          source: { kind: "workshop", name: "the design's own depth" },
          remedies: [{ title: `depth: ${value}`, edits: [facts.edit(depthSpan, value)] }],
        }),
      ];
    });
  },
};

/** An angled box carries the panel and stands on what it lies on. */
const standsBehind = ({ role }: PrintedPart): boolean => BEHIND.includes(role);

const BEHIND: readonly PrintedRole[] = ["spacer", "tray", "lamp-box", "lamp-box-lid"];

/** Sheets in front of it may be as thick as their standard lets them. */
const reachOf = ({ facts: { box } }: PrintedPart, { layout }: PanelFacts): number =>
  layout.layers
    .filter(({ kind, front }) => kind === "sheet" && front > box.front)
    .reduce((sum, { thickness: { high, nominal } }) => sum + high - nominal, -box.rear);

const nameOf = ({ owner, role }: PrintedPart): string => {
  const what = role.replaceAll("-", " ");
  return owner === role ? owner : `The ${what} of ${owner}`;
};

/** Boards of a tray can come nearer. */
const shallower = (
  { owner, role }: PrintedPart,
  excess: number,
  { layout }: PanelFacts,
): string => {
  const layer = layout.design.stack.find(({ id }) => id === owner);
  if (role !== "tray" || layer?.kind !== "tray") return "";
  const behind = Math.floor(layer.behind - excess);
  return behind > 0 ? ` behind: ${behind} mm (${owner}) fits.` : "";
};
