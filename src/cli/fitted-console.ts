// The fit of a console, with a line on the error stream for each step that takes a while.

import type { ConsoleFit, ConsoleProject, Project } from "../project.ts";
import type { Shell } from "./shell.ts";

export const fittedConsole = async (
  project: Project,
  console: ConsoleProject,
  shell: Shell,
): Promise<ConsoleFit> => {
  const [{ fitSteps }, kernel] = await Promise.all([import("../project.ts"), shell.kernel()]);
  const steps = fitSteps(project, console, kernel);
  for (;;) {
    const step = steps.next();
    if (step.done === true) return step.value;
    shell.stderr(`fitting: ${step.value}\n`);
  }
};
