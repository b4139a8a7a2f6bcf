// The commands, in the order of a builder's day. A command is loaded when it is called, so that help is quick.

import type { CommandEntry } from "./command.ts";

export const COMMANDS: readonly CommandEntry[] = [
  {
    name: "list",
    summary: "list the catalogue: parts, mounts, stock, finishes, machines, fonts",
    load: async () => (await import("./commands/list.ts")).list,
  },
  {
    name: "why",
    summary: "explain the code of a finding",
    load: async () => (await import("./commands/why.ts")).why,
  },
  {
    name: "ruler",
    summary: "name the cause of a wrong size from one reading",
    load: async () => (await import("./commands/ruler.ts")).ruler,
  },
];
