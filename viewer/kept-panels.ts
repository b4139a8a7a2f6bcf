// Panels whose text can't be read any more, as they last could: half a word typed must neither blank the drawing nor open another
// panel. Pure: what was shown, the new reading and its texts in, what is shown now out.

import type { DesignReading, DesignTexts, PanelReading, PlacedFinding } from "./core-messages.ts";

/** What keeps a panel's text from being read: its first fault, and where that stands. */
export interface Unread {
  readonly message: string;
  readonly file: string;
  readonly line: number;
}

export interface ShownPanels {
  readonly panels: readonly PanelReading[];
  /** By panel: those that are shown as they last could be read, and why. */
  readonly unread: ReadonlyMap<string, Unread>;
  /** What was found at the reading. */
  readonly findings: readonly PlacedFinding[];
}

export const NO_PANELS: ShownPanels = { panels: [], unread: new Map(), findings: [] };

export function panelsWithKept(
  before: ShownPanels,
  now: DesignReading,
  texts: DesignTexts,
): ShownPanels {
  const unread = new Map<string, Unread>();
  const kept = (last: PanelReading): boolean => {
    const why = whyUnread(last, before, now);
    if (last.layout === null || !texts.has(last.file) || why === null) return false;
    unread.set(last.name, why);
    return true;
  };
  const panels = now.panels.map((panel) => {
    if (panel.layout !== null) return panel;
    const last = before.panels.find(({ name, file }) => name === panel.name && file === panel.file);
    return last !== undefined && kept(last) ? last : panel;
  });
  // Each where it stood: whoever chose nothing looks at the first.
  before.panels.forEach((last, place) => {
    const isThere = now.panels.some(({ name, file }) => name === last.name || file === last.file);
    if (!isThere && kept(last)) panels.splice(place, 0, last);
  });
  return { panels, unread, findings: now.findings };
}

/** With pictures that came before their panels were judged, of those that are shown as they are now. */
export const panelsWithDrawn = (
  shown: ShownPanels,
  drawn: readonly PanelReading[],
): ShownPanels => ({
  ...shown,
  panels: shown.panels.map((last) =>
    shown.unread.has(last.name)
      ? last
      : (drawn.find(({ name, file }) => name === last.name && file === last.file) ?? last),
  ),
});

/** A fault of its own file; else one that came with this reading and took the panel away with the file that names it. */
function whyUnread(last: PanelReading, before: ShownPanels, now: DesignReading): Unread | null {
  const faults = now.findings
    .filter(({ finding }) => finding.severity === "fault")
    .toSorted((a, b) => a.finding.span.start - b.finding.span.start);
  const own = faults.find(({ finding }) => finding.span.file === last.file);
  if (own !== undefined) return unreadBy(own);
  const mayGo = now.panels.length === 0 || before.unread.has(last.name);
  const other = faults.find((fault) => mayGo || isNew(fault, before));
  return other === undefined ? null : unreadBy(other);
}

/** What is judged can be read; of the rest, what the last reading did not have. */
const isNew = ({ finding }: PlacedFinding, before: ShownPanels): boolean =>
  !finding.code.startsWith("checks/") &&
  !before.findings.some(
    ({ finding: last }) => last.code === finding.code && last.message === finding.message,
  );

const unreadBy = ({ finding, line }: PlacedFinding): Unread => ({
  message: finding.message,
  file: finding.span.file,
  line,
});

export const unreadWords = ({ message, file, line }: Unread, shownFile: string): string =>
  `the text can't be read: ${message}, line ${line}${file === shownFile ? "" : ` of ${file}`}`;

/** The same finding in a new reading: its place may have moved, its words may not. */
export const stillThere = (
  before: PlacedFinding | null,
  now: readonly PlacedFinding[],
): PlacedFinding | null =>
  now.find(
    ({ finding }) =>
      finding.code === before?.finding.code && finding.message === before.finding.message,
  ) ?? null;
