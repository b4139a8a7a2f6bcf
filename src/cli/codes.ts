// The table of what goes wrong between the disk and the program.

import type { CodeEntry } from "../diagnostics/finding.ts";

export const UNREADABLE_FILE: CodeEntry = {
  code: "cli/unreadable-file",
  severity: "fault",
  title: "a file of the design that can't be read",
  why: "The file is there but the program can't read it: it is a folder, it is closed to you, or its text is not UTF-8. What depends on it is left out. Save it as UTF-8 and see to its permissions.",
  example: "workshop: ../workshop.yaml     # saved as UTF-16",
};

export const OVERSIZE_FILE: CodeEntry = {
  code: "cli/oversize-file",
  severity: "fault",
  title: "a file too large to be a design",
  why: "A design is text that people write; the largest panel takes some tens of kilobytes. A file of many megabytes is something else, and is not read.",
  example: "catalogue: [holiday-film.yaml]",
};

export const TOO_MANY_FILES: CodeEntry = {
  code: "cli/too-many-files",
  severity: "fault",
  title: "a design of too many files",
  why: "The files of a design name each other, and the program reads until no new name comes up. So many names mean a mistake or mischief; the rest was not read.",
  example: "catalogue: [a.yaml]            # which names b.yaml, which names c.yaml ...",
};

export const OUTSIDE_ROOT: CodeEntry = {
  code: "cli/outside-root",
  severity: "fault",
  title: "a link that leads out of the design's folder",
  why: "The files of a design stay below its root, the folder that holds the console or workshop file, so that a design can be copied whole and can't read anything else on the disk. A link inside it that leads out is not followed. Copy the file in, or name a higher folder with --root.",
  example: "workshop: workshop.yaml        # a link to /somewhere/else/workshop.yaml",
};

export const CANNOT_WRITE: CodeEntry = {
  code: "cli/cannot-write",
  severity: "fault",
  title: "a pack that could not be written",
  why: "The disk refused, or something that is not from this program stands where a file of the pack must go. A pack is written whole or not at all: the old one is as it was.",
  example: "consolewright make panel.yaml --out /media/full-disk/panel",
};

export const PACK_OF_NONE: CodeEntry = {
  code: "cli/pack-of-none",
  severity: "note",
  title: "an old pack of no panel of this console",
  why: "Among the packs of a console lies one that this program wrote and that none of its panels has now: the panel was renamed or taken out, or the folder is another design's. It is not marked and nothing of it is deleted. Do not cut from it; remove it, or write the packs somewhere else with --out.",
  example: "panels: [{ file: pumps.yaml, as: pumps }]   # was bilge; out/desk/bilge is still there",
};

export const PACK_OF_OTHER_FORM: CodeEntry = {
  code: "cli/pack-of-other-form",
  severity: "note",
  title: "an older pack in another form",
  why: "A pack was made as a zip, and the folder of an earlier one still lies there, or the other way round. The older one stays as it was cut or read last and is not marked. Do not cut from it; remove it, or write the packs somewhere else with --out.",
  example:
    "# make DESIGN, and later make DESIGN --zip: out/desk/pumps lies beside out/desk/pumps.zip",
};

export const CLI_CODES: readonly CodeEntry[] = [
  UNREADABLE_FILE,
  OVERSIZE_FILE,
  TOO_MANY_FILES,
  OUTSIDE_ROOT,
  CANNOT_WRITE,
  PACK_OF_NONE,
  PACK_OF_OTHER_FORM,
];
