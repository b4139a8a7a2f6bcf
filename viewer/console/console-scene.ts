// Everything that the page is told of a console, in one message: shapes that it has already are left out by their
// signatures, frames are always sent.

import { textHash } from "../../src/diagnostics/text-edit.ts";
import type { ConsoleBody } from "../../src/fit/console-body.ts";
import { frameSeenFrom } from "../../src/fit/hull-relation.ts";
import { workingShoulder } from "../../src/fit/operator/working-shoulder.ts";
import { extentHeight, extentWidth } from "../../src/geometry/extent.ts";
import { flattened } from "../../src/geometry/flatten.ts";
import { pointOut, WORLD } from "../../src/geometry/space/frame.ts";
import { boxCorners, boxRound } from "../../src/geometry/space/space-box.ts";
import { type Vector, vector } from "../../src/geometry/space/vector.ts";
import type {
  BayLayout,
  ConsoleLayout,
  EnvelopeLayout,
  PlacedPanel,
  PosedOperator,
} from "../../src/layout/console/console-layout.ts";
import { SEATED_PERSON } from "../../src/standards/reach.ts";
import { isOwnBox } from "./body-tone.ts";
import type {
  ConsoleScene,
  SceneBay,
  SceneGroup,
  SceneOperator,
  ScenePanel,
} from "./console-messages.ts";
import { followersOf } from "./followers.ts";
import { sceneGroups, type TrueShape } from "./scene-groups.ts";

export interface MadeScene {
  readonly scene: ConsoleScene;
  readonly sent: ReadonlyMap<string, string>;
}

export const consoleScene = (
  layout: ConsoleLayout,
  bodies: readonly ConsoleBody[],
  options: { readonly sent: ReadonlyMap<string, string>; readonly trueShape: TrueShape },
): MadeScene => {
  const signatures = signaturesOf(layout, bodies);
  const known = (key: string): boolean =>
    options.sent.has(key) && options.sent.get(key) === signatures.get(key);
  const fresh = new Set([...signatures.keys()].filter((key) => !known(key)));
  const shown = sceneGroups(
    bodies.filter(({ panel }) => fresh.has(panel ?? "")),
    { ...layout, panels: layout.panels.filter(({ name }) => fresh.has(name)) },
    options.trueShape,
  );
  const kept = [{ name: "", frame: WORLD }, ...layout.panels]
    .filter(({ name }) => !fresh.has(name))
    .map(({ name, frame }): SceneGroup => ({ key: name, frame, bodies: [], lots: null }));
  const envelope = layout.envelope === null ? null : envelopeEdges(layout.envelope);
  return {
    sent: signatures,
    scene: {
      name: layout.name,
      title: layout.design.title,
      groups: [...shown.filter(({ key }) => fresh.has(key)), ...kept],
      bays: layout.bays.map(sceneBay),
      panels: layout.panels.map((panel) => scenePanel(layout, panel, bodies)),
      operator: layout.operator === null ? null : sceneOperator(layout.operator),
      envelope,
      box: sceneBox(bodies, envelope ?? new Float32Array()),
    },
  };
};

/** Arrays that change hands instead of being copied. */
export const transfersOf = ({ groups, envelope }: ConsoleScene): ArrayBufferLike[] => [
  ...groups.flatMap(({ lots }) =>
    (lots ?? []).flatMap(({ positions, triangles, edges }) => [
      positions.buffer,
      triangles.buffer,
      edges.buffer,
    ]),
  ),
  ...(envelope === null ? [] : [envelope.buffer]),
];

/** By group: changes where a recipe, a marking or a place within the panel does, and not where the panel moves. */
const signaturesOf = (
  layout: ConsoleLayout,
  bodies: readonly ConsoleBody[],
): ReadonlyMap<string, string> =>
  new Map([
    ["", textHash(JSON.stringify(bodies.filter(({ panel }) => panel === null)))],
    ...layout.panels.map(({ name, frame, layout: own }): [string, string] => [
      name,
      textHash(
        JSON.stringify([
          bodies
            .filter(({ panel }) => panel === name)
            .map((body) => [body.id, body.shape, nearFrame(frameSeenFrom(frame, body.frame))]),
          own.markings.map(({ id, fills, strokes }) => [id, fills, strokes]),
          own.layers.map(({ id, stock, finish }) => [id, stock?.light, finish?.id]),
        ]),
      ),
    ]),
  ]);

/** Seen from a panel that has moved a frame differs in its last bits. */
const nearFrame = (frame: { readonly origin: Vector; readonly x: Vector }): string =>
  [frame.origin, frame.x]
    .flatMap(({ x, y, z }) => [x, y, z])
    .map((value) => Math.round(value * 1e4))
    .join(" ");

const sceneBay = ({ id, frame, pitch, length, modules, width, depth }: BayLayout): SceneBay => ({
  id,
  frame,
  pitch,
  length,
  modules,
  width,
  depth,
});

const scenePanel = (
  console: ConsoleLayout,
  panel: PlacedPanel,
  bodies: readonly ConsoleBody[],
): ScenePanel => {
  const { name, layout, place } = panel;
  const pitch =
    place.kind === "bay" ? console.bays.find(({ id }) => id === place.bay)?.pitch : undefined;
  return {
    name,
    title: layout.design.title,
    place:
      place.kind === "bay" && pitch !== undefined
        ? { bay: place.bay, module: place.module, modules: (place.to - place.from) / pitch }
        : null,
    width: extentWidth(layout.nominal),
    height: extentHeight(layout.nominal),
    depth: Math.max(
      ...layout.components.map(({ depth }) => depth.total.nominal),
      ...layout.layers.map(({ rear }) => -rear),
    ),
    levels: [
      "controls",
      ...layout.layers.map(({ id }) => id),
      "behind",
      ...(bodies.some((body) => body.panel === name && isOwnBox(body, layout)) ? ["box"] : []),
    ],
    followers: followersOf(console, name).map((follower) => follower.name),
  };
};

const sceneOperator = (operator: PosedOperator): SceneOperator => ({
  hand: operator.hand,
  seat: operator.seat,
  shoulder: workingShoulder(operator),
  eyes: [operator.eye.small, operator.eye.large],
  functional: operator.functionalReach.small,
  extended: operator.extendedReach.small,
  source: SEATED_PERSON.source,
});

const ENVELOPE_CHORD = 1;

const envelopeEdges = ({ solid, frame }: EnvelopeLayout): Float32Array => {
  const lines: number[] = [];
  if (solid.kind === "layered")
    for (const { from, to, regions } of solid.layers)
      for (const { outline } of regions) {
        const ring = flattened(outline.contour, ENVELOPE_CHORD);
        for (const [index, { x, y }] of ring.entries()) {
          const next = ring[(index + 1) % ring.length]!;
          const [a, b] = [vector(x, y, from), vector(x, y, to)];
          addLine(lines, pointOut(frame, a), pointOut(frame, b));
          addLine(lines, pointOut(frame, a), pointOut(frame, vector(next.x, next.y, from)));
          addLine(lines, pointOut(frame, b), pointOut(frame, vector(next.x, next.y, to)));
        }
      }
  return Float32Array.from(lines);
};

const addLine = (lines: number[], a: Vector, b: Vector): void => {
  lines.push(a.x, a.y, a.z, b.x, b.y, b.z);
};

/** Of all that a view of the whole is to hold: bodies, and what encloses them. `lines`: two points each. */
const sceneBox = (bodies: readonly ConsoleBody[], lines: Float32Array): ConsoleScene["box"] => {
  const ends = Array.from({ length: lines.length / 3 }, (_, index) =>
    vector(lines[3 * index]!, lines[3 * index + 1]!, lines[3 * index + 2]!),
  );
  const points = [...bodies.flatMap(({ box: each }) => boxCorners(each)), ...ends];
  if (points.length === 0) return { low: vector(0, 0, 0), high: vector(1000, 1000, 1000) };
  const box = boxRound(points);
  return {
    low: vector(box.minX, box.minY, box.minZ),
    high: vector(box.maxX, box.maxY, box.maxZ),
  };
};
