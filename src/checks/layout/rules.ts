// The rules over a panel's layout, in the order in which a builder would look: safety, then what can't be, then what may be.
// To add one: its file, its line here, its example in tests/findings.

import type { Rule } from "../rule.ts";
import { belowFace } from "./below-face.ts";
import { bodiesCollide } from "./bodies-collide.ts";
import { cutOutsOverlap } from "./cut-outs-overlap.ts";
import { edgeDistance } from "./edge-distance.ts";
import { emergencyLook } from "./emergency-look.ts";
import { fitUnmeasured } from "./fit-unmeasured.ts";
import { fixingsApart } from "./fixings-apart.ts";
import { foulsLayer } from "./fouls-layer.ts";
import { grip } from "./grip.ts";
import { hands } from "./hands.ts";
import { holeTooSmall } from "./hole-too-small.ts";
import { holeUncovered } from "./hole-uncovered.ts";
import { instrumentFit } from "./instrument-fit.ts";
import { knobBore } from "./knob-bore.ts";
import { layerReversible } from "./layer-reversible.ts";
import { legendFaint } from "./legend-faint.ts";
import { legendTooSmall } from "./legend-too-small.ts";
import { markingCovered } from "./marking-covered.ts";
import { markingOffPanel } from "./marking-off-panel.ts";
import { markingOverCutOut } from "./marking-over-cut-out.ts";
import { markingsOverlap } from "./markings-overlap.ts";
import { measuredImpossible } from "./measured-impossible.ts";
import { missingGlyph } from "./missing-glyph.ts";
import { mountInAcrylic } from "./mount-in-acrylic.ts";
import { mountWeb } from "./mount-web.ts";
import { offPanel } from "./off-panel.ts";
import { overFixing } from "./over-fixing.ts";
import { photoMarkFar } from "./photo-mark-far.ts";
import { photoPlacesUnmeasured } from "./photo-places.ts";
import { photoResidual } from "./photo-residual.ts";
import { railStrip } from "./rail-strip.ts";
import { scaleStops } from "./scale-stops.ts";
import { stackLoose } from "./stack-loose.ts";
import { strokeBelowTool } from "./stroke-below-tool.ts";
import { strokeTooThin } from "./stroke-too-thin.ts";
import { threadTooShort } from "./thread-too-short.ts";
import { tooDeep } from "./too-deep.ts";
import { unmeasuredPart } from "./unmeasured-part.ts";
import { unmeasuredSheet } from "./unmeasured-sheet.ts";
import { web } from "./web.ts";
import { wholeModules } from "./whole-modules.ts";

export const LAYOUT_RULES: readonly Rule[] = [
  emergencyLook,
  measuredImpossible,
  wholeModules,
  instrumentFit,
  offPanel,
  cutOutsOverlap,
  overFixing,
  web,
  edgeDistance,
  railStrip,
  mountWeb,
  mountInAcrylic,
  bodiesCollide,
  foulsLayer,
  threadTooShort,
  grip,
  belowFace,
  tooDeep,
  holeTooSmall,
  holeUncovered,
  fitUnmeasured,
  knobBore,
  scaleStops,
  hands,
  stackLoose,
  fixingsApart,
  layerReversible,
  markingOffPanel,
  markingOverCutOut,
  markingCovered,
  markingsOverlap,
  missingGlyph,
  legendFaint,
  legendTooSmall,
  strokeTooThin,
  strokeBelowTool,
  unmeasuredPart,
  unmeasuredSheet,
  photoMarkFar,
  photoResidual,
  photoPlacesUnmeasured,
];
