// The room of the job pack: what `make` writes for the open panel or for the console itself, file by file, looked at before it
// leaves; what stands against it; and the ways out: one file, the pack as a zip, all packs in one. Loaded when it is entered.

import type { JSX } from "preact";
import { useEffect } from "preact/hooks";
import type { PlacedFinding } from "../core-messages.ts";
import { choosePanel, panels, pointAt, texts } from "../desk.ts";
import { giveFile } from "../files/give-file.ts";
import { calledAmong } from "../panel-called.ts";
import { isBesideShown } from "./beside.ts";
import { sizeWords } from "./file-groups.ts";
import { FileList } from "./file-list.tsx";
import { FilePreview } from "./file-preview.tsx";
import type { HeldPack, MadePack } from "./pack-messages.ts";
import {
  askConsole,
  chosenFile,
  giveUp,
  hasConsole,
  isOutOfDate,
  kinds,
  makePack,
  making,
  news,
  shown,
  tellShown,
  want,
  wantAll,
  whole,
} from "./pack-state.ts";
import "./pack.css";

export function PackRoom(): JSX.Element {
  useEffect(() => {
    if (shown.value === null && making.value.kind === "idle" && texts.value.size > 0)
      void makePack(want.value);
  }, []);
  const held = shown.value;
  return (
    <section class="job-pack" aria-label="Job pack">
      <PackBar />
      <div class="pack-standing">
        <MakingLine />
        <p class="quiet" role="status">
          {news.value}
        </p>
        {held === null && making.value.kind === "idle" && <p>No pack of this is made yet.</p>}
        {whole.value !== null && <WholeStanding made={whole.value} />}
        {held !== null && <Standing made={held.made} />}
        <Beside />
      </div>
      {held !== null && held.made.files.length > 0 && <Files made={held.made} />}
    </section>
  );
}

function Beside(): JSX.Element {
  return (
    <button
      type="button"
      class="act beside"
      aria-expanded={isBesideShown.value}
      onClick={() => {
        isBesideShown.value = !isBesideShown.value;
        // Where there is no room beside the files they lie below.
        requestAnimationFrame(() =>
          document.querySelector("aside")?.scrollIntoView({ block: "nearest" }),
        );
      }}
    >
      Text and findings
    </button>
  );
}

function PackBar(): JSX.Element {
  const held = shown.value;
  return (
    <div class="pack-bar">
      <Choice />
      <Kinds />
      <button type="button" class="act" onClick={() => void makePack(want.value)}>
        {held === null ? "Make the pack" : "Make it again"}
      </button>
      {held?.made.zip != null && <ZipButton zip={held.made.zip} isOld={isOutOfDate.value} />}
      {hasConsole.value && <WholeConsole />}
    </div>
  );
}

const CONSOLE = ":console";

function Choice(): JSX.Element {
  const now = want.value;
  return (
    <label>
      Pack of{" "}
      <select
        value={now.kind === "panel" ? now.panel : CONSOLE}
        onChange={(event) => {
          const { value } = event.currentTarget;
          askConsole(value === CONSOLE);
          if (value !== CONSOLE) choosePanel(value);
          makeWhereNew();
        }}
      >
        {panels.value.map((one) => (
          <option key={one.name} value={one.name}>
            {calledAmong(one, panels.value)}
          </option>
        ))}
        {hasConsole.value && <option value={CONSOLE}>The console itself</option>}
      </select>
    </label>
  );
}

/** What is there already is shown again. */
const makeWhereNew = (): void => {
  if (shown.value === null) void makePack(want.value);
  else tellShown();
};

/** The kinds of files that `make` chooses between. */
function Kinds(): JSX.Element {
  const { only, card } = kinds.value;
  return (
    <>
      <label>
        Files{" "}
        <select
          value={only}
          onChange={(event) => {
            const isFascia = event.currentTarget.value === "fascia";
            kinds.value = { ...kinds.value, only: isFascia ? "fascia" : "everything" };
            makeWhereNew();
          }}
        >
          <option value="everything">everything</option>
          <option value="fascia">cut files only</option>
        </select>
      </label>
      <label>
        <input
          type="checkbox"
          checked={card}
          onChange={(event) => {
            kinds.value = { ...kinds.value, card: event.currentTarget.checked };
            makeWhereNew();
          }}
        />
        with a mock-up on card
      </label>
    </>
  );
}

function ZipButton(props: {
  readonly zip: NonNullable<MadePack["zip"]>;
  readonly isOld: boolean;
}): JSX.Element {
  const { zip, isOld } = props;
  return (
    <button
      type="button"
      class="act"
      aria-disabled={isOld}
      onClick={() => {
        if (!isOld) giveFile(zip.name, zip.bytes);
      }}
    >
      Save {zip.name} ({sizeWords(zip.bytes.length)})
    </button>
  );
}

/** All packs in one zip: made when it is asked for, since a large console takes its time. */
function WholeConsole(): JSX.Element {
  const made = whole.value;
  if (made?.zip != null) return <ZipButton zip={made.zip} isOld={false} />;
  return (
    <button type="button" class="act" onClick={() => void makePack(wantAll.value)}>
      Make all packs as one zip
    </button>
  );
}

/** What is to be known of all packs together, before their zip is saved. */
function WholeStanding({ made }: { readonly made: MadePack }): JSX.Element {
  return (
    <>
      <Held held={made.held} />
      {made.zip !== null && <Hold questions={made.questions} where=" in all packs" />}
    </>
  );
}

function MakingLine(): JSX.Element | null {
  const now = making.value;
  switch (now.kind) {
    case "idle":
      return null;
    case "running":
      return (
        <p class="making">
          <progress aria-label="Making the pack" />
          <span role="status">Now {now.words} …</span>
          <button type="button" class="act" onClick={giveUp}>
            Give up
          </button>
        </p>
      );
    case "failed":
      return <p role="alert">The program itself has failed: {now.why}</p>;
  }
}

/** What is to be known before a file of it is used. */
function Standing({ made }: { readonly made: MadePack }): JSX.Element {
  return (
    <>
      {isOutOfDate.value && (
        <p class="out-of-date" role="alert">
          The design has changed since this pack was made. Make it again before you save or print.
        </p>
      )}
      <Held held={made.held} />
      {made.files.length > 0 && <Hold questions={made.questions} where="" />}
      {made.missing.map((words) => (
        <p key={words} class="quiet">
          {words}
        </p>
      ))}
    </>
  );
}

function Hold(props: { readonly questions: number; readonly where: string }): JSX.Element | null {
  const { questions, where } = props;
  if (questions === 0) return null;
  return (
    <p>
      <b>
        HOLD: {questions === 1 ? "1 question is" : `${questions} questions are`} open{where}.
      </b>{" "}
      Decide before you cut.
    </p>
  );
}

function Held({ held }: { readonly held: readonly HeldPack[] }): JSX.Element | null {
  if (held.length === 0) return null;
  return (
    <>
      {held.map(({ name, faults }) => (
        <section key={name} class="held-back" aria-label={`Why ${name} is not written`}>
          <p>
            <b>Nothing is written of {name}</b>: a part made from it would be wrong.
          </p>
          <ul>
            {faults.map((placed) => (
              <li key={`${placed.finding.code} ${placed.line} ${placed.finding.message}`}>
                <button type="button" onClick={() => pointedOut(placed)}>
                  {placed.finding.message}
                </button>{" "}
                <span class="quiet">
                  {placed.finding.span.file}, line {placed.line}
                </span>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </>
  );
}

/** Its line is marked in the text: that has to be seen. */
const pointedOut = (placed: PlacedFinding): void => {
  isBesideShown.value = true;
  pointAt(placed);
};

function Files({ made }: { readonly made: MadePack }): JSX.Element {
  const file = chosenFile.value;
  return (
    <div class="pack-files">
      <FileList files={made.files} />
      {file !== null && (
        <section class="file-preview" aria-label={`Preview of ${file.path}`}>
          <p class="preview-bar">
            <b>{file.path}</b>
            <button
              type="button"
              class="act"
              aria-disabled={isOutOfDate.value}
              onClick={() => {
                if (!isOutOfDate.value) giveFile(file.path.split("/").at(-1) ?? "", file.bytes);
              }}
            >
              Save this file ({sizeWords(file.bytes.length)})
            </button>
          </p>
          <FilePreview file={file} made={made} />
        </section>
      )}
    </div>
  );
}
