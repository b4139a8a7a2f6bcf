// What gives knees and feet more room below a desk that the program makes: a knee space that the desk has room for, else by
// how much it is too short or too low. Nothing where something else than the frame stands in their way.

import type { FrameDesign } from "../../design/frame-design.ts";
import type { Remedy } from "../../diagnostics/finding.ts";
import type { KneeRoom } from "../../fit/fit-facts.ts";
import { decimal } from "../../geometry/number.ts";
import { upToTenth } from "../../geometry/tenths.ts";
import type { KneeRoom as DeskRoom } from "../../parts/frame/frame-part.ts";
import { frameRemedy } from "../frame/frame-remedy.ts";
import { isUnder } from "../limits.ts";
import { millimetres } from "../words.ts";
import type { ConsoleFacts } from "./console-rule.ts";

export type KneeSide = "width" | "depth" | "height";

export interface WantedRoom {
  readonly side: KneeSide;
  readonly room: KneeRoom;
  readonly needs: number;
}

export interface MoreRoom {
  /** Begins with a space; empty where there is none. */
  readonly advice: string;
  readonly remedies: readonly Remedy[];
}

export const moreKneeRoom = (wanted: WantedRoom, facts: ConsoleFacts): MoreRoom => {
  const { frame } = facts.layout.design;
  const desk = deskOver(wanted.room, facts);
  if (frame === null || desk === null) return NONE;
  switch (wanted.side) {
    case "width":
      return NONE;
    case "depth":
      return deeper(wanted, { frame, desk, facts });
    case "height":
      return higher(wanted, { frame, desk, facts });
  }
};

const NONE: MoreRoom = { advice: "", remedies: [] };

/** Of the desk whose boards alone are in the way. */
const deskOver = ({ by }: KneeRoom, { frame }: ConsoleFacts): DeskRoom | null => {
  const parts = by.map(({ id }) => frame?.parts.find((part) => part.id === id));
  const unit = frame?.units.find(({ number }) => number === parts[0]?.unit);
  return parts.every((part) => part?.unit === unit?.number) ? (unit?.knees ?? null) : null;
};

interface Desk {
  readonly frame: FrameDesign;
  readonly desk: DeskRoom;
  readonly facts: ConsoleFacts;
}

/** As deep at the foot as wanted: one that is written is as deep at the knee, one that nobody has written follows the desk. */
const deeper = ({ room, needs }: WantedRoom, { frame, desk, facts }: Desk): MoreRoom => {
  const isWritten = frame.knees !== null;
  const depth = upToTenth(desk.planned.foot + needs - room.has);
  const knees = kneesValue({ ...desk.planned, depth });
  if (!isUnder(desk.deep, depth)) return isWritten ? withKnees(knees, frame, facts) : NONE;
  const reach = millimetres(upToTenth(depth - desk.deep));
  const then = isWritten ? `, with knees: ${knees}` : "";
  return { advice: ` Bays that reach ${reach} farther leave it${then}.`, remedies: [] };
};

/** A height that nobody has written is as much as the bays leave. */
const higher = ({ room, needs }: WantedRoom, { frame, desk, facts }: Desk): MoreRoom => {
  const height = upToTenth(desk.planned.height + needs - room.has);
  const knees = kneesValue({ ...desk.planned, height });
  if (!isUnder(desk.high, height)) return withKnees(knees, frame, facts);
  const lift = millimetres(upToTenth(height - desk.high));
  const then = frame.knees === null ? "" : `, with knees: ${knees}`;
  return { advice: ` Bays that stand ${lift} higher leave it${then}.`, remedies: [] };
};

const withKnees = (value: string, frame: FrameDesign, facts: ConsoleFacts): MoreRoom => ({
  advice: ` knees: ${value} does.`,
  remedies: [frameRemedy(facts, frame, { group: null, key: "knees", value })],
});

const kneesValue = ({ depth, height }: DeskRoom["planned"]): string =>
  `[${decimal(depth, 1)}, ${decimal(height, 2)}]`;
