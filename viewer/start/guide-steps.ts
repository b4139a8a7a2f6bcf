// The steps of the guided start: what each asks for, which control it points at, and by what state of the page it is done.

import { room } from "../console/open-room.ts";
import { consoleReading, findings, history, pointedAt, selection } from "../desk.ts";
import { isMenuOpen } from "./menu-state.ts";

export interface GuideStep {
  readonly title: string;
  readonly words: string;
  /** Selects the control that it points at. */
  readonly target: string;
  /** Whether the open design has something for it. */
  readonly isThere: () => boolean;
  /** What the deed changes. */
  readonly state: () => unknown;
  /** Whether a changed state is the one that was asked for. */
  readonly isDone: () => boolean;
}

const always = (): boolean => true;

export const GUIDE_STEPS: readonly GuideStep[] = [
  {
    title: "Pick something.",
    words: "Click a switch or a word in the drawing; from the keyboard press Tab on it.",
    target: ".board",
    isThere: always,
    state: () => selection.value,
    isDone: () => selection.value.length > 0,
  },
  {
    title: "Move it.",
    words:
      "Drag it, or press an arrow key. Its line in the text changes with it: the text is the design.",
    target: ".board",
    isThere: always,
    state: () => history.value.done.length,
    isDone: () => history.value.done.length > 0,
  },
  {
    title: "Take it back.",
    words: "Undo: every step can be undone, without end.",
    target: ".file-bar button",
    isThere: always,
    state: () => history.value.undone.length,
    isDone: () => history.value.undone.length > 0,
  },
  {
    title: "See what is found.",
    words:
      "Choose a finding: it is marked in the drawing and in the text, with both numbers and what works.",
    target: ".findings",
    isThere: () => findings.value.length > 0,
    state: () => pointedAt.value,
    isDone: () => pointedAt.value !== null,
  },
  {
    title: "Step into the console.",
    words: "“Console” shows all panels in space, with what clashes and what the operator reaches.",
    target: ".rooms button:nth-child(2)",
    isThere: () => consoleReading.value !== null,
    state: () => room.value,
    isDone: () => room.value === "console",
  },
  {
    title: "Begin your own.",
    words:
      "“Open” takes a folder, files, or a list of what you bought, and leads back to the examples.",
    target: ".open-menu summary",
    isThere: always,
    state: () => isMenuOpen.value,
    isDone: () => isMenuOpen.value,
  },
];
