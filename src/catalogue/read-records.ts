// A file of catalogue records (`kind: parts`), the built-in ones and a project's own alike: text to typed records.
// What can't be read is left out with its findings; everything else stands. Every record knows where it was written.

import { type Field, mapped } from "../design/field.ts";
import { dispensable, type Key, record, required, usual } from "../design/fields.ts";
import { FILE_KEYS } from "../design/file-keys.ts";
import type { JsonSchema } from "../design/json-schema.ts";
import { mapById, NAME_RULE, type NameRule } from "../design/map-fields.ts";
import { MEASURED } from "../design/measured-field.ts";
import type { MeasuredDesign } from "../design/panel-design.ts";
import { readText } from "../design/read-text.ts";
import { source } from "../design/source.ts";
import { MATERIALS } from "../design/stock-fields.ts";
import { oneOf } from "../design/text-fields.ts";
import type { Finding, Span } from "../diagnostics/finding.ts";
import { boardField, ledBoardField } from "./fields/board-fields.ts";
import {
  bezelField,
  bootField,
  capField,
  guardField,
  knobField,
  nutField,
  plugField,
  receptacleField,
  retainerField,
  screwField,
  standoffField,
  studField,
  washerField,
} from "./fields/hardware-fields.ts";
import { insertField } from "./fields/insert-field.ts";
import { materialField } from "./fields/material-field.ts";
import { mountField } from "./fields/mount-field.ts";
import { partField } from "./fields/part-fields.ts";
import { stripField } from "./fields/strip-field.ts";
import type { CatalogueRecord, MaterialRecord } from "./record.ts";

export interface WrittenRecord {
  readonly record: CatalogueRecord;
  /** The record's name in the text, for findings about the whole of it. */
  readonly span: Span;
}

export interface ReadRecords {
  /** By kind, in the order of the file. */
  readonly records: readonly WrittenRecord[];
  /** Sizes measured on things that the catalogue already holds, by the record's name. */
  readonly measured: readonly WrittenMeasures[];
  readonly findings: readonly Finding[];
}

export interface WrittenMeasures {
  readonly id: string;
  readonly measured: MeasuredDesign;
  readonly span: Span;
}

export function readRecords(file: string, text: string): ReadRecords {
  const from = source(file, text);
  const { root, findings } = readText(from);
  if (root === null) return { records: [], measured: [], findings };
  const reading = FILE.read(root, from);
  return {
    ...(reading.kind === "read" ? reading.value : { records: [], measured: [] }),
    findings: [...findings, ...reading.findings],
  };
}

/** For editors. */
export const recordsSchema = (): JsonSchema => FILE.schema;

type Section = Key<readonly WrittenRecord[]>;

/** Records of one kind by name; `build` gives a record its name. */
const section = <Nameless>(
  field: Field<Nameless>,
  about: string,
  named: {
    readonly build: (fields: Nameless, id: string) => CatalogueRecord | null;
    readonly rule?: NameRule;
  },
): Section =>
  dispensable(
    usual(
      mapped(mapById(about, field, named.rule ?? NAME_RULE), (entries) =>
        entries.flatMap((entry): readonly WrittenRecord[] => {
          const built = entry.kind === "read" ? named.build(entry.value, entry.id) : null;
          return built === null ? [] : [{ record: built, span: entry.keySpan }];
        }),
      ),
      { value: [], about },
    ),
  );

const MATERIAL_RULE: NameRule = {
  pattern: new RegExp(`^(?:${MATERIALS.join("|")})$`),
  hint: () => `materials are ${MATERIALS.join(", ")}`,
  isInstance: false,
};

const materialNamed = (
  fields: Omit<MaterialRecord, "id">,
  written: string,
): MaterialRecord | null => {
  const id = MATERIALS.find((material) => material === written);
  return id === undefined ? null : { id, ...fields };
};

const SECTIONS = {
  parts: section(partField, "parts by name", { build: (fields, id) => ({ id, ...fields }) }),
  knobs: section(knobField, "knobs by name", { build: (fields, id) => ({ id, ...fields }) }),
  caps: section(capField, "caps by name", { build: (fields, id) => ({ id, ...fields }) }),
  guards: section(guardField, "guards by name", { build: (fields, id) => ({ id, ...fields }) }),
  bezels: section(bezelField, "bezels by name", { build: (fields, id) => ({ id, ...fields }) }),
  boots: section(bootField, "boots by name", { build: (fields, id) => ({ id, ...fields }) }),
  plugs: section(plugField, "plugs by name", { build: (fields, id) => ({ id, ...fields }) }),
  nuts: section(nutField, "nuts by name", { build: (fields, id) => ({ id, ...fields }) }),
  washers: section(washerField, "washers by name", { build: (fields, id) => ({ id, ...fields }) }),
  standoffs: section(standoffField, "standoffs by name", {
    build: (fields, id) => ({ id, ...fields }),
  }),
  screws: section(screwField, "screws by name", { build: (fields, id) => ({ id, ...fields }) }),
  studs: section(studField, "studs by name", { build: (fields, id) => ({ id, ...fields }) }),
  retainers: section(retainerField, "retainers by name", {
    build: (fields, id) => ({ id, ...fields }),
  }),
  receptacles: section(receptacleField, "receptacles by name", {
    build: (fields, id) => ({ id, ...fields }),
  }),
  boards: section(boardField, "boards by name", { build: (fields, id) => ({ id, ...fields }) }),
  strips: section(stripField, "strips by name", { build: (fields, id) => ({ id, ...fields }) }),
  "led-boards": section(ledBoardField, "boards with LEDs by name", {
    build: (fields, id) => ({ id, ...fields }),
  }),
  inserts: section(insertField, "inserts by name", { build: (fields, id) => ({ id, ...fields }) }),
  mounts: section(mountField, "mounts by name", { build: (fields, id) => ({ id, ...fields }) }),
  materials: section(materialField, "materials by name", {
    build: materialNamed,
    rule: MATERIAL_RULE,
  }),
};

const MEASURES: Key<readonly WrittenMeasures[]> = dispensable(
  usual(
    mapped(mapById("measured things by name", MEASURED, NAME_RULE), (entries) =>
      entries.flatMap((entry) =>
        entry.kind === "read" ? [{ id: entry.id, measured: entry.value, span: entry.keySpan }] : [],
      ),
    ),
    {
      value: [],
      about: "Sizes of bought things as measured on the bench, for every panel that uses them",
    },
  ),
);

const FILE: Field<Omit<ReadRecords, "findings">> = mapped(
  record("a file of parts", {
    ...FILE_KEYS,
    kind: required(oneOf("the kind of this file", ["parts"]), "What this file describes"),
    ...SECTIONS,
    measured: MEASURES,
  }),
  (values) => ({
    measured: values.measured,
    records: [
      ...values.parts,
      ...values.knobs,
      ...values.caps,
      ...values.guards,
      ...values.bezels,
      ...values.boots,
      ...values.plugs,
      ...values.nuts,
      ...values.washers,
      ...values.standoffs,
      ...values.screws,
      ...values.studs,
      ...values.retainers,
      ...values.receptacles,
      ...values.boards,
      ...values.strips,
      ...values["led-boards"],
      ...values.inserts,
      ...values.mounts,
      ...values.materials,
    ],
  }),
);
