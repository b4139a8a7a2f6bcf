// The commands, in the order of a builder's day. A command is loaded when it is called, so that help is quick.

import type { CommandEntry } from "./command.ts";

export const COMMANDS: readonly CommandEntry[] = [
  {
    name: "new",
    summary: "begin a design: a small panel and a workshop",
    load: async () => (await import("./commands/new.ts")).newDesign,
  },
  {
    name: "check",
    summary: "judge a design before anything is cut",
    load: async () => (await import("./commands/check.ts")).check,
  },
  {
    name: "fit",
    summary: "fit a console's panels to rails, neighbours, frame and operator",
    load: async () => (await import("./commands/fit.ts")).fit,
  },
  {
    name: "make",
    summary: "write the job packs of a design, as folders or as zips",
    load: async () => (await import("./commands/make.ts")).make,
  },
  {
    name: "view",
    summary: "show a design in the browser, and save what is changed there",
    load: async () => (await import("./commands/view.ts")).view,
  },
  {
    name: "arrange",
    summary: "turn a component list into a panel file",
    load: async () => (await import("./commands/arrange.ts")).arrange,
  },
  {
    name: "list",
    summary: "list the catalogue: parts, mounts, stock, finishes, machines, fonts",
    load: async () => (await import("./commands/list.ts")).list,
  },
  {
    name: "keys",
    summary: "list what can be written in a design file",
    load: async () => (await import("./commands/keys.ts")).keys,
  },
  {
    name: "why",
    summary: "explain the code of a finding",
    load: async () => (await import("./commands/why.ts")).why,
  },
  {
    name: "testpiece",
    summary: "measure a laser or a printer, and enter what was measured",
    load: async () => (await import("./commands/testpiece.ts")).testpiece,
  },
  {
    name: "ruler",
    summary: "name the cause of a wrong size from one reading",
    load: async () => (await import("./commands/ruler.ts")).ruler,
  },
];
