// The inside of a console, that its panels' bodies are to keep within: the envelope that is written, else what the frame's
// cheeks enclose. Facts; nothing where neither is known.

import type {
  ConsoleLayout,
  EnvelopeLayout,
  PlacedPanel,
} from "../layout/console/console-layout.ts";
import type { ConsoleFrame } from "../parts/frame/frame-part.ts";
import type { OutsideFact } from "./fit-facts.ts";

export interface ConsoleInside extends EnvelopeLayout {
  readonly of: OutsideFact["of"];
}

/**
 * A written envelope counts in place of the frame's, not beside it: it was measured, and it is how a builder says that there
 * is room past an open back. One that could not be read has its finding, and nothing else is put in its place. Of a frame it
 * is the unit that carries the panel's bay; what stands on its own feet stands on the console, not in it.
 */
export const consoleInside = (
  { design, envelope }: Pick<ConsoleLayout, "design" | "envelope">,
  frame: ConsoleFrame | null,
  { place }: Pick<PlacedPanel, "place">,
): ConsoleInside | null => {
  if (place.kind !== "bay") return null;
  if (envelope !== null) return { ...envelope, of: "envelope" };
  const isWritten = design.envelope !== null || design.unread.includes("envelope");
  if (frame === null || isWritten) return null;
  const unit = frame.units.find(({ bays }) => bays.includes(place.bay));
  return unit === undefined ? null : { ...unit.inside, of: "frame" };
};
