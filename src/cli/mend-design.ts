// `--fix`: the remedies of faults written into a design's files, all or none. Whoever calls says what is judged.

import { join } from "node:path";
import type { Finding } from "../diagnostics/finding.ts";
import type { Project } from "../project.ts";
import { applyRemedies } from "./apply-remedies.ts";
import type { WrongUse } from "./command.ts";
import type { LoadedDesign } from "./load-design.ts";
import { type OpenProject, openProject } from "./open-project.ts";
import { replaceTexts } from "./replace-texts.ts";
import type { Shell } from "./shell.ts";

export interface Mending {
  /** The design and its root as they were asked for. */
  readonly design: string;
  readonly root: string | undefined;
  readonly judge: (loaded: LoadedDesign, project: Project) => readonly Finding[];
}

/** The design as it is after its remedies; as it was, where they could not be written. */
export const mendDesign = async (
  opened: OpenProject,
  { design, root, judge }: Mending,
  shell: Shell,
): Promise<OpenProject | WrongUse> => {
  const [{ compile }, library] = await Promise.all([import("../project.ts"), shell.library()]);
  const { loaded } = opened;
  const remedied = applyRemedies(loaded.files, (files) => {
    const changed = { ...loaded, files };
    return judge(changed, compile(changed, library, opened.project.memory));
  });
  const changes = [...remedied.files].flatMap(([file, after]) => {
    const before = loaded.files.get(file) ?? "";
    return before === after ? [] : [{ place: join(loaded.root, file), before, after }];
  });
  if (changes.length === 0) return opened;
  const trouble = replaceTexts(changes, shell.disk);
  if (trouble !== null) {
    shell.stderr(`Nothing was fixed: ${trouble}.\n`);
    return opened;
  }
  for (const { code, title } of remedied.applied) shell.stderr(`fixed: ${title} [${code}]\n`);
  return openProject(design, root, shell);
};
