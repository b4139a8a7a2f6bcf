// A step of a drag in words: what is listed of what the panel meets, the least clearance with its pair, and the rest counted.

import { decimal } from "../../src/geometry/number.ts";
import { arithmeticNoise } from "../../src/geometry/tolerance.ts";
import type { DragMeeting, DragReading } from "./console-messages.ts";

/** All of them would be a wall of words: the gravest first, the rest counted. */
const LISTED = 8;

/**
 * The gravest, and always the least clearance among them: it is a number of its own, which no count of those that are near says.
 * `meetings`: gravest first, as a reading has them.
 */
export const listedMeetings = (
  meetings: readonly DragMeeting[],
): { readonly listed: readonly DragMeeting[]; readonly rest: readonly DragMeeting[] } => {
  const nearest = nearestOf(meetings);
  const isSeen = nearest === null || meetings.indexOf(nearest) < LISTED;
  const listed = isSeen ? meetings.slice(0, LISTED) : [...meetings.slice(0, LISTED - 1), nearest];
  return { listed, rest: meetings.filter((met) => !listed.includes(met)) };
};

/** Of those that neither clash nor touch the two with the least gap; null where nothing is near. */
export const nearestOf = (meetings: readonly DragMeeting[]): DragMeeting | null =>
  meetings.find(({ kind }) => kind === "near") ?? null;

/** By kinds, so that the clashes of the list and of its rest are those of the line under the picture. */
export const restWords = (rest: readonly DragMeeting[]): string => {
  const count = (kind: DragMeeting["kind"]): number =>
    rest.filter((met) => met.kind === kind).length;
  const [clashes, touches, nears] = [count("clash"), count("touching"), count("near")];
  return [
    ...(clashes > 0 ? [`${clashes} more ${clashes === 1 ? "clash" : "clashes"}`] : []),
    ...(touches > 0 ? [`${touches} more ${touches === 1 ? "touches" : "touch"}`] : []),
    ...(nears > 0 ? [`${nears} more near, with larger gaps`] : []),
  ].join(", ");
};

/** A move is from a module to a module; the stretch that a panel takes is said as its modules. */
export const moveWords = ({
  panel,
  from,
  module,
}: {
  readonly panel: string;
  readonly from: number;
  readonly module: number;
}): string =>
  Math.abs(from - module) < arithmeticNoise
    ? `${panel}: at module ${decimal(module, 2)}, where it stood`
    : `${panel}: moved from module ${decimal(from, 2)} to module ${decimal(module, 2)}`;

export const dragWords = ({ move, from, to, over, within, meetings }: DragReading): string => {
  const clashes = meetings.filter(({ kind }) => kind === "clash");
  const touches = meetings.filter(({ kind }) => kind === "touching");
  const [worst] = clashes;
  const nearest = nearestOf(meetings);
  const met =
    worst === undefined
      ? touches.length === 0
        ? "Nothing clashes."
        : `Nothing clashes; ${touches.length} ${touches.length === 1 ? "touches" : "touch"}.`
      : `${clashes.length} ${clashes.length === 1 ? "clash" : "clashes"}; ${worst.a.words} and ${worst.b.words} by ${decimal(worst.length, 2)} mm along the rail.`;
  const gap =
    nearest === null
      ? `Everything else is ${decimal(within, 2)} mm off or more.`
      : `Least clearance ${decimal(nearest.length, 2)} mm: ${nearest.a.words} and ${nearest.b.words}.`;
  const out = over > arithmeticNoise ? ` ${decimal(over, 2)} modules over the end of its bay.` : "";
  return `${move.panel} takes modules ${decimal(from, 2)} to ${decimal(to, 2)}. ${met} ${gap}${out}`;
};
