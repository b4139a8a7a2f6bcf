// A finding of the page's own list, in the picture: what it names is marked and the camera goes there, as to a finding of the fit.

import { effect } from "@preact/signals";
import type { Finding } from "../../src/diagnostics/finding.ts";
import { pointedAt } from "../desk.ts";
import { changeLook, client, look, scene, standingGroups, wanted } from "./console-state.ts";
import { namedPlace } from "./finding-place.ts";
import { findingWords } from "./finding-words.ts";
import { isCutAway } from "./look.ts";
import { meetingMarks, meetingNotes } from "./meeting-marks.ts";
import { cameraNow } from "./shown-picture.ts";
import { goalOnBall } from "./standing-views.ts";

/** Follows what the page points at until it is told to stop. */
export const followPointer = (): (() => void) => {
  let pointed: string | null = null;
  return effect(() => {
    const finding = pointedAt.value?.finding;
    if (finding === undefined) {
      // Pointed at no longer, it is marked no longer.
      if (pointed !== null) changeLook({ marks: [], notes: [], stretch: null });
      pointed = null;
      return;
    }
    const named = nameOf(finding);
    // The same one of a newer reading leaves the camera where the person has brought it.
    show(finding, named !== pointed);
    pointed = named;
  });
};

const nameOf = ({ code, panel, subjects }: Finding): string => [code, panel, ...subjects].join(" ");

const show = (finding: Finding, goes: boolean): void => {
  const of = scene.peek();
  const place = of === null ? null : namedPlace(of, standingGroups(), finding);
  if (place === null) {
    look.value = { ...look.peek(), marks: [], notes: [], stretch: null };
    return;
  }
  const { panel, bodies, ball } = place;
  const before = look.peek();
  const isOther = panel !== null && panel !== before.chosen;
  look.value = {
    ...before,
    ...(isOther ? { chosen: panel, turned: null, apart: 0 } : {}),
    marks: bodies.map(({ group, id }) => ({ kind: "finding", group, body: id })),
    notes: [{ kind: "finding", at: ball.middle, words: findingWords(finding), isOnIt: false }],
    stretch: null,
    ...(isCutAway(before.cut, ball.middle) ? { cut: null } : {}),
  };
  const camera = cameraNow();
  if (goes && camera !== null) wanted.value = goalOnBall(ball, camera);
  void markOverlap(finding.subjects);
};

/**
 * Panels written where others stand, as a drag to there marks them: what they meet where they are is asked for as a step of
 * a drag that goes nowhere. Nothing where the subjects are no panels on rails.
 */
const markOverlap = async (subjects: readonly string[]): Promise<void> => {
  const of = scene.peek();
  const asked = pointedAt.peek();
  const panel = of?.panels.find(({ name }) => name === subjects[0]);
  const isWithOther = of?.panels.some(({ name }) => name === subjects[1]) === true;
  if (panel === undefined || panel.place === null || !isWithOther) return;
  const reply = await client.drag({ panel: panel.name, module: panel.place.module });
  if (reply?.kind !== "dragged" || scene.peek() !== of || pointedAt.peek() !== asked) return;
  const clashes = reply.step.meetings.filter(
    ({ kind, a, b }) => kind === "clash" && [a, b].every(({ group }) => subjects.includes(group)),
  );
  if (clashes.length > 0)
    changeLook({ marks: clashes.flatMap(meetingMarks), notes: meetingNotes(clashes) });
};
