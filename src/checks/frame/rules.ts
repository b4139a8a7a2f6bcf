// The rules over a console's frame, in the order in which their findings are made. A fault of its plan means that no board is made.

import type { CodeEntry, Finding } from "../../diagnostics/finding.ts";
import { boltWood } from "./bolt-wood.ts";
import { doorwayTooSmall } from "./doorway-too-small.ts";
import type { BoardFacts, FrameRule, PlanFacts, SheetFacts } from "./frame-rule.ts";
import { hatchMoved } from "./hatch-moved.ts";
import { kneesFilled } from "./knees-filled.ts";
import { kneesNowhere } from "./knees-nowhere.ts";
import { lapBarred } from "./lap-barred.ts";
import { largerThanBed } from "./larger-than-bed.ts";
import { leftOpen } from "./left-open.ts";
import { railFastener } from "./rail-fastener.ts";
import { railHolesMeet } from "./rail-holes-meet.ts";
import { railWood } from "./rail-wood.ts";
import { ribStep } from "./rib-step.ts";
import { ribTabless } from "./rib-tabless.ts";
import { ribsMeet } from "./ribs-meet.ts";
import { sectionsClose } from "./sections-close.ts";
import { thinWeb } from "./thin-web.ts";
import { tooNarrow } from "./too-narrow.ts";
import { toolTooThick } from "./tool-too-thick.ts";
import { unitsMeet } from "./units-meet.ts";
import { unmeasuredSheet } from "./unmeasured-sheet.ts";

const SHEET_RULES: readonly FrameRule<SheetFacts>[] = [unmeasuredSheet];

const PLAN_RULES: readonly FrameRule<PlanFacts>[] = [
  tooNarrow,
  unitsMeet,
  sectionsClose,
  kneesFilled,
  kneesNowhere,
  ribsMeet,
  ribTabless,
  ribStep,
  lapBarred,
  doorwayTooSmall,
  railHolesMeet,
  railFastener,
  toolTooThick,
];

const BOARD_RULES: readonly FrameRule<BoardFacts>[] = [
  largerThanBed,
  thinWeb,
  boltWood,
  railWood,
  leftOpen,
  hatchMoved,
];

export const FRAME_RULE_CODES: readonly CodeEntry[] = [
  ...SHEET_RULES,
  ...PLAN_RULES,
  ...BOARD_RULES,
].map(({ entry }) => entry);

export const judgeFrameSheet = (facts: SheetFacts): readonly Finding[] =>
  SHEET_RULES.flatMap((rule) => rule.judge(facts));

export const judgeFramePlan = (facts: PlanFacts): readonly Finding[] =>
  PLAN_RULES.flatMap((rule) => rule.judge(facts));

export const judgeFrameBoards = (facts: BoardFacts): readonly Finding[] =>
  BOARD_RULES.flatMap((rule) => rule.judge(facts));
