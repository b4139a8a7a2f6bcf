// A bench that finishes sheets from their written files alone: it cuts the lines of an SVG with a kerf that is wider on top than
// below, paints faces and walls, turns over what was cut face down, and tries go / no-go gauges in the openings.
// It shares nothing with the program but the file. Coordinates are the panel's, seen from the front, millimetres, y up.

import { placeOnEdge, readSvgFile, type SvgEdge, type SvgRun } from "./svg-reader.ts";

interface Place {
  readonly x: number;
  readonly y: number;
}

export interface Finishing {
  /** Full width of the cut at the side that faced the beam, and at the other. */
  readonly kerfTop: number;
  readonly kerfBottom: number;
  /** Thickness of paint on every face and wall; 0 for bare sheet. */
  readonly paint: number;
  /** Where the sheet's lower left corner, seen from the front, lies on the panel. Default 0, 0. */
  readonly corner?: Place;
}

export interface FinishedSheet {
  readonly openings: readonly FinishedOpening[];
  /** The largest piece that was cut out round its outside. */
  readonly outline: FinishedOutline | null;
}

/** Contour as drawn, and how far the finished wall stands outside it: at its narrowest and at its widest. */
export interface FinishedOpening {
  readonly id: string;
  readonly edges: readonly Edge[];
  readonly narrow: number;
  readonly wide: number;
}

export interface FinishedOutline {
  readonly id: string;
  /** At its largest: where the kerf is narrow, paint on both sides. */
  readonly width: number;
  readonly height: number;
}

export const finishSheet = (svg: string, finishing: Finishing): FinishedSheet => {
  const file = readSvgFile(svg);
  const [, , width = 0, height = 0] = (file.root.get("viewBox") ?? "").split(" ").map(Number);
  const isFaceDown = /face up: *rear/i.test(file.description);
  const corner = finishing.corner ?? { x: 0, y: 0 };
  const onPanel = (place: Place): Place => ({
    x: corner.x + (isFaceDown ? width - place.x : place.x),
    y: corner.y + height - place.y,
  });
  const { kerfTop, kerfBottom, paint } = finishing;
  const cut = file.paths.flatMap(({ group, attributes, runs }) =>
    runs.map((run) => ({
      group,
      id: attributes.get("id") ?? "",
      edges: run.edges.map((edge) => edgeOnPanel(edge, onPanel)),
      box: boxOf(run, onPanel),
    })),
  );
  const openings = cut
    .filter(({ group }) => group === "cut-inner" || group === "drill")
    .map(({ group, id, edges }) => {
      // A drill cuts its own diameter, straight through.
      const [top, bottom] = group === "drill" ? [0, 0] : [kerfTop, kerfBottom];
      const wallAt = (kerf: number): number => kerf / 2 - paint;
      return {
        id,
        edges,
        narrow: wallAt(Math.min(top, bottom)),
        wide: wallAt(Math.max(top, bottom)),
      };
    });
  const grown = 2 * paint - Math.min(kerfTop, kerfBottom);
  const outlines = cut
    .filter(({ group }) => group === "cut-outer")
    .map(({ id, box }) => ({ id, width: box.width + grown, height: box.height + grown }));
  const [largest = null] = outlines.toSorted((a, b) => b.width * b.height - a.width * a.height);
  return { openings, outline: largest };
};

export type GaugeShape =
  | { readonly kind: "round"; readonly diameter: number }
  | { readonly kind: "rectangle"; readonly width: number; readonly height: number }
  /** `flat`: from the axis to the flat; `clock`: where the flat looks, degrees clockwise from twelve. */
  | {
      readonly kind: "flat";
      readonly diameter: number;
      readonly flat: number;
      readonly clock: number;
    };

/** A bush, tab, stud, nut or dowel at its place. */
export interface BenchGauge {
  readonly what: string;
  readonly x: number;
  readonly y: number;
  /** What must go in, at its largest. */
  readonly go: GaugeShape;
  /** Diameter of the plug that must not go in; null where any larger opening is fine. */
  readonly noGoSize: number | null;
  /** How far the thing may be pushed aside to go in. Default 0: it must go in where it belongs. */
  readonly float?: number;
}

export interface GaugeResult {
  readonly gauge: BenchGauge;
  readonly goes: boolean;
  readonly why: string;
}

export const tryGauge = (sheet: FinishedSheet, gauge: BenchGauge): GaugeResult => {
  const opening = openingAt(sheet, gauge);
  if (opening === null) return { gauge, goes: false, why: "there is no opening" };
  const room = Math.max(...placesOf(gauge).map((place) => roomFor(opening, gauge.go, place)));
  if (room < -ROUNDING) return { gauge, goes: false, why: `binds by ${(-room).toFixed(3)}` };
  const { noGoSize } = gauge;
  if (noGoSize !== null) {
    const spare = widestDisc(opening, gauge) - noGoSize / 2;
    if (spare > -ROUNDING)
      return { gauge, goes: false, why: `no-go enters by ${spare.toFixed(3)}` };
  }
  return { gauge, goes: true, why: `goes with ${room.toFixed(3)} to spare` };
};

/** Arithmetic of the file's last digit: 0.0001 on a radius. */
const ROUNDING = 0.0001;

export const tryGauges = (
  sheet: FinishedSheet,
  gauges: readonly BenchGauge[],
): readonly GaugeResult[] => gauges.map((gauge) => tryGauge(sheet, gauge));

/** The sheet between rails, in a box or beside its neighbours: does it go into an opening of this size? */
export const tryFrame = (
  sheet: FinishedSheet,
  frame: { readonly width: number; readonly height: number },
): { readonly goes: boolean; readonly why: string } => {
  if (sheet.outline === null) return { goes: false, why: "there is no outline" };
  const spare = Math.min(frame.width - sheet.outline.width, frame.height - sheet.outline.height);
  return spare < -ROUNDING
    ? { goes: false, why: `too large by ${(-spare).toFixed(3)}` }
    : { goes: true, why: `goes with ${spare.toFixed(3)} to spare` };
};

/** What a thread must reach through: sheets as they are, coats of paint, washers; what is left must hold the nut. */
export const tryThread = (stack: {
  readonly sheetThicknesses: readonly number[];
  /** One entry a painted face. */
  readonly paints: readonly number[];
  readonly washers?: readonly number[];
  readonly threadLength: number;
  readonly nut: number;
}): { readonly goes: boolean; readonly why: string } => {
  const parts = [...stack.sheetThicknesses, ...stack.paints, ...(stack.washers ?? [])];
  const left = stack.threadLength - parts.reduce((sum, part) => sum + part, 0);
  return left < stack.nut
    ? { goes: false, why: `${left.toFixed(3)} of thread left for a nut of ${stack.nut}` }
    : { goes: true, why: `${left.toFixed(3)} of thread left` };
};

type Edge =
  | { readonly kind: "line"; readonly from: Place; readonly to: Place }
  | {
      readonly kind: "arc";
      readonly from: Place;
      readonly to: Place;
      readonly centre: Place;
      readonly radius: number;
      /** Angles in radians of its start and of the turn from there, as they lie on the panel. */
      readonly start: number;
      readonly turn: number;
    };

const edgeOnPanel = (edge: SvgEdge, onPanel: (place: Place) => Place): Edge => {
  const from = onPanel(edge.from);
  const to = onPanel(edge.to);
  if (edge.kind === "line") return { kind: "line", from, to };
  const centre = onPanel(edge.centre);
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  const middle = onPanel(placeOnEdge(edge, 0.5));
  const toMiddle = turnBetween(start, Math.atan2(middle.y - centre.y, middle.x - centre.x));
  const turn = Math.sign(toMiddle) * Math.abs(edge.turn);
  return { kind: "arc", from, to, centre, radius: edge.radius, start, turn };
};

/** Signed, at most half a turn. */
const turnBetween = (from: number, to: number): number => {
  const turn = (to - from) % (2 * Math.PI);
  if (turn > Math.PI) return turn - 2 * Math.PI;
  return turn < -Math.PI ? turn + 2 * Math.PI : turn;
};

const PROBES_AN_EDGE = 64;

const boxOf = (
  run: SvgRun,
  onPanel: (place: Place) => Place,
): { readonly width: number; readonly height: number } => {
  const places = run.edges.flatMap((edge) =>
    Array.from({ length: PROBES_AN_EDGE + 1 }, (_, index) =>
      onPanel(placeOnEdge(edge, index / PROBES_AN_EDGE)),
    ),
  );
  const across = places.map(({ x }) => x);
  const up = places.map(({ y }) => y);
  return {
    width: Math.max(...across) - Math.min(...across),
    height: Math.max(...up) - Math.min(...up),
  };
};

/** The smallest opening round the gauge's place. */
const openingAt = (sheet: FinishedSheet, place: Place): FinishedOpening | null => {
  const around = sheet.openings.filter(({ edges }) => depthInside(edges, place) > 0);
  const [smallest = null] = around.toSorted((a, b) => reach(a.edges) - reach(b.edges));
  return smallest;
};

const reach = (edges: readonly Edge[]): number =>
  edges.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);

const STEPS_ASIDE = 4;

/** The gauge's own place first, then places within its float. */
const placesOf = ({ x, y, float = 0 }: BenchGauge): readonly Place[] => {
  if (float === 0) return [{ x, y }];
  const steps = Array.from({ length: 2 * STEPS_ASIDE + 1 }, (_, index) => index - STEPS_ASIDE);
  return steps
    .flatMap((right) =>
      steps.map((up) => ({
        x: x + (right * float) / STEPS_ASIDE,
        y: y + (up * float) / STEPS_ASIDE,
      })),
    )
    .filter((place) => Math.hypot(place.x - x, place.y - y) <= float + ROUNDING);
};

/** Least distance from the gauge to the finished wall; negative where it binds. */
const roomFor = (opening: FinishedOpening, shape: GaugeShape, at: Place): number => {
  // A disc's room is exact: the distance of its middle from the drawn line, out to the wall, less its radius.
  if (shape.kind === "round")
    return depthInside(opening.edges, at) + opening.narrow - shape.diameter / 2;
  return Math.min(
    ...rim(shape).map(
      (place) =>
        depthInside(opening.edges, { x: at.x + place.x, y: at.y + place.y }) + opening.narrow,
    ),
  );
};

/** Radius of the largest plug round the gauge's place at the opening's widest. */
const widestDisc = (opening: FinishedOpening, at: Place): number =>
  depthInside(opening.edges, at) + opening.wide;

const PROBES_A_SIDE = 200;
const PROBES_A_TURN = 1440;

/** Places round the rim of a gauge about its own axis. */
const rim = (shape: Exclude<GaugeShape, { kind: "round" }>): readonly Place[] => {
  if (shape.kind === "rectangle") {
    const [right, top] = [shape.width / 2, shape.height / 2];
    return Array.from({ length: 2 * PROBES_A_SIDE + 1 }, (_, index) => {
      const part = index / PROBES_A_SIDE - 1;
      return [
        { x: part * right, y: top },
        { x: part * right, y: -top },
        { x: right, y: part * top },
        { x: -right, y: part * top },
      ];
    }).flat();
  }
  const looks = Math.PI / 2 - (shape.clock * Math.PI) / 180;
  const towards = { x: Math.cos(looks), y: Math.sin(looks) };
  return Array.from({ length: PROBES_A_TURN }, (_, index) => {
    const angle = (2 * Math.PI * index) / PROBES_A_TURN;
    const x = (shape.diameter / 2) * Math.cos(angle);
    const y = (shape.diameter / 2) * Math.sin(angle);
    // What lies beyond the flat is pressed back onto it.
    const over = Math.max(0, x * towards.x + y * towards.y - shape.flat);
    return { x: x - over * towards.x, y: y - over * towards.y };
  });
};

/** Distance to the drawn line: positive inside it, negative outside. */
const depthInside = (edges: readonly Edge[], place: Place): number => {
  const distance = Math.min(...edges.map((edge) => distanceTo(edge, place)));
  const turns = edges.reduce((sum, edge) => sum + windingOf(edge, place), 0);
  return Math.abs(turns) > Math.PI ? distance : -distance;
};

const distanceTo = (edge: Edge, place: Place): number => {
  if (edge.kind === "line") {
    const [x, y] = [edge.to.x - edge.from.x, edge.to.y - edge.from.y];
    const along = ((place.x - edge.from.x) * x + (place.y - edge.from.y) * y) / (x * x + y * y);
    const part = Math.min(1, Math.max(0, along));
    return Math.hypot(edge.from.x + part * x - place.x, edge.from.y + part * y - place.y);
  }
  const angle = Math.atan2(place.y - edge.centre.y, place.x - edge.centre.x);
  const fromStart = (angle - edge.start) * Math.sign(edge.turn);
  const turned = ((fromStart % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  const out = Math.hypot(place.x - edge.centre.x, place.y - edge.centre.y);
  if (turned <= Math.abs(edge.turn)) return Math.abs(out - edge.radius);
  return Math.min(
    Math.hypot(place.x - edge.from.x, place.y - edge.from.y),
    Math.hypot(place.x - edge.to.x, place.y - edge.to.y),
  );
};

/** Angle through which the edge is followed from `place`; round a closed line 2 pi inside and 0 outside. */
const windingOf = (edge: Edge, place: Place): number => {
  const parts = edge.kind === "line" ? 1 : PROBES_AN_EDGE;
  let turned = 0;
  let before = angleFrom(place, edge.from);
  for (let index = 1; index <= parts; index += 1) {
    const after = angleFrom(place, placeAlong(edge, index / parts));
    turned += turnBetween(before, after);
    before = after;
  }
  return turned;
};

const placeAlong = (edge: Edge, part: number): Place => {
  if (part === 1 || edge.kind === "line") return edge.to;
  const angle = edge.start + part * edge.turn;
  return {
    x: edge.centre.x + edge.radius * Math.cos(angle),
    y: edge.centre.y + edge.radius * Math.sin(angle),
  };
};

const angleFrom = (place: Place, to: Place): number => Math.atan2(to.y - place.y, to.x - place.x);
