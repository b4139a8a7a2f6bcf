// The steps of the guided start: what each asks for, which control it points at, and by what state of the page it is done.

import { room } from "../console/open-room.ts";
import { consoleReading, findings, history, pointedAt, selection } from "../desk.ts";
import { isMenuOpen } from "./menu-state.ts";
import { guideStep } from "./start-state.ts";

export interface GuideStep {
  readonly title: string;
  readonly words: string;
  /** Selects the control that it points at. */
  readonly target: string;
  /** Whether the open design has something for it. */
  readonly isThere: () => boolean;
  /** Whether a step before it will bring what it is about; it is counted then. */
  readonly isComing: () => boolean;
  /** What the deed changes. */
  readonly state: () => unknown;
  /** Whether a changed state is the one that was asked for. */
  readonly isDone: () => boolean;
}

const always = (): boolean => true;
const never = (): boolean => false;

const isClean = (): boolean => findings.value.length === 0;

const hasFault = (): boolean => findings.value.some(({ finding }) => finding.severity === "fault");

/** Whether the step is still to come in which a clean design is given a fault. */
const isFaultComing = (): boolean => isClean() && (guideStep.value ?? 0) <= FAULT_STEP;

export const GUIDE_STEPS: readonly GuideStep[] = [
  {
    title: "Pick something.",
    words: "Click a switch or a word in the drawing; from the keyboard press Tab on it.",
    target: ".board",
    isThere: always,
    isComing: never,
    state: () => selection.value,
    isDone: () => selection.value.length > 0,
  },
  {
    title: "Move it.",
    words:
      "Drag it, or press an arrow key. Its line in the text changes with it: the text is the design.",
    target: ".board",
    isThere: always,
    isComing: never,
    state: () => history.value.done.length,
    isDone: () => history.value.done.length > 0,
  },
  {
    title: "Take it back.",
    words: "Undo: every step can be undone, without end.",
    target: ".file-bar button",
    isThere: always,
    isComing: never,
    state: () => history.value.undone.length,
    isDone: () => history.value.undone.length > 0,
  },
  {
    title: "Do something wrong.",
    words:
      "Nothing is found in this design. Drag what you picked onto its neighbour, or hold an arrow key until it is there.",
    target: ".board",
    isThere: isClean,
    isComing: never,
    state: () => findings.value,
    isDone: hasFault,
  },
  {
    title: "See what is found.",
    words:
      "Choose a finding: it is marked in the drawing and in the text, with both numbers and what works.",
    target: ".findings",
    isThere: () => !isClean(),
    isComing: isFaultComing,
    state: () => pointedAt.value,
    isDone: () => pointedAt.value !== null,
  },
  {
    title: "Put it right.",
    words: "Undo until no fault is left. While there is one, no file of the panel is written.",
    target: ".file-bar button",
    isThere: () => hasFault() && history.value.done.length > 0,
    isComing: isFaultComing,
    state: () => findings.value,
    isDone: () => !hasFault(),
  },
  {
    title: "Step into the console.",
    words: "“Console” shows all panels in space, with what clashes and what the operator reaches.",
    target: ".rooms button:nth-child(2)",
    isThere: () => consoleReading.value !== null,
    isComing: never,
    state: () => room.value,
    isDone: () => room.value === "console",
  },
  {
    title: "Begin your own.",
    words:
      "“Open” takes a folder, files, or a list of what you bought, and leads back to the examples.",
    target: ".open-menu summary",
    isThere: always,
    isComing: never,
    state: () => isMenuOpen.value,
    isDone: () => isMenuOpen.value,
  },
];

const FAULT_STEP = GUIDE_STEPS.findIndex(({ isThere }) => isThere === isClean);
