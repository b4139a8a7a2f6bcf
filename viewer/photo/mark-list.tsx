// The marks as numbers: where each lies in the picture and on the panel, and how far off the others put it.

import type { JSX } from "preact";
import { lengthIn } from "../../src/design/length-text.ts";
import {
  type PhotoMarks,
  type PhotoSheet,
  SHEET_SIZES,
  type SheetSize,
} from "../../src/design/photo-design.ts";
import { accuracyWords, photoTroubleWords } from "../../src/design/photo-words.ts";
import type { PlanePoint } from "../../src/geometry/homography-pair.ts";
import { decimal } from "../../src/geometry/number.ts";
import { unit } from "../panel/board.ts";
import { spotsOf } from "./mark-spots.ts";
import { takePaper } from "./paper-acts.ts";
import {
  addPoint,
  cornerWords,
  saySheetSize,
  saySheetTurn,
  takeOffPoint,
  typeMark,
  typePlace,
} from "./photo-acts.ts";
import { chosenMark, marks, paperKey, plane, residualNow, unset } from "./photo-state.ts";
import { chooseMark } from "./picture-view.tsx";

export function MarkList({ toSheet }: { readonly toSheet: () => void }): JSX.Element | null {
  const now = marks.value;
  if (now === null) return null;
  return (
    <>
      <Verdict of={now} />
      <ol class="mark-list">
        {spotsOf(now).map((spot, index) => (
          <MarkRow key={index} of={now} index={index} spot={spot} />
        ))}
      </ol>
      {now.kind === "points" ? (
        <button type="button" onClick={addPoint}>
          Add a point
        </button>
      ) : (
        <Sheet sheet={now.sheet} toSheet={toSheet} />
      )}
    </>
  );
}

/** What the marks are worth, in one sentence. */
function Verdict({ of }: { readonly of: PhotoMarks }): JSX.Element | null {
  const now = plane.value;
  if (now === null) return null;
  if (unset.value > 0)
    return (
      <p class="mark-verdict trouble" role="status">
        Set the four marks on the corners of the paper:{" "}
        {unset.value === 4 ? "all are" : unset.value === 1 ? "one is" : `${unset.value} are`} still
        at the picture's own corners. Until then nothing can be said of places from this picture.
      </p>
    );
  if (now.kind === "trouble")
    return (
      <p class="mark-verdict trouble" role="status">
        The picture can't be laid under: {photoTroubleWords(now.trouble, of.kind)}.
      </p>
    );
  const { accuracy, check, pixel } = now;
  const told = accuracyWords(accuracy, { marks: of.kind, count: spotsOf(of).length });
  const residual = residualNow();
  return (
    <p class={accuracy.kind === "unknown" ? "mark-verdict trouble" : "mark-verdict"} role="status">
      {check.kind === "checked" &&
        `Each mark held against the others alone: ${millimetres(check.disagreement)} off at most. `}
      {told !== "" && `${told.charAt(0).toUpperCase()}${told.slice(1)}. `}
      {of.kind === "points" && moreWords(spotsOf(of).length)}A pixel is {millimetres(pixel)}.{" "}
      {residual.kind === "known"
        ? `Places from this picture: ± ${residual.text}.`
        : "What a place from this picture may be off by can't be said."}
    </p>
  );
}

/** What a further mark would tell. */
const moreWords = (count: number): string =>
  count === 4
    ? "A fifth mark shows whether they agree, a sixth which is wrong. "
    : count === 5
      ? "A sixth mark would show which is wrong. "
      : "";

const millimetres = (value: number): string => `${decimal(value, 2)} mm`;

interface RowProps {
  readonly of: PhotoMarks;
  readonly index: number;
  readonly spot: PlanePoint;
}

function MarkRow({ of, index, spot }: RowProps): JSX.Element {
  const now = plane.value;
  const check = now?.kind === "plane" && now.check.kind === "checked" ? now.check : null;
  const held = check?.marks[index];
  const name = of.kind === "sheet" ? cornerWords(index) : `Point ${index + 1}`;
  const point = of.kind === "points" ? of.points[index] : undefined;
  return (
    <li class={chosenMark.value === index ? "chosen" : ""}>
      <fieldset>
        <legend>
          <button
            type="button"
            aria-pressed={chosenMark.value === index}
            onClick={() => chooseMark(index)}
          >
            {name}
          </button>
        </legend>
        <Figure
          label="px across"
          name={`${name}, pixels across`}
          value={decimal(spot.x, 1)}
          change={(typed) => typeMark(index, "across", typed)}
        />
        <Figure
          label="px down"
          name={`${name}, pixels down`}
          value={decimal(spot.y, 1)}
          change={(typed) => typeMark(index, "along", typed)}
        />
        {point !== undefined && <PointPlace at={point.onPanel} index={index} name={name} />}
        {held !== undefined && (
          <output>
            {held.kind === "put"
              ? `${millimetres(held.apart)} off the others`
              : "nothing checks it"}
          </output>
        )}
        {of.kind === "points" && of.points.length > 4 && (
          <button
            type="button"
            aria-label={`Take off point ${index + 1}`}
            onClick={() => takeOffPoint(index)}
          >
            Take off
          </button>
        )}
      </fieldset>
    </li>
  );
}

function PointPlace(props: {
  readonly at: PlanePoint;
  readonly index: number;
  /** Of the mark. */
  readonly name: string;
}): JSX.Element {
  const { at, index, name } = props;
  return (
    <>
      <Figure
        label="on panel across"
        name={`${name}, on the panel across`}
        value={lengthIn(unit.value, at.x)}
        change={(typed) => typePlace(index, "across", typed)}
      />
      <Figure
        label="up"
        name={`${name}, on the panel up`}
        value={lengthIn(unit.value, at.y)}
        change={(typed) => typePlace(index, "along", typed)}
      />
    </>
  );
}

function Sheet(props: { readonly sheet: PhotoSheet; readonly toSheet: () => void }): JSX.Element {
  const { sheet, toSheet } = props;
  const { size, at, turn } = sheet;
  const said = (value: number): string => lengthIn(unit.value, value);
  return (
    <p class="paper">
      <label>
        Size of the paper{" "}
        <select
          value={size}
          onChange={({ currentTarget: { value } }) => {
            if (isSize(value)) saySheetSize(value);
          }}
        >
          {Object.entries(SHEET_SIZES).map(([name, { width, height }]) => (
            <option key={name} value={name}>
              {name}, {width} by {height} mm
            </option>
          ))}
        </select>
      </label>
      <Figure
        label="its lower left corner lay at"
        name="The sheet's lower left corner on the panel, across"
        value={said(at.x)}
        change={(typed) => typePlace("sheet", "across", typed)}
      />
      <Figure
        label="up"
        name="The sheet's lower left corner on the panel, up"
        value={said(at.y)}
        change={(typed) => typePlace("sheet", "along", typed)}
      />
      <Figure
        label="turned"
        name="The sheet turned, counter-clockwise"
        value={`${decimal(turn, 2)} deg`}
        change={saySheetTurn}
      />
      <button
        type="button"
        aria-pressed={paperKey.value !== null}
        onClick={() => {
          if (takePaper()) toSheet();
        }}
      >
        Move it on the panel
      </button>
    </p>
  );
}

const isSize = (word: string): word is SheetSize => Object.hasOwn(SHEET_SIZES, word);

function Figure(props: {
  readonly label: string;
  readonly name: string;
  readonly value: string;
  readonly change: (typed: string) => void;
}): JSX.Element {
  const { label, name, value, change } = props;
  return (
    <label class="number">
      {label}{" "}
      <input
        type="text"
        size={8}
        key={value}
        defaultValue={value}
        aria-label={name}
        onChange={(event) => change(event.currentTarget.value.trim())}
      />
    </label>
  );
}
