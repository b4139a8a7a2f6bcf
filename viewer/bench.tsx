// The page: what is open, the panel drawn from the front, its layers, and what the program has found.

import type { JSX } from "preact";
import {
  ConsoleBehindDoor,
  ConsoleBesideDoor,
  ConsoleDoor,
  isConsoleOpen,
} from "./console/console-door.tsx";
import { fitStandingWords } from "./console/fit-standing.ts";
import { isReading, panels, progress } from "./desk.ts";
import { Decisions } from "./files/decisions.tsx";
import { FileBar } from "./files/file-bar.tsx";
import { SnapshotList } from "./files/snapshot-list.tsx";
import { gone } from "./files/stored-state.ts";
import { FindingList } from "./finding-list.tsx";
import { isBesideShown } from "./job-pack/beside.ts";
import { isPackOpen, PackBehindDoor } from "./job-pack/pack-door.tsx";
import { OpenBar } from "./open-bar.tsx";
import { allFindings, panelFindings } from "./panel/board.ts";
import { isListOpen } from "./panel/list-state.ts";
import { PanelView } from "./panel/panel-view.tsx";
import { TextPane } from "./panel/text-pane.tsx";
import { TwiceQuestion } from "./panel/twice-used.tsx";
import { GuideBehindDoor, GuideButton, StartBehindDoor } from "./start/start-door.tsx";
import { isStartOpen } from "./start/start-state.ts";
import { Waiting } from "./waiting.tsx";

export function Bench(): JSX.Element {
  return (
    <div class={isBesideSeen() ? "bench" : "bench wide"}>
      <header>
        <h1>Consolewright</h1>
        <OpenBar />
        <GuideButton />
        <p class="progress" role="status">
          {progressWords()}
        </p>
        <Waiting />
        <FileBar />
        <Decisions />
      </header>
      <main aria-busy={isReading}>
        <TwiceQuestion />
        {!isStartOpen.value && <ConsoleDoor />}
        {isStartOpen.value ? (
          <StartBehindDoor />
        ) : isListOpen.value ? (
          <PanelView />
        ) : isConsoleOpen() ? (
          <ConsoleBehindDoor />
        ) : isPackOpen() ? (
          <PackBehindDoor />
        ) : (
          <PanelView />
        )}
      </main>
      {isBesideSeen() && <Beside />}
      <GuideBehindDoor />
    </div>
  );
}

/** Not where one begins, and beside the files of a pack only when it is asked for. */
const isBesideSeen = (): boolean =>
  !isStartOpen.value &&
  (isListOpen.value || isConsoleOpen() || !isPackOpen() || isBesideShown.value);

function Beside(): JSX.Element {
  return (
    <aside>
      {isConsoleOpen() ? <ConsoleBesideDoor /> : <TextPane />}
      <FindingList
        numbered={isConsoleOpen() ? allFindings.value : panelFindings.value}
        without={isConsoleOpen() ? fitStandingWords() : ""}
      />
      <SnapshotList />
    </aside>
  );
}

function progressWords(): string {
  const now = progress.value;
  switch (now.kind) {
    case "empty":
      return "Nothing is open yet.";
    case "reading":
      return `Reading ${now.what} …`;
    case "shown":
      return panels.value.length === 0 ? `${now.what}: ${noPanelWords()}` : `Opened: ${now.what}`;
    case "refused":
      return now.why;
    case "failed":
      return `The program itself has failed: ${now.why}`;
  }
}

const noPanelWords = (): string =>
  gone.value.length === 0
    ? "no panel in it can be read"
    : `deleted outside this page: ${gone.value.join(", ")}. Undo brings back the text`;
