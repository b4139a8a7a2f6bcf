// Patterns that mark a body through everything before it: stripes, dots and hatches on the screen, each with its own
// colour, so that a mark is told by its pattern as well.

import { Color, LineBasicMaterial, ShaderMaterial } from "three";
import type { MarkKind } from "./look.ts";

const COLOURS: Readonly<Record<MarkKind, { readonly day: string; readonly night: string }>> = {
  clash: { day: "#9c1c1c", night: "#ff9d92" },
  touching: { day: "#7a5200", night: "#f0c263" },
  near: { day: "#1f5a7a", night: "#7fc4e6" },
  finding: { day: "#6a3d72", night: "#cf9fd8" },
};

/** Number of the pattern in the shader below. */
const PATTERNS: Readonly<Record<MarkKind, number>> = { clash: 0, touching: 1, near: 2, finding: 3 };

export const markFace = (kind: MarkKind, isDark: boolean): ShaderMaterial =>
  new ShaderMaterial({
    uniforms: {
      ink: { value: markColour(kind, isDark) },
      pattern: { value: PATTERNS[kind] },
    },
    vertexShader: VERTEX,
    fragmentShader: FRAGMENT,
    clipping: true,
    transparent: true,
    depthTest: false,
    depthWrite: false,
  });

export const markLine = (kind: MarkKind, isDark: boolean): LineBasicMaterial =>
  new LineBasicMaterial({
    color: markColour(kind, isDark),
    transparent: true,
    depthTest: false,
    depthWrite: false,
  });

const markColour = (kind: MarkKind, isDark: boolean): Color =>
  new Color(isDark ? COLOURS[kind].night : COLOURS[kind].day);

const VERTEX = `
#include <clipping_planes_pars_vertex>
void main() {
  vec4 mvPosition = modelViewMatrix * vec4(position, 1.0);
  gl_Position = projectionMatrix * mvPosition;
  #include <clipping_planes_vertex>
}`;

/** Stripes leaning right; dots; stripes leaning left, wide apart; a lattice. In pixels of the screen. */
const FRAGMENT = `
uniform vec3 ink;
uniform int pattern;
#include <clipping_planes_pars_fragment>
void main() {
  #include <clipping_planes_fragment>
  vec2 at = gl_FragCoord.xy;
  bool isInk =
    pattern == 0 ? mod(at.x + at.y, 8.0) < 4.0 :
    pattern == 1 ? length(mod(at, 7.0) - 3.5) < 2.0 :
    pattern == 2 ? mod(at.x - at.y, 14.0) < 2.0 :
    mod(at.x + at.y, 10.0) < 1.6 || mod(at.x - at.y, 10.0) < 1.6;
  gl_FragColor = vec4(ink, isInk ? 0.8 : 0.03);
  #include <colorspace_fragment>
}`;
