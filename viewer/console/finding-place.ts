// Where in the console the things stand that a finding names: a body, a component with all its bodies, a panel, a bay. Pure: a
// scene in, with the shapes that were sent for it; bodies to mark and a ball to look at out.

import { type Frame, pointOut } from "../../src/geometry/space/frame.ts";
import {
  plus,
  scaled,
  spaceDistance,
  type Vector,
  vector,
} from "../../src/geometry/space/vector.ts";
import type { ConsoleScene, SceneBay, SceneGroup, ScenePanel } from "./console-messages.ts";

export interface NamedPlace {
  /** The first panel of them; null where what is named is of no panel. */
  readonly panel: string | null;
  readonly bodies: readonly { readonly group: string; readonly id: string }[];
  readonly ball: { readonly middle: Vector; readonly radius: number };
}

/** What a finding says of its place: the panel or console that it belongs to, and what it speaks of. */
export interface Naming {
  readonly panel: string;
  readonly subjects: readonly string[];
}

/** `groups`: each with its shapes as they were last sent. null: nothing of it stands in this console. */
export const namedPlace = (
  scene: Pick<ConsoleScene, "bays" | "panels">,
  groups: ReadonlyMap<string, SceneGroup>,
  { panel, subjects }: Naming,
): NamedPlace | null => {
  const own = scene.panels.find(({ name }) => name === panel);
  const stand: Stand = { scene, groups, own: own ?? null };
  const found = subjects.flatMap((subject) => thingsNamed(stand, subject));
  const things = found.length > 0 || own === undefined ? found : [wholePanel(stand, own)];
  const ball = ballRound(things.flatMap(({ points }) => points));
  if (ball === null) return null;
  return {
    panel: own?.name ?? things.find((thing) => thing.panel !== null)?.panel ?? null,
    bodies: things.flatMap(({ bodies }) => bodies),
    ball,
  };
};

interface Stand {
  readonly scene: Pick<ConsoleScene, "bays" | "panels">;
  readonly groups: ReadonlyMap<string, SceneGroup>;
  /** The panel that a finding belongs to; null where it belongs to the console. */
  readonly own: ScenePanel | null;
}

interface Thing {
  readonly panel: string | null;
  readonly bodies: NamedPlace["bodies"];
  readonly points: readonly Vector[];
}

/** A panel's own finding speaks of its own things; the console's of panels and bays, or of things with their panel before them. */
const thingsNamed = (stand: Stand, subject: string): readonly Thing[] => {
  const { scene, groups, own } = stand;
  if (own !== null) return bodiesNamed(groups.get(own.name), `${own.name}/${subject}`);
  const panel = scene.panels.find(({ name }) => name === subject);
  if (panel !== undefined) return [wholePanel(stand, panel)];
  const bay = scene.bays.find(({ id }) => id === subject);
  if (bay !== undefined) return [{ panel: null, bodies: [], points: bayCorners(bay) }];
  return [...groups.values()].flatMap((group) => bodiesNamed(group, subject));
};

/** By its full name, `panel/thing` or that of a body; of the console's own bodies by what they are of. */
const bodiesNamed = (group: SceneGroup | undefined, full: string): readonly Thing[] => {
  if (group === undefined) return [];
  const marked = group.bodies.flatMap(({ id, thing }, index) => {
    const whole = group.key === "" ? thing : `${group.key}/${thing}`;
    return whole === full || id === full || id.startsWith(`${full}/`) ? [{ id, index }] : [];
  });
  if (marked.length === 0) return [];
  return [
    {
      panel: group.key === "" ? null : group.key,
      bodies: marked.map(({ id }) => ({ group: group.key, id })),
      points: pointsOf(group, new Set(marked.map(({ index }) => index))),
    },
  ];
};

/** Corners of its shapes; where a lever sweeps is no part of where it stands. */
const pointsOf = ({ frame, lots }: SceneGroup, bodies: ReadonlySet<number>): readonly Vector[] =>
  (lots ?? [])
    .filter(({ tone }) => tone !== "sweep")
    .flatMap(({ positions, triangles, ranges }) =>
      ranges
        .filter(({ body }) => bodies.has(body))
        .flatMap(({ triangles: { from, count } }) =>
          Array.from(triangles.subarray(3 * from, 3 * (from + count)), (corner) =>
            pointOut(
              frame,
              vector(
                positions[3 * corner]!,
                positions[3 * corner + 1]!,
                positions[3 * corner + 2]!,
              ),
            ),
          ),
        ),
    );

const wholePanel = ({ groups }: Stand, { name, width, height }: ScenePanel): Thing => {
  const frame = groups.get(name)?.frame;
  const points = frame === undefined ? [] : faceCorners(frame, width, height);
  return { panel: name, bodies: [], points };
};

const faceCorners = (frame: Frame, width: number, height: number): readonly Vector[] =>
  [0, width].flatMap((x) => [0, height].map((y) => pointOut(frame, vector(x, y, 0))));

const bayCorners = ({ frame, length, width }: SceneBay): readonly Vector[] =>
  [-width / 2, width / 2].flatMap((x) => [0, length].map((y) => pointOut(frame, vector(x, y, 0))));

const ballRound = (points: readonly Vector[]): NamedPlace["ball"] | null => {
  const [first, ...others] = points;
  if (first === undefined) return null;
  let [low, high] = [first, first];
  for (const { x, y, z } of others) {
    low = vector(Math.min(low.x, x), Math.min(low.y, y), Math.min(low.z, z));
    high = vector(Math.max(high.x, x), Math.max(high.y, y), Math.max(high.z, z));
  }
  return { middle: scaled(plus(low, high), 1 / 2), radius: spaceDistance(low, high) / 2 };
};
