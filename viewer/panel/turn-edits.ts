// What is picked turned counter-clockwise, as one change of the panel's text: components and legends by their own word, windows
// by quarters, a line about its middle. What has no way to be turned is named. Pure: text and layout in, an edit out.

import { type Edit, nodeAt, type Path, setKey } from "../../src/design/edit.ts";
import { lengthIn, usualUnit } from "../../src/design/length-text.ts";
import type { MarkingDesign } from "../../src/design/panel-design.ts";
import { pathAt } from "../../src/design/path-at.ts";
import { setPlaceFree } from "../../src/design/place-edit.ts";
import { rewritten, type Step } from "../../src/design/rewriting.ts";
import type { Source } from "../../src/design/source.ts";
import { degrees } from "../../src/geometry/quantity.ts";
import { direction } from "../../src/geometry/trigonometry.ts";
import { memberIds } from "../../src/layout/member-ids.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { lowestCentre } from "../../src/layout/place-moves.ts";
import { turned } from "./component-edits.ts";

export interface Turning {
  readonly edit: Edit;
  /** Those that stay as they are. */
  readonly unturned: readonly string[];
}

/** `by`: degrees. */
export function thingsTurned(
  from: Source,
  entries: readonly string[],
  { by, layout }: { readonly by: number; readonly layout: PanelLayout },
): Turning {
  const steps = entries.map((entry) => ({ entry, step: turnOf(from, entry, { by, layout }) }));
  const unturned = steps.flatMap(({ entry, step }) => (step === null ? [entry] : []));
  const made = steps.flatMap(({ step }) => step ?? []);
  const edit: Edit =
    made.length === 0
      ? { kind: "refused", why: `${unturned.join(", ")} can't be turned` }
      : rewritten(from, made);
  return { edit, unturned };
}

interface By {
  readonly by: number;
  readonly layout: PanelLayout;
}

/** null where it has no way to be turned. */
function turnOf(from: Source, entry: string, on: By): Step | null {
  const component = on.layout.components.find((one) => one.entry === entry);
  if (component !== undefined)
    return (now) => turned(now, ["components", entry], component.common.turn + on.by);
  const marking = on.layout.design.markings.find(({ id }) => id === entry);
  const path = marking === undefined ? null : pathAt(from, marking.written.span);
  return marking === undefined || path === null ? null : markingTurn(marking, path, on);
}

function markingTurn(marking: MarkingDesign, path: Path, { by, layout }: By): Step | null {
  switch (marking.kind) {
    case "legend":
      return (now) =>
        turned(now, path, (marking.legends.find((one) => one !== null)?.turn ?? 0) + by);
    case "window":
      return (now) => windowTurned(now, path, by);
    case "line":
    case "arrow": {
      const id = memberIds(marking.id, marking.pattern)[0];
      const ends = layout.ownPlaces.filter((own) => own.id === id);
      return (now) => lineTurned(now, path, { by, ends, layout });
    }
    case "border":
    case "bracket":
      return null;
  }
}

const QUARTER = 90;

function windowTurned(now: Source, path: Path, by: number): Edit {
  if (by % QUARTER !== 0) return { kind: "refused", why: "a window is turned by quarters" };
  const said = (key: string): string => {
    const node = nodeAt(now, [...path, key]);
    return node === null ? "" : now.text.slice(node.span.start, node.span.end);
  };
  const [width, height] = [said("width"), said("height")];
  const isOdd = (by / QUARTER) % 2 !== 0;
  return rewritten(now, [
    (text) => setKey(text, path, { key: "width", value: isOdd ? height : width }),
    (text) => setKey(text, path, { key: "height", value: isOdd ? width : height }),
  ]);
}

function lineTurned(
  now: Source,
  path: Path,
  { by, ends, layout }: By & { readonly ends: PanelLayout["ownPlaces"] },
): Edit {
  const { x, y } = direction(degrees(by));
  const mean = (axis: "x" | "y"): number =>
    ends.reduce((sum, { at }) => sum + at[axis], 0) / ends.length;
  const middle = { x: mean("x"), y: mean("y") };
  const unit = usualUnit(now.text);
  return rewritten(
    now,
    ends.map(({ end, entry, at }): Step => {
      const [across, up] = [at.x - middle.x, at.y - middle.y];
      // Of a row of lines each turns about its own middle, and the numbers are those of the lowest ends.
      const low = lowestCentre(entry, layout, end);
      const place = {
        x: lengthIn(unit, low.x + across * x - up * y - across),
        y: lengthIn(unit, low.y + across * y + up * x - up),
      };
      return (text) => setPlaceFree(text, [...path, end], place);
    }),
  );
}
