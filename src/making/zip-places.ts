// Where a pack lies in a zip, and what the zip is called: the same for the command line and for the page. Every zip holds one
// folder of its own name; unpacked, it is what `make` writes as folders.

import { safeName } from "../pack/file-name.ts";
import type { PackInZip } from "../pack/pack-zip.ts";
import type { Project } from "../project.ts";
import type { PackDraft } from "./pack-drafts.ts";

/** The zip of one pack. */
export const ownZipName = (draft: Pick<PackDraft, "folder">, project: Named): string =>
  `${stemOf(draft, project)}.zip`;

/** The zip of all packs of a project. */
export const jointZipName = ({ name }: Named): string => `${safeName(name)}.zip`;

export const inOwnZip = (
  { folder, pack }: Pick<PackDraft, "folder" | "pack">,
  project: Named,
): PackInZip => ({ folder: `${stemOf({ folder }, project)}/`, files: pack.files });

/** The zip of all packs unpacks into the folder that the packs would be written to. */
export const inJointZip = (
  { folder, pack }: Pick<PackDraft, "folder" | "pack">,
  { name }: Named,
): PackInZip => ({ folder: `${safeName(name)}/${folder}`, files: pack.files });

type Named = Pick<Project, "name">;

const stemOf = ({ folder }: Pick<PackDraft, "folder">, { name }: Named): string =>
  folder === "" ? safeName(name) : folder.slice(0, -1);
