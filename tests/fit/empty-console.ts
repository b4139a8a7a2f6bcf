// A console's layout with nothing in it, for bodies that stand for themselves.

import type { ConsoleLayout } from "../../src/layout/console/console-layout.ts";

const span = { file: "console.yaml", start: 0, end: 0 };

export const emptyConsole = (of: Partial<ConsoleLayout> = {}): ConsoleLayout => ({
  kind: "console-layout",
  name: "desk",
  design: {
    kind: "console",
    written: { span, keys: {} },
    file: "console.yaml",
    name: "desk",
    title: "Desk",
    revision: "A",
    dated: null,
    workshop: null,
    catalogue: [],
    bays: {},
    unreadBays: [],
    panels: [],
    unreadPanels: [],
    blankings: [],
    operator: null,
    envelope: null,
    frame: null,
    obstacles: [],
    unread: [],
  },
  bays: [],
  panels: [],
  operator: null,
  envelope: null,
  obstacles: [],
  lost: [],
  ...of,
});
