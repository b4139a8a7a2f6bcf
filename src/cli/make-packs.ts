// Packs of a project's panels, made and written: sound panels are, panels with a fault keep their old pack, marked stale.
// A fault that belongs to no panel speaks against all of them.

import type { PackOptions } from "../pack/panel-pack.ts";
import { fittedConsole } from "./fitted-console.ts";
import { leftOverFindings, leftOverPacks } from "./left-over-packs.ts";
import type { Made, PackForm } from "./made.ts";
import type { OpenProject } from "./open-project.ts";
import { otherFormFindings, packsOfOtherForm } from "./packs-of-other-form.ts";
import { settleInOneZip, settlePack } from "./settle-packs.ts";
import type { Shell } from "./shell.ts";
import { hasFault } from "./show-findings.ts";

export interface MakeOptions extends PackOptions {
  readonly out: string;
  /** Nothing is written where any panel has a fault. */
  readonly strict: boolean;
  readonly as: PackForm;
}

export const makePacks = async (
  opened: OpenProject,
  options: MakeOptions,
  shell: Shell,
): Promise<Made> => {
  const { packPlans, wantsKernel } = await import("../making/pack-drafts.ts");
  const { project } = opened;
  const { console } = project;
  const kernel = wantsKernel(project, options.only) ? await shell.kernel() : null;
  const fit = console === null ? null : await fittedConsole(project, console, shell);
  const plans = packPlans(opened, fit);
  const drafts = plans.map((plan, index) => {
    const what = plan.kind === "console" ? "the console itself" : plan.name;
    if (plans.length > 1) shell.stderr(`making: ${what}, ${index + 1} of ${plans.length}\n`);
    return plan.make({ ...options, kernel });
  });
  const isWithheld =
    options.strict &&
    (hasFault([...opened.findings, ...(fit?.findings ?? [])]) ||
      drafts.some(({ faults }) => faults.length > 0));
  const { out, as } = options;
  const settling = { isWithheld, out, as, project, disk: shell.disk };
  const made =
    as === "one-zip"
      ? [settleInOneZip(drafts, settling)]
      : drafts.map((draft) => settlePack(draft, settling));
  const leftOver = leftOverPacks(drafts, settling);
  const otherForm = packsOfOtherForm(drafts, settling);
  return {
    out,
    opened,
    panels: made.flatMap(({ panels }) => panels),
    zips: made.flatMap(({ zips }) => zips),
    leftOver,
    otherForm,
    findings: [
      ...opened.findings,
      ...(fit?.findings ?? []),
      ...drafts.flatMap(({ pack }) => pack.findings),
      ...made.flatMap(({ findings }) => findings),
      ...leftOverFindings(leftOver, settling),
      ...otherFormFindings(otherForm, settling),
    ],
  };
};
