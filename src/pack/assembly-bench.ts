// What is done at the bench before a panel is put together: inserts, boards, joints, lamp boxes, sheets that lie in prints.

import { decimal } from "../geometry/number.ts";
import { isLampBoxPart, type LampBoxPart } from "../parts/printed/lamp-box-facts.ts";
import type { PrintedPart } from "../parts/printed/printed-part.ts";
import { listWords } from "./list-words.ts";
import type { PanelForPack } from "./panel-pack.ts";

export const benchWork = ({ printedParts, fitted }: PanelForPack): readonly string[] => [
  ...printedParts.flatMap((part) => [
    ...jointWords(part),
    ...insertWords(part),
    ...insideWords(part),
    ...boardWords(part),
  ]),
  ...fitted.sheets.map(({ title }) => `${title}: lay in, protective film off, without glue.`),
  ...printedParts.filter(isLampBoxPart).map(lampBoxWords),
];

const jointWords = ({ title, pieces, facts }: PrintedPart): readonly string[] => {
  if (pieces.length < 2) return [];
  const screws = facts.joints.flatMap((joint) => joint.screws).length;
  const held = screws === 0 ? "" : `, and screw them (${screws})`;
  return [`${title}: put its ${pieces.length} pieces together on their pegs${held}.`];
};

const insertWords = ({ title, facts }: PrintedPart): readonly string[] => {
  const inserts = facts.bosses.flatMap(({ kind, thread, insert }) =>
    kind === "insert" && insert !== null
      ? [`heat-set insert ${(thread ?? "").toUpperCase()}, ${decimal(insert, 1)} mm long`]
      : [],
  );
  const kinds = [...new Set(inserts)].map(
    (kind) => `${inserts.filter((one) => one === kind).length} x ${kind}`,
  );
  return kinds.length === 0
    ? []
    : [
        `${title}: ${listWords(kinds)}. Hot iron and molten plastic: straight in, flush, then leave it to cool.`,
      ];
};

const insideWords = ({ title, facts }: PrintedPart): readonly string[] =>
  facts.inside === "paint" ? [`${title}: paint the inside of its light box white.`] : [];

const boardWords = ({ title, facts }: PrintedPart): readonly string[] =>
  facts.boards.map(({ board, holding }) => `${title}: ${board}, ${HOLDING[holding]}.`);

const HOLDING = {
  holes: "screwed on its standoffs",
  clip: "pushed under its clips",
  socket: "put in its socket",
} as const;

const lampBoxWords = ({ title, lampBox }: LampBoxPart): string => {
  const leds = lampBox.cells.reduce((sum, cell) => sum + cell.leds.length, 0);
  const screws = lampBox.lid.screws.length;
  const film = lampBox.cells.some(({ text }) => text !== null) ? "label film, then " : "";
  return `${title}: ${film}diffusers in their seats; ${leds} LEDs in the lid, wired and lit once; lid on${screws === 0 ? "" : ` with ${screws} screws`}.`;
};
