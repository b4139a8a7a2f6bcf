// A frame's drawings for the console's pack: its pieces as a list, and a picture of each step that adds a board.

import type { Drawing } from "../drawings/drawing.ts";
import { frameList } from "../drawings/frame-list.ts";
import { frameSteps, picturedSteps } from "../drawings/frame-steps.ts";
import type { AssemblyStep } from "../parts/frame/frame-part.ts";
import type { ConsoleForPack } from "./console-pack.ts";

export interface FrameDrawing {
  readonly id: string;
  readonly drawing: Drawing;
  /** null for the list of pieces. */
  readonly step: AssemblyStep | null;
}

/** Nothing where there is no frame. Steps are numbered as they stand in the assembly. */
export const frameDrawings = ({
  frame,
  layout,
  lettering,
}: ConsoleForPack): readonly FrameDrawing[] => {
  if (frame === null) return [];
  const options = { title: layout.design.title, lettering };
  const steps = picturedSteps(frame);
  return [
    { id: "frame-pieces", drawing: frameList(frame, options), step: null },
    ...frameSteps(frame, options).map((drawing, index) => {
      const step = steps[index]!;
      return { id: `frame-step-${frame.assembly.indexOf(step) + 1}`, drawing, step };
    }),
  ];
};
