// The cut of a look as the picture's own plane: what is drawn with it ends there.

import { Plane, Vector3 } from "three";
import type { Cut } from "./look.ts";

/** The cut leaves so much before its faces, mm, or they would be cut off themselves. */
const SKIN = 0.02;

/** Of what is cut; none where nothing is. */
export const cutPlanes = (cut: Cut | null): Plane[] => {
  if (cut === null) return [];
  const kept = facePlane(cut);
  kept.constant += SKIN;
  return [kept];
};

/** In which the cut faces lie. */
export const facePlane = ({ normal: { x, y, z }, offset }: Cut): Plane =>
  new Plane(new Vector3(x, y, z), -offset);
