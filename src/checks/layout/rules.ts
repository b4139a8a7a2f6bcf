// The rules over a panel's layout, in the order in which a builder would look: safety, then what can't be, then what may be.

import type { Rule } from "../rule.ts";
import { bodiesCollide } from "./bodies-collide.ts";
import { bodyInLayer } from "./body-in-layer.ts";
import { emergencyLook } from "./cautions.ts";
import { cutOutsOverlap } from "./cut-outs-overlap.ts";
import { belowFace, gripRange, threadTooShort, tooDeep } from "./depth.ts";
import { edges, instrumentFit, outsidePanel } from "./edges.ts";
import { fitUnmeasured, holeTooSmall, holeUncovered } from "./fits.ts";
import { hands } from "./hands.ts";
import { legendTooSmall, strokeBelowTool, strokeTooThin } from "./legibility.ts";
import { markingCovered, markingOffPanel, markingOverCutOut, missingGlyphs } from "./markings.ts";
import { markingsOverlap } from "./markings-overlap.ts";
import { mountInAcrylic, mountWeb } from "./mount-holes.ts";
import { overFixings } from "./over-fixings.ts";
import { wholeModules } from "./panel-size.ts";
import { railStrip } from "./rail-strip.ts";
import { knobBore, scaleStops } from "./scale-stops.ts";
import { fixingsApart, layerReversible, stackLoose } from "./stack.ts";
import { unmeasuredParts, unmeasuredSheets } from "./unmeasured.ts";
import { webs } from "./webs.ts";

export const LAYOUT_RULES: readonly Rule[] = [
  emergencyLook,
  wholeModules,
  instrumentFit,
  outsidePanel,
  cutOutsOverlap,
  overFixings,
  webs,
  edges,
  railStrip,
  mountWeb,
  mountInAcrylic,
  bodiesCollide,
  bodyInLayer,
  threadTooShort,
  gripRange,
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
  missingGlyphs,
  legendTooSmall,
  strokeTooThin,
  strokeBelowTool,
  unmeasuredParts,
  unmeasuredSheets,
];
