// What can be done with what is selected, as buttons with the letters that do the same on the sheet.

import type { JSX } from "preact";
import { gapSelection, lineUpSelection, makePattern, spaceSelection } from "./arrange-acts.ts";
import type { LineUp } from "./arrangements.ts";
import { selectedEntries, selectedThings } from "./board.ts";
import { copySelection } from "./copy-acts.ts";
import { removeSelection } from "./remove-acts.ts";
import type { SheetThing } from "./sheet-things.ts";
import { turnSelection } from "./turn-acts.ts";

export function Deeds(): JSX.Element | null {
  const count = selectedEntries.value.length;
  if (count === 0) return null;
  const turns = selectedThings.value.some(({ kind }) => !UNTURNED.includes(kind));
  return (
    <div class="deeds">
      {turns && <Deed words="Turn a quarter" letter="T" act={() => turnSelection(90)} />}
      <Deed words="Copy" letter="C" act={copySelection} />
      <Deed words="Take off" letter="Del" act={removeSelection} />
      {count > 2 && <Deed words="Space evenly" letter="E" act={spaceSelection} />}
      {count > 2 && <Deed words="Equal gaps" letter="G" act={gapSelection} />}
      {count > 1 && <Deed words="Make a row" letter="R" act={() => makePattern("row")} />}
      {count > 1 && <Deed words="Make a column" letter="K" act={() => makePattern("column")} />}
      {count > 2 && <Deed words="Make a ring" letter="O" act={() => makePattern("ring")} />}
      {count > 1 && <LiningUp />}
    </div>
  );
}

const UNTURNED: readonly SheetThing["kind"][] = ["border", "bracket", "screw", "dowel"];

const LINES: readonly { readonly how: LineUp; readonly words: string; readonly letter: string }[] =
  [
    { how: "left", words: "left", letter: "Home" },
    { how: "right", words: "right", letter: "End" },
    { how: "top", words: "top", letter: "PgUp" },
    { how: "bottom", words: "bottom", letter: "PgDn" },
    { how: "level", words: "level", letter: "L" },
    { how: "in-line", words: "in line", letter: "I" },
  ];

/** Level and in line as the design says them: centres at one height, or one above the other, as the first that was picked. */
function LiningUp(): JSX.Element {
  return (
    <fieldset class="lining-up">
      <legend>Line up</legend>
      {LINES.map(({ how, words, letter }) => (
        <Deed key={how} words={words} letter={letter} act={() => lineUpSelection(how)} />
      ))}
    </fieldset>
  );
}

interface DeedProps {
  readonly words: string;
  readonly letter: string;
  readonly act: () => void;
}

const Deed = ({ words, letter, act }: DeedProps): JSX.Element => (
  <button type="button" onClick={act}>
    {words}
    <kbd>{letter}</kbd>
  </button>
);
