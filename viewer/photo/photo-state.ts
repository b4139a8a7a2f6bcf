// What the page keeps of a photograph beside the design: how it is shown, which mark is in hand, the picture drawn straight.
// None of it is design and none of it history.

import { computed, type ReadonlySignal, signal } from "@preact/signals";
import { lengthIn } from "../../src/design/length-text.ts";
import type { PhotoDesign, PhotoMarks, PhotoSheet } from "../../src/design/photo-design.ts";
import { type PhotoPlane, photoPlane } from "../../src/design/photo-plane.ts";
import { accuracyWords } from "../../src/design/photo-words.ts";
import { resolveInclude } from "../../src/design/resolve-include.ts";
import type { Extent } from "../../src/geometry/extent.ts";
import type { PlanePoint } from "../../src/geometry/homography-pair.ts";
import type { Degrees } from "../../src/geometry/quantity.ts";
import { upToTenth } from "../../src/geometry/tenths.ts";
import { binaryAt, panel } from "../desk.ts";
import { unsetMarks } from "./known-marks.ts";
import { spotsOf } from "./mark-spots.ts";

export const isPhotoOpen = signal(false);
export const isPhotoShown = signal(true);
/** Shares from 0 to 1. */
export const photoStrength = signal(1);
export const drawingStrength = signal(0.5);
/** Locked: the pointer moves no mark. */
export const isLocked = signal(false);
/** Whether what is placed or moved is said to be from the photograph. */
export const isTaking = signal(false);
export const chosenMark = signal(0);
export interface MarkInHand {
  /** Of the panel whose photograph it is set in. */
  readonly file: string;
  readonly index: number;
  readonly at: PlanePoint;
}

/** A mark on its way, until the text has it. */
export const markInHand = signal<MarkInHand | null>(null);
/** The sheet of paper on its way over the panel, until the text has it. */
export interface PaperInHand {
  /** Of the panel whose photograph it is of. */
  readonly file: string;
  readonly at: PlanePoint;
  readonly turn: Degrees;
}

export const paperInHand = signal<PaperInHand | null>(null);
/** What a key on the panel does while the sheet of paper is held there, false where it is none of its keys; null: not held. */
export const paperKey = signal<((event: KeyboardEvent) => boolean) | null>(null);
/** Why the picture can't be shown; null: it can. */
export const pictureTrouble = signal<string | null>(null);
/** Why it can't be drawn straight with the marks as they are; null: it can. The marks stay to be set. */
export const straightTrouble = signal<string | null>(null);

/** The open panel's photograph. */
export const photo: ReadonlySignal<PhotoDesign | null> = computed(
  () => panel.value?.design.photo ?? null,
);

/** Path of its file from the design's root. */
export const photoPath: ReadonlySignal<string | null> = computed(() => {
  const [now, file] = [photo.value, panel.value?.design.file];
  if (now === null || file === undefined) return null;
  const resolved = resolveInclude(file, now.file);
  return resolved.kind === "resolved" ? resolved.path : null;
});

/** Its bytes; null where it is not there. */
export const photoBytes: ReadonlySignal<Uint8Array | null> = computed(() =>
  photoPath.value === null ? null : (binaryAt(photoPath.value) ?? null),
);

export interface Picture {
  readonly key: string;
  readonly blob: Blob;
  /** An address within the page. */
  readonly address: string;
  /** Upright, in pixels. */
  readonly width: number;
  readonly height: number;
}

export const picture = signal<Picture | null>(null);

/** The marks as they are shown: with the one that is in hand where the hand is. */
export const marks: ReadonlySignal<PhotoMarks | null> = computed(() => {
  const now = photo.value;
  const [held, paper, file] = [markInHand.value, paperInHand.value, panel.value?.file];
  if (now === null) return null;
  if (paper !== null && paper.file === file && now.marks.kind === "sheet")
    return { kind: "sheet", sheet: { ...now.marks.sheet, at: paper.at, turn: paper.turn } };
  return held === null || held.file !== file ? now.marks : withMark(now.marks, held);
});

export const plane: ReadonlySignal<PhotoPlane | null> = computed(() =>
  marks.value === null ? null : photoPlane(marks.value),
);

export interface Straight {
  readonly address: string;
  readonly box: Extent;
  readonly perMm: number;
  /** Where the sheet of paper lay by the marks that it was drawn by; null where these are points. */
  readonly paper: PaperPlace | null;
}

export type PaperPlace = Pick<PhotoSheet, "at" | "turn">;

/** The picture as seen straight on; null while there is none. */
export const straight = signal<Straight | null>(null);

/** Whether a picture lies under the drawing, which is then drawn paler. */
export const isOverPhoto: ReadonlySignal<boolean> = computed(
  () => photo.value !== null && straight.value !== null && isPhotoShown.value,
);

/** How many marks of a sheet of paper are still to be set. */
export const unset: ReadonlySignal<number> = computed(() =>
  marks.value === null || picture.value === null ? 0 : unsetMarks(marks.value, picture.value),
);

export type Residual =
  | { readonly kind: "known"; readonly text: string }
  /** As the end of a sentence. */
  | { readonly kind: "unknown"; readonly why: string };

/** What a place from the picture may be off by, rounded up to a tenth: never said to be better than it is. */
export function residualNow(): Residual {
  const [now, of] = [plane.value, marks.value];
  if (of === null) return { kind: "unknown", why: "there is no photograph" };
  if (unset.value > 0)
    return { kind: "unknown", why: "not all marks are set on the corners of the paper yet" };
  if (now?.kind !== "plane")
    return { kind: "unknown", why: "the marks do not say where the panel lies" };
  const { accuracy } = now;
  if (accuracy.kind === "unknown") {
    const why = accuracyWords(accuracy, { marks: of.kind, count: spotsOf(of).length });
    return { kind: "unknown", why };
  }
  return { kind: "known", text: lengthIn("mm", upToTenth(accuracy.within)) };
}

function withMark(
  of: PhotoMarks,
  { index, at }: { readonly index: number; readonly at: PlanePoint },
): PhotoMarks {
  if (of.kind === "points")
    return {
      kind: "points",
      points: of.points.map((point, each) =>
        each === index ? { ...point, inPicture: at } : point,
      ),
    };
  const [a, b, c, d] = of.sheet.corners;
  const put = (each: number, corner: PlanePoint): PlanePoint => (each === index ? at : corner);
  return {
    kind: "sheet",
    sheet: { ...of.sheet, corners: [put(0, a), put(1, b), put(2, c), put(3, d)] },
  };
}
