// The rules over printed parts, the light in them and the hands that put them together. To add one: its file, its line
// here, its example in tests/findings.

import type { Rule } from "../rule.ts";
import { bareEdge } from "./bare-edge.ts";
import { boardPlug } from "./board-plug.ts";
import { bossRoom } from "./boss-room.ts";
import { boxWarm } from "./box-warm.ts";
import { lampBoxDepth } from "./lamp-box-depth.ts";
import { legendUnlit } from "./legend-unlit.ts";
import { lightLeak } from "./light-leak.ts";
import { fallsApart } from "./loose-pieces.ts";
import { nutHole } from "./nut-hole.ts";
import { outOfReach } from "./out-of-reach.ts";
import { pocketBreaks } from "./pocket-breaks.ts";
import { printCollides } from "./print-collides.ts";
import { printTooDeep } from "./print-too-deep.ts";
import { screwLength } from "./screw-length.ts";
import { trimHidesDisplay } from "./trim-hides-display.ts";
import { trimLeaks } from "./trim-leaks.ts";

export const PRINTED_RULES: readonly Rule[] = [
  printCollides,
  printTooDeep,
  pocketBreaks,
  fallsApart,
  bossRoom,
  screwLength,
  outOfReach,
  boardPlug,
  trimHidesDisplay,
  trimLeaks,
  lampBoxDepth,
  nutHole,
  lightLeak,
  bareEdge,
  legendUnlit,
  boxWarm,
];
