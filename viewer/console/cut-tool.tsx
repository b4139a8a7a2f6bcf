// The plane that cuts the picture: along a bay, across it, or level; how far along, and which side is kept.

import { signal } from "@preact/signals";
import type { JSX } from "preact";
import { decimal } from "../../src/geometry/number.ts";
import { dot, scaled, vector } from "../../src/geometry/space/vector.ts";
import type { ConsoleScene } from "./console-messages.ts";
import { changeLook, look, scene, wanted } from "./console-state.ts";
import type { Cut } from "./look.ts";
import { cameraNow } from "./shown-picture.ts";
import { cutGoal } from "./standing-views.ts";

interface Way {
  readonly id: string;
  readonly words: string;
  /** In console axes; the offset counts from `start`. */
  readonly normal: Cut["normal"];
  readonly start: number;
  readonly from: number;
  readonly to: number;
}

interface Chosen {
  readonly way: string;
  readonly at: number;
  readonly isOther: boolean;
}

const chosen = signal<Chosen | null>(null);

const cutWays = ({ bays, box }: ConsoleScene): readonly Way[] => [
  ...bays.flatMap(({ id, frame, length, width }) => [
    {
      id: `along ${id}`,
      words: `Bay ${id}: at a length`,
      normal: frame.y,
      start: dot(frame.y, frame.origin),
      from: 0,
      to: length,
    },
    {
      id: `across ${id}`,
      words: `Bay ${id}: at a breadth`,
      normal: frame.x,
      start: dot(frame.x, frame.origin),
      from: -width / 2,
      to: width / 2,
    },
  ]),
  {
    id: "level",
    words: "Level, at a height",
    normal: vector(0, 0, -1),
    start: 0,
    from: -box.high.z,
    to: 0,
  },
];

export function CutTool(): JSX.Element | null {
  const shown = scene.value;
  if (shown === null) return null;
  const ways = cutWays(shown);
  // Another console that is opened takes the cut away.
  const now = look.value.cut === null ? null : chosen.value;
  const way = ways.find(({ id }) => id === now?.way);
  return (
    <fieldset>
      <legend>Cut</legend>
      <select
        aria-label="Where it is cut"
        value={now?.way ?? ""}
        onChange={(event) => chooseWay(ways, event.currentTarget.value)}
      >
        <option value="">Not cut</option>
        {ways.map(({ id, words }) => (
          <option key={id} value={id}>
            {words}
          </option>
        ))}
      </select>
      {way !== undefined && now !== null && <CutPlace way={way} now={now} />}
    </fieldset>
  );
}

function CutPlace({ way, now }: { readonly way: Way; readonly now: Chosen }): JSX.Element {
  return (
    <>
      <input
        type="range"
        aria-label="Place of the cut, in millimetres"
        min={way.from}
        max={way.to}
        step="1"
        value={now.at}
        onInput={(event) => show(way, { ...now, at: event.currentTarget.valueAsNumber })}
      />
      <output>{decimal(Math.abs(now.at), 0)} mm</output>
      <label>
        <input
          type="checkbox"
          checked={now.isOther}
          onChange={(event) => {
            const isOther = event.currentTarget.checked;
            show(way, { ...now, isOther });
            turnToFace(scaled(way.normal, isOther ? -1 : 1));
          }}
        />
        Other side
      </label>
    </>
  );
}

const chooseWay = (ways: readonly Way[], id: string): void => {
  const way = ways.find((each) => each.id === id);
  if (way === undefined) {
    chosen.value = null;
    changeLook({ cut: null });
    return;
  }
  show(way, { way: id, at: Math.round((way.from + way.to) / 2), isOther: false });
  turnToFace(way.normal);
};

/** From above a cut along a bay would only take panels away: its face is what it was made for. */
const turnToFace = (normal: Cut["normal"]): void => {
  const camera = cameraNow();
  if (camera !== null && scene.value !== null)
    wanted.value = cutGoal(scene.value, normal, camera.opening);
};

const show = (way: Way, now: Chosen): void => {
  chosen.value = now;
  const sign = now.isOther ? -1 : 1;
  const offset = way.start + now.at;
  changeLook({ cut: { normal: scaled(way.normal, sign), offset: sign * offset } });
};
