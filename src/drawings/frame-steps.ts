// The assembly of a frame in pictures, one a step: what stands already in white, what goes in now in colour and drawn back
// along its way, with its number. Takes the frame; gives drawings of one size in the order of the steps that add a board.

import { circle, type Point, point } from "../geometry/contour.ts";
import {
  type Extent,
  extent,
  extentCentre,
  extentHeight,
  extentWidth,
  grownExtent,
  joinedExtent,
} from "../geometry/extent.ts";
import { contourExtent } from "../geometry/measure.ts";
import { dot, scaled, vector } from "../geometry/space/vector.ts";
import type { Face } from "../lettering/face.ts";
import type { Lettering } from "../lettering/lettering.ts";
import type { AssemblyStep, ConsoleFrame } from "../parts/frame/frame-part.ts";
import type { Drawing, DrawingItem } from "./drawing.ts";
import { frameView, towardViewer } from "./frame-view.ts";
import { filled, outlined, THIN } from "./items.ts";
import type { ShownBoard } from "./shown-board.ts";
import { paperFace, words, wrapped } from "./words.ts";

/** A console of 1.2 m on a page of a book. */
const SCALE = 0.1;
/** How far a piece is drawn before its place. */
const WAY = 160;
const MARGIN = 6;
const TEXT_HEIGHT = 2.5;
const LINE_PITCH = 4.2;
const TAG_RADIUS = 2.6;
const TAG_HEIGHT = 2.4;

export const frameSteps = (
  frame: ConsoleFrame,
  options: { readonly title: string; readonly lettering: Lettering },
): readonly Drawing[] => {
  const face = paperFace(options.lettering);
  const steps = picturedSteps(frame);
  const views = steps.map((_, index) => stepView(frame, steps, index));
  const boxes = views.map(({ items }) => boxOf(items));
  return views.map(({ items, tags }, index) => {
    const box = ofOneSize(boxes, boxes[index]!);
    const step = steps[index]!;
    const place = { number: frame.assembly.indexOf(step) + 1, count: frame.assembly.length };
    const said = captionItems(face, frame, { step, place, box });
    return {
      title: `${options.title}: frame, step ${place.number} of ${place.count}`,
      box: grownExtent(joinedExtent(box, said.box), MARGIN),
      items: [...items, ...tags.flatMap((tag) => tagItems(face, tag)), ...said.items],
    };
  });
};

/** What adds no board can't be seen; it is counted all the same, so that pictures and words have one numbering. */
export const picturedSteps = ({ assembly }: ConsoleFrame): readonly AssemblyStep[] =>
  assembly.filter(({ adds }) => adds.length > 0);

interface Tag {
  readonly at: Point;
  readonly number: number;
}

interface StepView {
  readonly items: readonly DrawingItem[];
  readonly tags: readonly Tag[];
}

const stepView = (frame: ConsoleFrame, steps: readonly AssemblyStep[], index: number): StepView => {
  const byId = new Map(frame.parts.map((part) => [part.id, part]));
  const { unit } = steps[index]!;
  // Units are put together one by one: those that stand elsewhere by then would only hide this one.
  const shown = steps
    .slice(0, index + 1)
    .flatMap(({ adds, enters, unit: of }, step): readonly ShownBoard[] =>
      (of === unit ? adds : []).flatMap((id) => {
        const part = byId.get(id);
        if (part === undefined) return [];
        const isNew = step === index;
        const shift = isNew && enters !== null ? scaled(enters, -WAY) : vector(0, 0, 0);
        return [{ part, shift, look: isNew ? "new" : "there" }];
      }),
    );
  const view = frameView(shown, { scale: SCALE, side: sideOf(steps[index]!) });
  const tags = shown.flatMap(({ part, look }) => {
    const at = view.middles.get(part.id);
    return look === "new" && at !== undefined ? [{ at, number: part.number }] : [];
  });
  return { items: view.items, tags };
};

/** What comes in from the right is seen from there. */
const sideOf = ({ enters }: AssemblyStep): "left" | "right" => {
  const sideways = enters === null ? 0 : dot(enters, towardViewer("left"));
  const isLevel = enters !== null && Math.abs(enters.z) < LEVEL;
  return isLevel && sideways > 0 ? "right" : "left";
};

/** Steeper than this a piece comes from above, and is seen from either side. */
const LEVEL = 0.1;

const boxOf = (items: readonly DrawingItem[]): Extent =>
  items
    .flatMap((item) => (item.kind === "outline" ? item.contours : []))
    .map(contourExtent)
    .reduce(joinedExtent);

/** Pictures of one size, each in its middle. */
const ofOneSize = (boxes: readonly Extent[], box: Extent): Extent => {
  const wide = Math.max(...boxes.map(extentWidth)) / 2;
  const high = Math.max(...boxes.map(extentHeight)) / 2;
  const { x, y } = extentCentre(box);
  return extent(x - wide, y - high, x + wide, y + high);
};

const tagItems = (face: Face | null, { at, number }: Tag): readonly DrawingItem[] => {
  const disc = circle(at, TAG_RADIUS);
  const text = words(face, `${number}`, point(at.x, at.y - TAG_HEIGHT / 2), {
    capHeight: TAG_HEIGHT,
    align: "middle",
    ink: "line",
  });
  return [filled([disc], "paper"), outlined([disc], { ink: "line", width: THIN }), ...text.items];
};

interface Caption {
  readonly items: readonly DrawingItem[];
  readonly box: Extent;
}

/** Below the picture: the step's number and words, then the names of what goes in. */
const captionItems = (
  face: Face | null,
  frame: ConsoleFrame,
  of: {
    readonly step: AssemblyStep;
    readonly place: { readonly number: number; readonly count: number };
    readonly box: Extent;
  },
): Caption => {
  const { step, place, box } = of;
  const names = step.adds.flatMap((id) => {
    const part = frame.parts.find((each) => each.id === id);
    return part === undefined ? [] : [`${part.number} ${part.title}`];
  });
  const room = { capHeight: TEXT_HEIGHT, width: box.maxX - box.minX };
  const lines = [`Step ${place.number} of ${place.count}. ${step.words}`, names.join(", ")].flatMap(
    (text) => wrapped(face, text, room),
  );
  const top = box.minY - LINE_PITCH;
  return {
    items: lines.flatMap(
      (text, line) =>
        words(face, text, point(box.minX, top - LINE_PITCH * (line + 1)), {
          capHeight: TEXT_HEIGHT,
          align: "start",
          ink: "line",
        }).items,
    ),
    box: extent(box.minX, top - LINE_PITCH * (lines.length + 1), box.maxX, box.minY),
  };
};
