// Packs of the same design in another form than is made now: folders beside a zip, a zip beside folders. What is made new makes
// them old; they are told of and left as they are, since nothing is deleted that nobody asked to be.

import { basename, dirname, join } from "node:path";
import { type Finding, finding } from "../diagnostics/finding.ts";
import type { PackDraft } from "../making/pack-drafts.ts";
import { jointZipName, ownZipName } from "../making/zip-places.ts";
import { safeName } from "../pack/file-name.ts";
import { PACK_OF_OTHER_FORM } from "./codes.ts";
import { attempt } from "./disk-trouble.ts";
import type { LeftOverPack, PackForm } from "./made.ts";
import { oldManifests } from "./old-manifest.ts";
import type { Settling } from "./settle-packs.ts";

/** `drafts`: all that the design has, written or not. */
export const packsOfOtherForm = (
  drafts: readonly Named[],
  settling: Settling,
): readonly LeftOverPack[] => {
  const places = new Map(
    drafts.flatMap((draft) => placesOf(draft, settling)).map((place) => [place.path, place]),
  );
  const ours = new Set(drafts.flatMap((draft) => namesOf(draft, settling)));
  return [...places.values()].flatMap(({ path, form }) => {
    const read = attempt(() => oldManifests(path, form, settling.disk));
    const found = read.kind === "done" ? read.result : [];
    // Another design's pack may lie where one of this design would.
    const manifest = found.find(({ panel }) => ours.has(panel));
    return manifest === undefined ? [] : [{ name: basename(path), place: path, manifest }];
  });
};

type Named = Pick<PackDraft, "folder" | "name">;

/** A manifest names its panel as the panel's own file does, whatever its console calls it. */
const namesOf = ({ name }: Named, { project }: Settling): readonly string[] => [
  name,
  ...project.panels.filter((panel) => panel.name === name).map(({ design }) => design.name),
];

interface PackPlace {
  readonly path: string;
  readonly form: PackForm;
}

/** Where `make` puts a pack in the forms that are not made now. */
const placesOf = (draft: Named, { out, as, project }: Settling): readonly PackPlace[] => {
  const isConsole = project.console !== null;
  const own = safeName(project.name);
  const liesBeside = as === "one-zip" || (as === "zips" && !isConsole);
  const folder = liesBeside ? join(out, own) : out;
  // A folder of another name lies where the user said: what lies beside it is not known to be of this design.
  const above = liesBeside ? out : basename(out) === own ? dirname(out) : null;
  const zipFolder = isConsole ? folder : above;
  const all: readonly PackPlace[] = [
    { path: join(folder, draft.folder), form: "folders" },
    ...(zipFolder === null
      ? []
      : [{ path: join(zipFolder, ownZipName(draft, project)), form: "zips" as const }]),
    ...(above === null || !isConsole
      ? []
      : [{ path: join(above, jointZipName(project)), form: "one-zip" as const }]),
  ];
  // Of a single panel both kinds of zip are one file.
  const now = as === "one-zip" && !isConsole ? "zips" : as;
  return all.filter(({ form }) => form !== now);
};

export const otherFormFindings = (
  packs: readonly LeftOverPack[],
  { project }: Pick<Settling, "project">,
): readonly Finding[] => {
  const span = (project.console ?? project.panels[0])?.design.written.span;
  const [first, ...others] = packs;
  if (first === undefined || span === undefined) return [];
  const { place, manifest } = first;
  return [
    finding(PACK_OF_OTHER_FORM, {
      panel: "",
      message: `${place} holds an older pack, revision ${manifest.revision}, in another form than this one. It was left as it is: remove it, so that nobody cuts from it.`,
      span,
      suppressed: others.length,
    }),
  ];
};
