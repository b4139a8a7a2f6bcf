// Room for knees and feet under a console that a person sits at.

import {
  type CodeEntry,
  type Finding,
  finding,
  type LimitSource,
} from "../../diagnostics/finding.ts";
import type { KneeRoom } from "../../fit/fit-facts.ts";
import { kneeFact } from "../../fit/operator/knees.ts";
import type { PosedOperator } from "../../layout/console/console-layout.ts";
import { kneeHeightNeeded } from "../../standards/knee-height.ts";
import { KNEE_BOX, SEATED_PERSON } from "../../standards/reach.ts";
import { isUnder } from "../limits.ts";
import { lengthWords, measureMm } from "../words.ts";
import type { ConsoleFacts, ConsoleRule } from "./console-rule.ts";
import { type KneeSide, type MoreRoom, moreKneeRoom, type WantedRoom } from "./more-knee-room.ts";
import { bodyName } from "./panel-words.ts";
import { raisedBayRemedies } from "./raised-bay.ts";

const entry: CodeEntry = {
  code: "fit/knee-room",
  severity: "query",
  title: "too little room for knees or feet",
  why: "Who sits at a desk puts the knees under it: 520 mm wide, 440 mm deep at the knee, 600 mm at the foot, and as high as the knees and thighs of a 95th-percentile man. A console beside the seat needs none.",
  example:
    "operator: { seat-height: 430 mm, at: [0, 0] }\nbays:\n  desk: { mount: console-rail, at: [350, 0, 600], along: [1, 0, 0], length: 20 modules, depth: 180 mm }",
};

export const kneeRoom: ConsoleRule = {
  entry,
  judge: (facts) => {
    const { knees } = facts.fit;
    const { operator } = facts.layout;
    if (knees === null || operator === null) return [];
    const asked: readonly Asked[] = [
      { what: "wide", side: "width", room: knees.width, needs: KNEE_BOX.width, source: BOX },
      {
        what: "deep at the knee",
        side: "depth",
        room: knees.depthAtKnee,
        needs: KNEE_BOX.depthAtKnee,
        source: BOX,
      },
      {
        what: "deep at the foot",
        side: "depth",
        room: knees.depthAtFoot,
        needs: KNEE_BOX.depthAtFoot,
        source: BOX,
      },
      {
        what: "high",
        side: "height",
        room: knees.height,
        needs: kneeHeightNeeded(operator.design.seatHeight),
        source: THIGHS,
      },
    ];
    return asked.flatMap((one) =>
      isUnder(one.room.has, one.needs) ? [tooLittle(one, operator, facts)] : [],
    );
  },
};

const BOX: LimitSource = { kind: "guidance", name: KNEE_BOX.source };

const THIGHS: LimitSource = {
  kind: "standard",
  name: `${SEATED_PERSON.source}: knee height and thigh clearance, 95th-percentile man`,
};

interface Asked {
  readonly what: string;
  readonly side: KneeSide;
  readonly room: KneeRoom;
  readonly needs: number;
  readonly source: LimitSource;
}

/** Where a bay or what stands on it hangs over the knees: the bay as much higher, if that leaves them the room. */
const higherBay = (
  { side, room, needs }: WantedRoom,
  operator: PosedOperator,
  facts: ConsoleFacts,
): MoreRoom => {
  const [over] = room.by;
  const bay = side === "height" ? (over?.bay ?? null) : null;
  const remedies =
    bay === null
      ? []
      : raisedBayRemedies(bay, needs - room.has, facts, ({ layout, bodies }) => {
          const has = kneeFact(operator, layout, bodies)?.height.has ?? needs;
          return !isUnder(has, needs);
        });
  const [first] = remedies;
  return { advice: first === undefined ? "" : ` ${first.title} leaves it.`, remedies };
};

const tooLittle = (
  { what, side, room, needs, source }: Asked,
  operator: PosedOperator,
  facts: ConsoleFacts,
): Finding => {
  const words = lengthWords(facts, operator.design.written.keys["seat-height"]);
  const wanted = { side, room, needs };
  const below = moreKneeRoom(wanted, facts);
  const { advice, remedies } = below.advice === "" ? higherBay(wanted, operator, facts) : below;
  const names = room.by.map(bodyName).join(" and the ");
  return finding(entry, {
    message: `The room for knees is ${words(room.has, needs)} ${what}, up to the ${names}; ${words(needs, room.has)} are wanted, ${words(needs - room.has, 0)} more.${advice}`,
    span: room.by[0]?.span ?? operator.design.written.span,
    related: [{ what: "the operator", span: operator.design.written.span }],
    subjects: room.by.map(({ id }) => id),
    measured: measureMm(room.has),
    limit: measureMm(needs),
    source,
    remedies,
  });
};
