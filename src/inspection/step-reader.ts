// Reads a STEP file of solids back (ISO 10303-42, 10303-214): closed shells of faces on planes and cylinders, edges that are lines
// and circles. Takes text; never throws: what is wrong with it, what does not hang together or is not understood is listed.

import { strangersAmong } from "./step-agreement.ts";
import { type Curves, curvesOf } from "./step-curves.ts";
import { type StepEntity, type StepInstances, stepInstances } from "./step-instances.ts";
import type { StepEdge, StepFace, StepFile, StepSolid, UsedStepEdge } from "./step-shape.ts";
import { type StepLookUp, stepLookUp } from "./step-values.ts";

export const readStepFile = (text: string): StepFile => {
  const read = stepInstances(text);
  const look = stepLookUp(read.instances);
  const reading: Reading = { look, curves: curvesOf(look), edges: new Map() };
  const solids = look
    .all("MANIFOLD_SOLID_BREP")
    .map(({ number, entity }) => solidOf(number, entity, reading));
  const strangers = [...read.strangers, ...unitStrangers(read), ...look.strangers()];
  return {
    title: look.all("PRODUCT").map(({ entity }) => look.text(entity, 1))[0] ?? null,
    solids,
    strangers: [
      ...new Set([
        ...strangers,
        ...(solids.length === 0 ? ["no solid in it"] : solids.flatMap(strangersAmong)),
      ]),
    ],
  };
};

interface Reading {
  readonly look: StepLookUp;
  readonly curves: Curves;
  /** By the number of their instance: faces that meet share them. */
  readonly edges: Map<number, StepEdge | null>;
}

/** MANIFOLD_SOLID_BREP(name, outer) of CLOSED_SHELL(name, faces). */
const solidOf = (number: number, entity: StepEntity, reading: Reading): StepSolid => {
  const { look } = reading;
  const shell = look.named(look.reference(entity, 1), "CLOSED_SHELL");
  const faces = look
    .references(shell, 1)
    .map((face) => faceOf(face, reading))
    .filter((face) => face !== null);
  const edges = new Set(faces.flatMap(({ bounds }) => bounds.flat().map(({ edge }) => edge)));
  return { name: look.text(entity, 0) || `#${number}`, faces, edges: [...edges] };
};

/** ADVANCED_FACE(name, bounds, surface, same_sense). */
const faceOf = (number: number, reading: Reading): StepFace | null => {
  const { look, curves } = reading;
  const face = look.named(number, "ADVANCED_FACE");
  if (face === null) return null;
  const surface = curves.surface(look.reference(face, 2));
  if (surface === null) return null;
  const bounds = look.references(face, 1).map((bound) => boundOf(bound, reading));
  return { surface, isOutward: look.isTrue(face, 3), bounds };
};

/** FACE_BOUND(name, EDGE_LOOP(name, edges), orientation). */
const boundOf = (number: number, reading: Reading): readonly UsedStepEdge[] => {
  const { look } = reading;
  const bound = look.oneOf(number, ["FACE_OUTER_BOUND", "FACE_BOUND"]);
  const loop = look.named(look.reference(bound, 1), "EDGE_LOOP");
  const uses = look.references(loop, 1).flatMap((edge) => useOf(edge, reading));
  if (bound === null || look.isTrue(bound, 2)) return uses;
  return uses.toReversed().map(({ edge, isForward }) => ({ edge, isForward: !isForward }));
};

/** ORIENTED_EDGE(name, *, *, edge, orientation). */
const useOf = (number: number, reading: Reading): readonly UsedStepEdge[] => {
  const { look } = reading;
  const use = look.named(number, "ORIENTED_EDGE");
  const edge = use === null ? null : edgeOf(look.reference(use, 3), reading);
  return use === null || edge === null ? [] : [{ edge, isForward: look.isTrue(use, 4) }];
};

/** EDGE_CURVE(name, start, end, curve, same_sense). */
const edgeOf = (number: number | null, { look, curves, edges }: Reading): StepEdge | null => {
  if (number === null) return null;
  const known = edges.get(number);
  if (known !== undefined) return known;
  const edge = look.named(number, "EDGE_CURVE");
  const made =
    edge === null
      ? null
      : curves.edge({
          number,
          from: look.reference(edge, 1),
          to: look.reference(edge, 2),
          curve: look.reference(edge, 3),
          isAlong: look.isTrue(edge, 4),
        });
  edges.set(number, made);
  return made;
};

/** Lengths in another unit would be drawn too large or too small: SI_UNIT(.MILLI., .METRE.) must be the one of length. */
const unitStrangers = ({ instances }: StepInstances): readonly string[] => {
  const lengths = [...instances.values()].filter((entities) =>
    entities.some(({ name }) => name === "LENGTH_UNIT"),
  );
  const isMillimetre = (entities: readonly StepEntity[]): boolean =>
    entities.some(({ name, values: [prefix, unit] }) => {
      if (name !== "SI_UNIT" || prefix?.kind !== "word" || unit?.kind !== "word") return false;
      return prefix.word === "MILLI" && unit.word === "METRE";
    });
  return lengths.length > 0 && lengths.every(isMillimetre) ? [] : ["its unit is not millimetres"];
};
