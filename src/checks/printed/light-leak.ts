// A straight way from a lamp behind the face to the outside, one finding an opening; members of a row are counted.

import { type CodeEntry, finding } from "../../diagnostics/finding.ts";
import { decimal } from "../../geometry/number.ts";
import type { OpeningKind } from "../../light/opening.ts";
import { onePerOwner } from "../one-finding.ts";
import type { Rule } from "../rule.ts";
import { leakRemedies, wayToClose } from "./leak-remedy.ts";
import { lampWords, owned, sightsIn, spanOfOwner } from "./seen-lamps.ts";

const entry: CodeEntry = {
  code: "checks/light-leak",
  severity: "query",
  title: "a lamp that is seen from outside",
  why: "In a dark room one bright point ruins a panel. Light comes out round levers and shafts first, at the edges second, at stud and screw holes third. Move what stands in the open, close the gap, or let a wall of the print stand between lamp and opening.",
  example: `stack:
  - { layer: face, sheet: opal-acrylic-3, finish: paint-then-cut }
  - { layer: backing, sheet: aluminium-2 }
  - { layer: spacer, print: black-petg, depth: 14 mm, lighting: { strip: strip-60-5v-addressable, circuit: night } }
components:
  a: { part: led-5, at: { x: 30 mm, y: 40 mm }, legend: PUMP }
markings:
  - window: { at: { x: 30 mm, y: 50 mm }, width: 24 mm, height: 8 mm, corner: 1 mm, layers: [backing] }`,
};

export const lightLeak: Rule = {
  entry,
  move: null,
  judge: (facts) => {
    const remediesOf = leakRemedies(facts);
    return onePerOwner(owned(sightsIn(facts)), ({ sight }) => {
      const words = WAYS[sight.through];
      if (words === null) return null;
      const remedies = remediesOf(sight);
      const advice = remedies.length > 0 ? "" : ` ${wayToClose(sight)}`;
      return finding(entry, {
        message: `${sight.owner}: ${lampWords(sight)} is seen ${words}, at ${decimal(sight.at.x, 1)}, ${decimal(sight.at.y, 1)}.${advice}`,
        span: spanOfOwner(sight.owner, facts),
        subjects: [sight.owner],
        source: { kind: "geometry", name: "a straight line from the lamp to the outside" },
        remedies,
      });
    });
  },
};

/** null: another rule tells it, with its own numbers. */
const WAYS: Readonly<Record<OpeningKind, string | null>> = {
  lever: "past its lever",
  shaft: "past its shaft",
  nut: null,
  button: "past its button",
  lens: "past its lens",
  display: "past the lip of its window",
  part: "past it",
  pocket: "through its pocket from behind",
  stud: "past the stud",
  screw: "past the screw",
  cable: "through the cable's way out",
  joint: "through the joint",
  edge: "past its edge",
  cell: "in its window",
  box: "past the wall of its lamp box",
  "bare-edge": null,
  "bare-face": null,
};
