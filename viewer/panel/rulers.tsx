// Rulers along the top and the left of the sheet, in the unit that the design is written in, with a pointer at what is selected.

import type { JSX } from "preact";
import { decimal } from "../../src/geometry/number.ts";
import { MM_PER_INCH } from "../../src/standards/inch.ts";
import { type Sight, selectedThings, unit } from "./board.ts";
import { onScreen, type Room, RULER } from "./board-places.ts";

export function Rulers(props: { readonly sight: Sight; readonly room: Room }): JSX.Element {
  const { sight, room } = props;
  const chosen = selectedThings.value.map(({ at }) => onScreen(sight, at));
  return (
    <g class="rulers">
      <rect class="ruler" x={0} y={0} width={room.width} height={RULER} />
      <rect class="ruler" x={0} y={0} width={RULER} height={room.height} />
      <path class="ticks" d={ticks("x", sight, room)} />
      <path class="ticks" d={ticks("y", sight, room)} />
      {figures("x", sight, room)}
      {figures("y", sight, room)}
      {chosen.map(({ x, y }) => (
        <path
          key={`${x} ${y}`}
          class="pointer-marks"
          d={`M${x} ${RULER}l-4 -7h8zM${RULER} ${y}l-7 -4v8z`}
        />
      ))}
      <text class="figure" x={3} y={RULER - 8}>
        {unit.value}
      </text>
    </g>
  );
}

/** Steps between figures, in the unit: the first at which they have room. */
const STEPS = {
  mm: [1, 2, 5, 10, 20, 50, 100, 200, 500],
  in: [1 / 8, 1 / 4, 1 / 2, 1, 2, 4, 8, 16],
} as const;
/** Pixels that a figure wants. */
const FIGURE_ROOM = 44;

interface Scale {
  /** In the unit. */
  readonly step: number;
  readonly parts: number;
  readonly pixels: number;
}

function scaleOf(sight: Sight): Scale {
  const pixels = sight.scale * (unit.value === "in" ? MM_PER_INCH : 1);
  const steps: readonly number[] = STEPS[unit.value];
  const step = steps.find((one) => one * pixels >= FIGURE_ROOM) ?? steps.at(-1)!;
  return { step, pixels, parts: unit.value === "in" ? 4 : 5 };
}

function places(axis: "x" | "y", sight: Sight, room: Room): readonly (readonly [number, number])[] {
  const { step, pixels, parts } = scaleOf(sight);
  const small = step / parts;
  const length = axis === "x" ? room.width : room.height;
  const value = (at: number): number =>
    (axis === "x" ? at - sight.x : sight.y - at) / pixels / small;
  const ends = [value(RULER), value(length)];
  const first = Math.ceil(Math.min(...ends));
  const count = Math.max(0, Math.floor(Math.max(...ends)) - first + 1);
  return Array.from({ length: Math.min(count, 2000) }, (_, index) => {
    const number = first + index;
    const at = number * small * pixels;
    return [number, axis === "x" ? sight.x + at : sight.y - at];
  });
}

function ticks(axis: "x" | "y", sight: Sight, room: Room): string {
  const { parts } = scaleOf(sight);
  return places(axis, sight, room)
    .map(([number, at]) => {
      const long = number % parts === 0 ? 10 : 5;
      return axis === "x" ? `M${at} ${RULER}v${-long}` : `M${RULER} ${at}h${-long}`;
    })
    .join("");
}

function figures(axis: "x" | "y", sight: Sight, room: Room): readonly JSX.Element[] {
  const { step, parts } = scaleOf(sight);
  return places(axis, sight, room)
    .filter(([number, at]) => number % parts === 0 && at > RULER + 8)
    .map(([number, at]) => {
      const words = decimal((number / parts) * step, 3);
      return axis === "x" ? (
        <text key={`x${number}`} class="figure" x={at} y={11} text-anchor="middle">
          {words}
        </text>
      ) : (
        <text
          key={`y${number}`}
          class="figure"
          x={11}
          y={at}
          text-anchor="middle"
          transform={`rotate(-90 11 ${at})`}
        >
          {words}
        </text>
      );
    });
}
