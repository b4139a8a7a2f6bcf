// A panel file. To add a key: a line in PANEL_KEYS, its field in the design's types, and a line in `panelOf`.

import { type Finding, finding } from "../diagnostics/finding.ts";
import { madeOnceWith } from "../geometry/made-once.ts";
import { TEXT_CODES } from "./codes-of-text.ts";
import { COMPONENT, type NamelessComponent } from "./component-fields.ts";
import { type Field, mapped, read, readOnce, refined } from "./field.ts";
import {
  dispensable,
  list,
  oneOrMore,
  optional,
  type RecordOf,
  record,
  recordWithUnread,
  required,
  usual,
} from "./fields.ts";
import { filePath } from "./file-field.ts";
import { FILE_KEYS } from "./file-keys.ts";
import { HOLE_NAMES } from "./hole-names.ts";
import { FIXINGS, STACK } from "./layer-fields.ts";
import { LETTERING } from "./legend-fields.ts";
import { someMillimetres } from "./length-fields.ts";
import { mapById, NAME_RULE } from "./map-fields.ts";
import { MARKINGS } from "./marking-fields.ts";
import { fromSameWords } from "./moved-words.ts";
import { count } from "./number-fields.ts";
import type { ComponentEntry, PanelDesign, SpareDesign } from "./panel-design.ts";
import { PHOTO } from "./photo-fields.ts";
import { ANGLED_BOX } from "./printed-fields.ts";
import { LONGEST_PANEL, size } from "./size-fields.ts";
import { date, longText, name, revisionMark, text } from "./text-fields.ts";
import { about, type TextNode } from "./text-node.ts";
import { FONT, LEGEND_GAP, legendHeight, REVISION, VIEWING_DISTANCE } from "./usual-values.ts";
import { spanOf, type Written } from "./written.ts";

const COMPONENTS: Field<readonly ComponentEntry[]> = mapped(
  mapById("components by name", readOnce(COMPONENT), { ...NAME_RULE, isInstance: true }),
  (entries) =>
    entries.map((entry): ComponentEntry => {
      const { id } = entry;
      return entry.kind === "read"
        ? called(entry.value, { id })
        : { kind: "unreadable", id, span: entry.span };
    }),
);

const called = madeOnceWith(
  (component: NamelessComponent, { id }: { readonly id: string }): ComponentEntry =>
    fromSameWords({ ...component, id }, component),
);

const SPARE: Field<SpareDesign> = record("a spare", {
  part: required(name("the name of a part"), "The kind of thing, from the catalogue"),
  count: usual(count("a count", { least: 1, most: 999 }), { value: 1, about: "How many" }),
});

const PANEL_KEYS = {
  ...FILE_KEYS,
  title: dispensable(
    optional(text("a title"), "What people call it; its name where it is not said"),
  ),
  revision: usual(revisionMark("a revision"), {
    value: REVISION,
    about: "Changes whenever a part changes",
  }),
  dated: dispensable(optional(date("a date"), "Date of the revision")),
  workshop: dispensable(optional(filePath("the path of a file"), "The workshop that makes it")),
  catalogue: usual(list("a list of files", filePath("the path of a file"), { leaveOut: true }), {
    value: [],
    about: "Files of your own parts",
  }),
  mount: required(
    name("the name of a mount"),
    "How it is held: console-rail, rack-19, corner-screws",
  ),
  width: optional(size("a width", LONGEST_PANEL), "Where the mount leaves it open"),
  height: required(size("a height", LONGEST_PANEL), "In the mount's own count, or as a length"),
  "viewing-distance": usual(someMillimetres("a distance"), {
    value: VIEWING_DISTANCE,
    about: "From the eye to the face",
  }),
  stack: required(readOnce(STACK), "The layers, front to back"),
  fixings: dispensable(optional(readOnce(FIXINGS), "What holds the layers together")),
  components: usual(COMPONENTS, { value: [], about: "The things on the panel, by name" }),
  spare: dispensable(
    usual(oneOrMore("spares", SPARE), { value: [], about: "Parts to buy in addition" }),
  ),
  markings: dispensable(
    usual(MARKINGS, { value: [], about: "What is read on the face besides legends" }),
  ),
  lettering: dispensable(optional(LETTERING, "Font, height and gap of all legends")),
  depth: dispensable(optional(someMillimetres("a depth"), "The depth there is behind the face")),
  box: dispensable(
    optional(ANGLED_BOX, "The printed box that it lies on, on the console: mount: box-lid"),
  ),
  photo: dispensable(
    optional(PHOTO, "A photograph under the drawing, to take places from; nothing is made from it"),
  ),
  note: dispensable(optional(longText("a note"), "For the build book")),
};

type Values = RecordOf<typeof PANEL_KEYS> & { readonly unread: readonly string[] };

export const PANEL: Field<PanelDesign> = refined(
  recordWithUnread("a panel", {
    ...PANEL_KEYS,
    revision: dispensable(PANEL_KEYS.revision),
    catalogue: dispensable(PANEL_KEYS.catalogue),
    "viewing-distance": dispensable(PANEL_KEYS["viewing-distance"]),
    components: dispensable(PANEL_KEYS.components),
  }),
  (values, node, { file }) =>
    read(panelOf(values, file), node, [...sameNames(values, node), ...namesOfHoles(values)]),
);

const panelOf = (values: Values, file: string): PanelDesign => {
  const { lettering, "viewing-distance": viewingDistance } = values;
  return {
    kind: "panel",
    written: values.written,
    file,
    name: values.name,
    title: values.title ?? values.name,
    revision: values.revision,
    dated: values.dated,
    workshop: values.workshop,
    catalogue: values.catalogue,
    mount: values.mount,
    width: values.width,
    height: values.height,
    viewingDistance,
    stack: values.stack,
    fixings: values.fixings,
    components: values.components,
    spares: values.spare,
    markings: values.markings,
    lettering: {
      font: lettering?.font ?? FONT,
      height: lettering?.height ?? legendHeight(viewingDistance),
      gap: lettering?.gap ?? LEGEND_GAP,
    },
    depth: values.depth,
    box: values.box,
    photo: values.photo,
    note: values.note,
    unread: values.unread,
  };
};

/** A marking must not be called like a component or another marking. */
const sameNames = (values: Values, node: TextNode): readonly Finding[] => {
  const owners = new Map<string, Finding["span"]>(
    values.components.map((entry) => [
      entry.id,
      entry.kind === "unreadable" ? entry.span : entry.written.span,
    ]),
  );
  const findings: Finding[] = [];
  for (const { id, written } of values.markings) {
    const first = owners.get(id);
    if (first === undefined) {
      owners.set(id, nameSpan(written));
    } else {
      findings.push(
        finding(TEXT_CODES.duplicateId, {
          message: `${about(node)}a marking is named ${id} like another thing on the panel; give it a name of its own`,
          span: nameSpan(written),
          subjects: [id],
          related: [{ what: "the first is here", span: first }],
        }),
      );
    }
  }
  return findings;
};

/** A pattern's members are numbered as the panel's own holes are. */
const namesOfHoles = ({ components, markings }: Values): readonly Finding[] => {
  const patterns = [
    ...components.flatMap((entry) =>
      entry.kind === "pattern" ? [{ id: entry.id, span: entry.written.span }] : [],
    ),
    ...markings.flatMap((marking) =>
      "pattern" in marking && marking.pattern !== null
        ? [{ id: marking.id, span: nameSpan(marking.written) }]
        : [],
    ),
  ];
  return patterns.flatMap(({ id, span }) => {
    if (!HOLE_NAMES.includes(id)) return [];
    return finding(TEXT_CODES.duplicateId, {
      message: `the members of ${id} would be called ${id}.1, ${id}.2 ... like the panel's own holes; give it another name, such as ${id}-keys`,
      span,
      subjects: [id],
    });
  });
};

const nameSpan = (written: Written): Finding["span"] => spanOf(written, "name");
