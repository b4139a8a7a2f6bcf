// Packs in a console's output that are of no panel of it any more: renamed since, or taken out. They are told of and left as they
// are: they may be another design's, and nothing is deleted that nobody asked to be.

import { join } from "node:path";
import { type Finding, finding } from "../diagnostics/finding.ts";
import type { PackDraft } from "../making/pack-drafts.ts";
import { ownZipName } from "../making/zip-places.ts";
import { PACK_OF_NONE } from "./codes.ts";
import { attempt } from "./disk-trouble.ts";
import type { LeftOverPack } from "./made.ts";
import { oldManifest } from "./old-manifest.ts";
import type { Settling } from "./settle-packs.ts";

/** `drafts`: all that the design has, written or not. */
export const leftOverPacks = (
  drafts: readonly Pick<PackDraft, "folder">[],
  { out, as, project, disk }: Settling,
): readonly LeftOverPack[] => {
  // The pack of a panel by itself lies among those of other designs, and so does a zip of all.
  if (project.console === null || as === "one-zip") return [];
  const ours = new Set(
    drafts.flatMap((draft) => [ownZipName(draft, project), draft.folder.slice(0, -1)]),
  );
  const names = attempt(() => (disk.look(out) === "folder" ? disk.list(out) : []));
  // What can't be looked into is no pack that could be told of.
  if (names.kind === "trouble") return [];
  return names.result
    .filter((name) => !(ours.has(name) || name.startsWith(".")))
    .toSorted()
    .flatMap((name) => {
      const place = join(out, name);
      const form = name.endsWith(".zip") ? "zips" : "folders";
      const read = attempt(() => oldManifest(place, form, disk));
      const manifest = read.kind === "done" ? read.result : null;
      return manifest === null ? [] : [{ name, place, manifest }];
    });
};

export const leftOverFindings = (
  packs: readonly LeftOverPack[],
  { project }: Pick<Settling, "project">,
): readonly Finding[] => {
  const { console } = project;
  if (console === null) return [];
  return packs.map(({ place, manifest: { panel, revision } }) =>
    finding(PACK_OF_NONE, {
      panel: "",
      message: `${place} holds a pack of "${panel}", revision ${revision}, and no panel of ${project.name} is made there any more. It was left as it is.`,
      span: console.design.written.span,
    }),
  );
};
