// The groups of a console as objects of the scene: one mesh and one set of lines a lot. Follows the look: where a panel
// lies, how far its levels stand apart, what is faded or hidden.

import { BufferAttribute, BufferGeometry, Group, LineSegments, Matrix4, Mesh } from "three";
import type { Frame } from "../../src/geometry/space/frame.ts";
import type { SceneBody, SceneGroup, SceneLot, ScenePanel } from "./console-messages.ts";
import { LIFT, type Look } from "./look.ts";
import type { Materials } from "./tone-materials.ts";

export interface ShownLot {
  readonly lot: SceneLot;
  readonly mesh: Mesh;
  readonly lines: LineSegments;
  /** Holds the two, and whatever is drawn in the lot's own frame. */
  readonly holder: Group;
}

export interface ShownGroup {
  readonly key: string;
  readonly frame: Frame;
  readonly bodies: readonly SceneBody[];
  readonly lots: readonly ShownLot[];
  readonly holder: Group;
}

export const shownGroup = (
  { key, frame, bodies, lots }: SceneGroup,
  materials: Materials,
): ShownGroup => {
  const holder = new Group();
  holder.matrixAutoUpdate = false;
  const shown = (lots ?? []).map((lot) => shownLot(lot, materials));
  for (const each of shown) holder.add(each.holder);
  return { key, frame, bodies, lots: shown, holder };
};

const shownLot = (lot: SceneLot, materials: Materials): ShownLot => {
  const faces = new BufferGeometry();
  faces.setAttribute("position", new BufferAttribute(lot.positions, 3));
  faces.setIndex(new BufferAttribute(lot.triangles, 1));
  const edges = new BufferGeometry();
  edges.setAttribute("position", new BufferAttribute(lot.edges, 3));
  const mesh = new Mesh(faces, materials.face(lot.tone, false));
  const lines = new LineSegments(edges, materials.line(false));
  const holder = new Group();
  holder.add(mesh, lines);
  return { lot, mesh, lines, holder };
};

export const releaseGroup = ({ lots }: ShownGroup): void => {
  for (const { mesh, lines } of lots) {
    mesh.geometry.dispose();
    lines.geometry.dispose();
  }
};

export interface Follow {
  readonly look: Look;
  readonly panel: ScenePanel | null;
  readonly materials: Materials;
}

export const followLook = (group: ShownGroup, { look, panel, materials }: Follow): void => {
  const { key, holder, lots } = group;
  holder.matrix.copy(groupMatrix(group, look, panel));
  holder.matrixWorldNeedsUpdate = true;
  const isFaded = key === "" ? look.fadeFrame : look.fadePanels && key !== look.chosen;
  const apart = key !== "" && key === look.chosen ? look.apart : 0;
  const last = panel === null ? 0 : panel.levels.length - 1;
  for (const { lot, mesh, lines, holder: inner } of lots) {
    mesh.material = materials.face(lot.tone, isFaded);
    lines.material = materials.line(isFaded);
    lines.visible = lot.tone !== "sweep" || look.showSweeps;
    inner.visible = lot.tone !== "sweep" || look.showSweeps;
    inner.position.z = (last - lot.level) * apart;
  }
};

const groupMatrix = ({ key, frame }: ShownGroup, look: Look, panel: ScenePanel | null): Matrix4 => {
  const matrix = frameMatrix(look.moved.get(key) ?? frame);
  if (panel === null || look.turned !== key) return matrix;
  const middle = panel.width / 2;
  return matrix
    .multiply(new Matrix4().makeTranslation(middle, 0, LIFT))
    .multiply(new Matrix4().makeRotationY(Math.PI))
    .multiply(new Matrix4().makeTranslation(-middle, 0, 0));
};

export const frameMatrix = ({ x, y, z, origin }: Frame): Matrix4 =>
  new Matrix4().set(
    x.x,
    y.x,
    z.x,
    origin.x,
    x.y,
    y.y,
    z.y,
    origin.y,
    x.z,
    y.z,
    z.z,
    origin.z,
    0,
    0,
    0,
    1,
  );
