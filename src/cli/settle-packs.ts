// What becomes of a pack that was made: written as a folder or into a zip, or not, and then what is there of old is marked stale.

import { basename, join } from "node:path";
import { type Finding, finding } from "../diagnostics/finding.ts";
import { isNothing } from "../making/nothing-to-write.ts";
import type { PackDraft } from "../making/pack-drafts.ts";
import { inJointZip, inOwnZip, jointZipName, ownZipName } from "../making/zip-places.ts";
import type { PackInZip } from "../pack/pack-zip.ts";
import type { Project } from "../project.ts";
import { CANNOT_WRITE } from "./codes.ts";
import type { Disk } from "./disk.ts";
import { attempt } from "./disk-trouble.ts";
import type { MadePanel, MadeZip, PackForm } from "./made.ts";
import { markStale } from "./mark-stale.ts";
import { oldManifest } from "./old-manifest.ts";
import type { StaleMark } from "./pack-folder.ts";
import { writePack } from "./write-pack.ts";
import { markZipStale, writeZip } from "./write-zip.ts";

export interface Settling {
  readonly isWithheld: boolean;
  readonly out: string;
  readonly as: PackForm;
  readonly project: Project;
  readonly disk: Disk;
}

export interface Settled {
  readonly panels: readonly MadePanel[];
  readonly zips: readonly MadeZip[];
  readonly findings: readonly Finding[];
}

const NOTHING: Settled = { panels: [], zips: [], findings: [] };

/** One pack by itself: a folder, or a zip of its own. */
export const settlePack = (draft: PackDraft, settling: Settling): Settled => {
  if (isNothing(draft)) return settleNothing(draft, settling);
  if (settling.as !== "folders") {
    const name = ownZipName(draft, settling.project);
    return settleZip(name, [{ draft, inZip: inOwnZip(draft, settling.project) }], settling);
  }
  const { isWithheld, out, disk } = settling;
  const target = join(out, draft.folder);
  const made = unwritten(draft, { zip: null, folder: draft.folder });
  if (draft.faults.length > 0 || isWithheld) {
    const mark = markOf(attempt(() => markStale(target, staleReasons(draft.faults), disk)));
    return {
      panels: [{ ...made, isStale: mark.kind === "marked" }],
      zips: [],
      findings: unmarked(mark, target, draft),
    };
  }
  const result = writePack(target, draft.pack.files, disk);
  if (result.kind === "refused")
    return { panels: [made], zips: [], findings: [trouble(draft, result.why)] };
  return {
    panels: [{ ...made, isWritten: true, changes: result.changes }],
    zips: [],
    findings: [],
  };
};

/**
 * Nothing is cut of it now: cut files of an old pack are of boards that have gone. An old pack without any is left alone, since
 * `only` asks for nothing of what else is in it.
 */
const settleNothing = (draft: PackDraft, { out, as, project, disk }: Settling): Settled => {
  const isFolder = as === "folders";
  const name = isFolder ? draft.folder : ownZipName(draft, project);
  const target = join(out, name);
  const mark = markOf(
    attempt((): StaleMark => {
      const files = oldManifest(join(out, isFolder ? basename(name) : name), as, disk)?.files ?? [];
      if (!files.some(({ kind }) => kind.startsWith("cut-"))) return { kind: "no-pack" };
      return isFolder ? markStale(target, [GONE], disk) : markZipStale(target, [GONE], disk);
    }),
  );
  if (mark.kind === "no-pack") return NOTHING;
  const place = isFolder
    ? { zip: null, folder: draft.folder }
    : { zip: name, folder: inOwnZip(draft, project).folder };
  return {
    panels: [{ ...unwritten(draft, place), isStale: mark.kind === "marked" }],
    zips: [],
    findings: unmarked(mark, target, draft),
  };
};

const GONE = "Its console has no frame any more, and nothing is cut of the console itself.";

/** All packs in one zip: a fault in any of them speaks against it, since half a console looks like a whole one. */
export const settleInOneZip = (drafts: readonly PackDraft[], settling: Settling): Settled =>
  settleZip(
    jointZipName(settling.project),
    drafts
      .filter((draft) => !isNothing(draft))
      .map((draft) => ({ draft, inZip: inJointZip(draft, settling.project) })),
    settling,
  );

interface DraftInZip {
  readonly draft: PackDraft;
  readonly inZip: PackInZip;
}

const settleZip = (name: string, drafts: readonly DraftInZip[], settling: Settling): Settled => {
  const { isWithheld, out, disk } = settling;
  const first = drafts[0];
  if (first === undefined) return NOTHING;
  const target = join(out, name);
  const panels = drafts.map(({ draft, inZip }) =>
    unwritten(draft, { zip: name, folder: inZip.folder }),
  );
  const faults = drafts.flatMap(({ draft }) => draft.faults);
  if (faults.length > 0 || isWithheld) {
    const mark = markOf(attempt(() => markZipStale(target, staleReasons(faults), disk)));
    return {
      panels: panels.map((panel) => ({ ...panel, isStale: mark.kind === "marked" })),
      zips: [],
      findings: unmarked(mark, target, first.draft),
    };
  }
  const result = writeZip(
    target,
    drafts.map(({ inZip }) => inZip),
    disk,
  );
  if (result.kind === "refused")
    return { panels, zips: [], findings: [trouble(first.draft, result.why)] };
  const { bytes, changes } = result;
  return {
    panels: panels.map((panel) => ({
      ...panel,
      isWritten: true,
      changes: changes.get(panel.folder) ?? null,
    })),
    zips: [{ name, bytes }],
    findings: [],
  };
};

const markOf = (outcome: ReturnType<typeof attempt<StaleMark>>): StaleMark =>
  outcome.kind === "done" ? outcome.result : { kind: "unmarked", why: outcome.why };

/** An old pack that looks as good as new is worse than none. */
const unmarked = (mark: StaleMark, target: string, draft: PackDraft): readonly Finding[] =>
  mark.kind === "unmarked"
    ? [trouble(draft, `${target} is older than its design and could not be marked: ${mark.why}.`)]
    : [];

const unwritten = (
  { name, pack }: PackDraft,
  place: Pick<MadePanel, "zip" | "folder">,
): MadePanel => ({ name, pack, ...place, isWritten: false, isStale: false, changes: null });

const trouble = ({ name, span }: PackDraft, why: string): Finding =>
  finding(CANNOT_WRITE, { panel: name, message: why, span });

/** The same fault may speak against several packs of one zip. */
const staleReasons = (faults: readonly Finding[]): readonly string[] =>
  faults.length === 0
    ? ["Another panel of its console has a fault, and nothing was to be written."]
    : [...new Set(faults.map(({ code, message }) => `${code}: ${message}`))];
