// A second opinion on what light gets out of a stack: every part of it as triangles, thousands of rays from every lamp,
// each followed to its first triangle (Möller & Trumbore, Journal of Graphics Tools 2(1), 1997). Shares nothing with
// src/light: it knows nothing of chambers, openings or outlines, and names a ray by where it leaves the stack's box.

import { type Contour, circle, type Point, type Region } from "../../src/geometry/contour.ts";
import { flattened } from "../../src/geometry/flatten.ts";
import type { Kernel } from "../../src/geometry/solid/kernel.ts";
import { meshSolid } from "../../src/geometry/solid/mesh-solid.ts";
import { prism, type Solid, solidRegion } from "../../src/geometry/solid/solid.ts";
import type { LayerLayout, PanelLayout, PlacedBody } from "../../src/layout/panel-layout.ts";
import { isLampBoxPart } from "../../src/parts/printed/lamp-box-facts.ts";
import type { PrintedPart } from "../../src/parts/printed/printed-part.ts";
import { openTriangleTree, type TriangleTree, type Vector } from "./triangle-tree.ts";

export interface DarkBox {
  readonly layout: PanelLayout;
  readonly printedParts: readonly PrintedPart[];
  readonly kernel: Kernel;
  /** From each lamp, evenly over all directions. */
  readonly rays: number;
}

/** Whose opening light leaves by: the owner of a hole in the face or in the rear of a printed part, `edge` for the sides. */
export const waysOut = (box: DarkBox): readonly string[] => {
  const directions = spiral(box.rays);
  const found = new Set<string>();
  for (const source of sourcesOf(box))
    for (const name of waysFrom(source, directions, box)) found.add(name);
  return [...found].sort();
};

const waysFrom = (
  { at, own, clear, isSeated }: Source,
  directions: readonly Vector[],
  box: DarkBox,
): readonly string[] => {
  const tree = openTriangleTree(trianglesOf(box, null, clear));
  // An LED's own seat keeps in what it sends back.
  const ways = directions.filter((way) => !isSeated || way[2] > 0);
  return at.flatMap((from) =>
    ways
      .filter((way) => !tree.isMet(from, way))
      .map((way) => nameOf(from, way, box))
      .filter((name) => name !== own),
  );
};

interface Source {
  readonly at: readonly Vector[];
  /** The opening that it is meant to be seen through. */
  readonly own: string | null;
  /** Bodies that are no bodies to it. */
  readonly clear: (body: PlacedBody) => boolean;
  readonly isSeated: boolean;
}

const sourcesOf = ({ layout, printedParts }: DarkBox): readonly Source[] => {
  const strips = printedParts.flatMap(({ facts }) =>
    facts.channels.flatMap(({ leds, lampHeight }) =>
      leds.map(({ x, y }): Vector => [x, y, lampHeight]),
    ),
  );
  const lenses = layout.components
    .filter(({ part, common }) => part.family === "lamp" && common.lampBox === null)
    .flatMap(({ id, at, bodies }) =>
      bodies
        .filter(({ role, low }) => role === "lens" && low < 0)
        .map(
          ({ low, high }): Source => ({
            at: [0.2, 0.6].map(
              (share): Vector => [at.x, at.y, low + share * (Math.min(0, high) - low)],
            ),
            own: id,
            clear: ({ owner, role }) => owner === id && role === "lens",
            isSeated: false,
          }),
        ),
    );
  const cells = printedParts.filter(isLampBoxPart).flatMap(({ lampBox }) =>
    lampBox.cells.map(
      ({ window, leds }): Source => ({
        at: leds.map(({ x, y }): Vector => [x, y, lampBox.lampHeight]),
        own: window,
        clear: ({ owner }) => lampBox.cells.some((cell) => cell.window === owner),
        isSeated: true,
      }),
    ),
  );
  const lit: Source = { at: strips, own: null, clear: () => false, isSeated: false };
  return [...(strips.length === 0 ? [] : [lit]), ...lenses, ...cells];
};

/** Shares of a marking's box that some lamp's straight ray reaches, its own sheet's paint taken away. */
export const litShare = (box: DarkBox, markingId: string, grid: number): number => {
  const marking = box.layout.markings.find(({ id }) => id === markingId);
  const layer = box.layout.layers.find(({ id }) => id === marking?.layer);
  if (marking === undefined || layer === undefined) throw new Error(`no marking ${markingId}`);
  const tree = openTriangleTree(trianglesOf(box, layer.id));
  const lamps = box.printedParts.flatMap(({ facts }) =>
    facts.channels.flatMap(({ leds, lampHeight }) =>
      leds.map(({ x, y }): Vector => [x, y, lampHeight]),
    ),
  );
  const { minX, minY, maxX, maxY } = marking.box;
  let lit = 0;
  for (let row = 0; row < grid; row += 1)
    for (let column = 0; column < grid; column += 1) {
      const x = minX + ((column + 0.5) / grid) * (maxX - minX);
      const y = minY + ((row + 0.5) / grid) * (maxY - minY);
      if (lamps.some((lamp) => reaches(tree, lamp, [x, y, layer.front]))) lit += 1;
    }
  return lit / (grid * grid);
};

const reaches = (tree: TriangleTree, from: Vector, to: Vector): boolean => {
  const way: Vector = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  return !tree.isMet(from, way, 1);
};

/** Evenly over a sphere: a golden-angle spiral. */
const spiral = (count: number): readonly Vector[] =>
  Array.from({ length: count }, (_, index) => {
    const z = 1 - (2 * (index + 0.5)) / count;
    const radius = Math.sqrt(1 - z * z);
    const turn = index * Math.PI * (3 - Math.sqrt(5));
    return [radius * Math.cos(turn), radius * Math.sin(turn), z];
  });

type Add = (region: Region, heights: Heights, keep?: "sides") => void;

interface Heights {
  readonly low: number;
  readonly high: number;
}

const trianglesOf = (
  box: DarkBox,
  bareLayer: string | null = null,
  clear: Source["clear"] = () => false,
): Float64Array => {
  const { layout, printedParts, kernel } = box;
  const corners: number[] = [];
  const add: Add = (region, { low, high }, keep) =>
    addMesh(corners, meshSolid(prism(low, high, solidRegion(region, EXACT)), kernel), keep);
  for (const solid of printedParts.flatMap(blackSolids)) addMesh(corners, meshSolid(solid, kernel));
  for (const layer of layout.layers)
    if (layer.kind === "sheet") addSheet(layer, layout, { add, isBare: layer.id === bareLayer });
  for (const body of layout.components.flatMap(({ bodies }) => bodies))
    if (isOpaqueBody(body) && !clear(body)) add(plain(solidPart(body)), body);
  return Float64Array.from(corners);
};

const blackSolids = ({ role, bodies, pieces }: PrintedPart): readonly Solid[] => {
  if (role === "liner" || role === "diffuser") return [];
  const made = pieces.length > 1 ? pieces.flatMap((piece) => piece.bodies) : bodies;
  return made.filter(({ name }) => name === bodies[0]?.name).map(({ solid }) => solid);
};

const addSheet = (
  layer: LayerLayout,
  layout: PanelLayout,
  on: { readonly add: Add; readonly isBare: boolean },
): void => {
  const region = { outline: layer.outline, holes: layer.cutOuts.map(({ contour }) => contour) };
  const heights = { low: layer.rear, high: layer.front };
  if (layer.stock?.light === "opaque") on.add(region, heights);
  else addPaint(layer, region, on);
  for (const plug of plugsIn(layer, layout)) on.add(plain(plug), heights);
};

const EXACT = { outline: "exact", holes: "exact" } as const;

const plain = (outline: Contour): Region => ({ outline, holes: [] });

const addMesh = (
  corners: number[],
  { positions, triangles }: { readonly positions: Float32Array; readonly triangles: Uint32Array },
  keep?: "sides",
): void => {
  for (let at = 0; at < triangles.length; at += 3) {
    const three = [0, 1, 2].map((corner) => triangles[at + corner]! * 3);
    const heights = three.map((place) => positions[place + 2]!);
    if (keep === "sides" && heights.every((z) => z === heights[0])) continue;
    for (const place of three)
      corners.push(positions[place]!, positions[place + 1]!, positions[place + 2]!);
  }
};

/** Paint is as good as a hundredth of a millimetre of black. */
const addPaint = (
  layer: LayerLayout,
  region: Region,
  { add, isBare }: { readonly add: Add; readonly isBare: boolean },
): void => {
  const { front, rear } = layer;
  const order = layer.finish?.order;
  if (order !== undefined && order !== "engrave-fill" && !isBare)
    add(region, { low: front - 0.01, high: front });
  if (order === "cut-paint-engrave") add(region, { low: rear, high: front }, "sides");
};

/** Screws, dowels and studs in their holes; round a stud's head 0.5 mm of play. */
const plugsIn = (layer: LayerLayout, layout: PanelLayout): readonly Contour[] => {
  const fixings = layer.cutOuts.filter(
    ({ purpose }) => purpose === "fixing" || purpose === "dowel",
  );
  const head = layout.mount.headClearance / 2 - 0.5;
  const studs = layout.mountHoles.map(({ id, at }) => {
    const own = layer.cutOuts.find(({ owner }) => owner === id)?.contour;
    const isThread = own !== undefined && (own.kind === "loop" || own.radius < head);
    return isThread || head <= 0 ? own : circle(at, head);
  });
  return [...fixings.map(({ contour }) => contour), ...studs.filter((stud) => stud !== undefined)];
};

const isOpaqueBody = ({ role, low, high }: PlacedBody): boolean =>
  high > low && !["glass", "tails", "plug", "cable", "needle", "guard", "spanner"].includes(role);

/** A nut shuts off the circle inside its flats, however it stands. */
const solidPart = ({ role, footprint }: PlacedBody): Contour =>
  role === "nut" && footprint.kind === "circle"
    ? circle(footprint.centre, footprint.radius * Math.cos(Math.PI / 6))
    : footprint;

const nameOf = (from: Vector, way: Vector, { layout, printedParts }: DarkBox): string => {
  const rear = Math.min(...printedParts.map(({ facts }) => facts.box.rear));
  const wall = way[2] > 0 ? 0 : rear;
  const reach = way[2] === 0 ? Number.POSITIVE_INFINITY : (wall - from[2]) / way[2];
  const [x, y] = [from[0] + reach * way[0], from[1] + reach * way[1]];
  const cutOuts = layout.layers[0]?.cutOuts ?? [];
  const holes =
    way[2] > 0
      ? cutOuts.map(({ owner, contour }) => ({ owner, contour }))
      : printedParts.flatMap(({ facts }) => [
          ...facts.notches.map(({ circuit, exit }) => ({ owner: circuit, contour: exit })),
          ...facts.pockets.flatMap(({ owner, contours }) =>
            contours.map((contour) => ({ owner, contour })),
          ),
        ]);
  return holes.find(({ contour }) => isNearlyWithin(contour, x, y))?.owner ?? "edge";
};

/** Facets of a mesh stray from the circle by their chord. */
const CHORD = 0.05;

const isNearlyWithin = (contour: Contour, x: number, y: number): boolean =>
  [0, CHORD, -CHORD].some((dx) =>
    [0, CHORD, -CHORD].some((dy) => isWithin(contour, x + dx, y + dy)),
  );

const isWithin = (contour: Contour, x: number, y: number): boolean => {
  const corners = cornersOf(contour);
  let inside = false;
  corners.forEach((a, index) => {
    const b = corners[(index + 1) % corners.length]!;
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  });
  return inside;
};

/** An outline in chords: once, since thousands of rays ask for it. */
const cornersOf = (contour: Contour): readonly Point[] => {
  const known = chords.get(contour) ?? flattened(contour, 0.001);
  chords.set(contour, known);
  return known;
};

const chords = new WeakMap<Contour, readonly Point[]>();
