// The rules over a console, in the order in which their findings are made.

import type { CodeEntry, Finding } from "../../diagnostics/finding.ts";
import { overrunByTolerance } from "./bay-overrun-by-tolerance.ts";
import { cannotLiftOut } from "./cannot-lift-out.ts";
import { clash } from "./clash.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { driverRoom } from "./driver-room.ts";
import { frontEdge } from "./front-edge.ts";
import { handsAcrossPanels } from "./hands-across-panels.ts";
import { kneeRoom } from "./knee-room.ts";
import { latchRoom } from "./latch-room.ts";
import { legendHidden } from "./legend-hidden.ts";
import { loopTooShort } from "./loop-too-short.ts";
import { outOfReach } from "./out-of-reach.ts";
import { outsideEnvelope } from "./outside-envelope.ts";
import { panelTooWide } from "./panel-too-wide.ts";
import { plugRoom } from "./plug-room.ts";
import { tooDeep } from "./too-deep.ts";
import { tooNear } from "./too-near.ts";
import { touching } from "./touching.ts";

const FIT_RULES: readonly ConsoleRule[] = [
  panelTooWide,
  tooDeep,
  clash,
  plugRoom,
  latchRoom,
  outsideEnvelope,
  touching,
  tooNear,
  outOfReach,
  legendHidden,
  kneeRoom,
  frontEdge,
  handsAcrossPanels,
  driverRoom,
  cannotLiftOut,
  loopTooShort,
  overrunByTolerance,
];

export const FIT_CODES: readonly CodeEntry[] = FIT_RULES.map(({ entry }) => entry);

export const judgeFit = (facts: ConsoleFacts): readonly Finding[] =>
  FIT_RULES.flatMap((rule) => rule.judge(facts)).map((one) => ({
    ...one,
    panel: facts.layout.name,
  }));
