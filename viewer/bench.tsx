// The page: what is open, the panel drawn from the front, its layers, and what the program has found.

import type { JSX } from "preact";
import { choosePanel, panel, panels, progress } from "./desk.ts";
import { FindingList } from "./finding-list.tsx";
import { FrontView } from "./front-view.tsx";
import { LayerList } from "./layer-list.tsx";
import { OpenBar } from "./open-bar.tsx";

export function Bench(): JSX.Element {
  return (
    <div class="bench">
      <header>
        <h1>Consolewright</h1>
        <OpenBar />
        <p class="progress" role="status">
          {progressWords()}
        </p>
      </header>
      <main>
        <PanelChoice />
        <FrontView />
      </main>
      <aside>
        <LayerList />
        <FindingList />
      </aside>
    </div>
  );
}

function PanelChoice(): JSX.Element | null {
  if (panels.value.length < 2) return null;
  return (
    <label class="panel-choice">
      Panel
      <select
        value={panel.value?.name ?? ""}
        onChange={(event) => choosePanel(event.currentTarget.value)}
      >
        {panels.value.map(({ name, title }) => (
          <option key={name} value={name}>
            {title}
          </option>
        ))}
      </select>
    </label>
  );
}

function progressWords(): string {
  const now = progress.value;
  switch (now.kind) {
    case "empty":
      return "Nothing is open. Open a design's files, or drop them here.";
    case "reading":
      return `Reading ${now.what} …`;
    case "shown":
      return panels.value.length === 0 ? `${now.what}: no panel in it` : `Opened: ${now.what}`;
    case "refused":
      return now.why;
    case "failed":
      return `The program itself has failed: ${now.why}`;
  }
}
