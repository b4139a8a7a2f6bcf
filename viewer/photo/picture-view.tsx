// The picture with its marks, to be set by pointer, pen, finger or keys: a mark is drawn, the picture beside it is moved, the
// wheel makes it larger. Places are pixels of the picture from its upper left corner.

import { signal } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { markName } from "../../src/design/photo-words.ts";
import type { PlanePoint } from "../../src/geometry/homography-pair.ts";
import { say } from "../panel/board.ts";
import { latinKey } from "../panel/latin-key.ts";
import { spotsOf } from "./mark-spots.ts";
import { holdMark, letMarkGo, nudgeMark } from "./photo-acts.ts";
import { chosenMark, isLocked, marks, type Picture } from "./photo-state.ts";

/** What is seen of the picture: its middle, in pixels of it, and how many of them a pixel of the screen is. */
interface Look {
  readonly middle: PlanePoint;
  readonly step: number;
}

/** null: the whole picture. */
const look = signal<Look | null>(null);
const room = signal({ width: 400, height: 300 });

/** Pixels of the screen within which a mark is taken hold of. */
const GRIP = 18;

type Hand =
  | { readonly kind: "idle" }
  | { readonly kind: "mark"; readonly index: number; readonly off: PlanePoint }
  | { readonly kind: "pan"; readonly from: PlanePoint; readonly look: Look };

let hand: Hand = { kind: "idle" };

export function PictureView({ picture }: { readonly picture: Picture }): JSX.Element {
  const frame = useRef<HTMLDivElement>(null);
  useFrame(frame, picture);
  const now = look.value ?? whole(picture);
  const { width, height } = room.value;
  const seen = {
    x: now.middle.x - (width * now.step) / 2,
    y: now.middle.y - (height * now.step) / 2,
  };
  const spots = marks.value === null ? [] : spotsOf(marks.value);
  const at = (event: MouseEvent): PlanePoint => placeOf(frame.current, event, seen, now.step);
  return (
    <div
      ref={frame}
      class="picture-frame"
      role="application"
      aria-roledescription="picture with marks"
      aria-label={`The photograph, ${picture.width} by ${picture.height} pixels`}
      aria-describedby="photo-keys"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: an application takes keys, which is what it is for
      tabIndex={0}
      onKeyDown={(event) => markKey(event, picture)}
      onPointerDown={(event) => {
        event.currentTarget.focus({ preventScroll: true });
        event.currentTarget.setPointerCapture(event.pointerId);
        takeHold(at(event), event, now);
      }}
      onPointerMove={(event) => follow(at(event), event)}
      onPointerUp={letGo}
      onPointerCancel={letGo}
    >
      <svg
        viewBox={`${seen.x} ${seen.y} ${width * now.step} ${height * now.step}`}
        aria-hidden="true"
      >
        <image href={picture.address} width={picture.width} height={picture.height} />
        {spots.map((spot, index) => (
          <Mark key={index} spot={spot} index={index} step={now.step} />
        ))}
      </svg>
    </div>
  );
}

/** A surveyor's target: quarters of a ring about the spot, which itself stays in sight. */
function Mark(props: {
  readonly spot: PlanePoint;
  readonly index: number;
  readonly step: number;
}): JSX.Element {
  const { spot, index, step } = props;
  const isChosen = chosenMark.value === index;
  return (
    <g
      class={isChosen ? "photo-mark chosen" : "photo-mark"}
      data-mark={index + 1}
      transform={`translate(${spot.x} ${spot.y}) scale(${step})`}
    >
      {(["under", "over"] as const).map((layer) => (
        <path
          key={layer}
          class={layer}
          d="M-14 0H-4M4 0H14M0 -14V-4M0 4V14M-8 0A8 8 0 0 1 0 -8M8 0A8 8 0 0 1 0 8"
        />
      ))}
      <text x={11} y={-9}>
        {index + 1}
      </text>
    </g>
  );
}

const whole = ({ width, height }: Picture): Look => ({
  middle: { x: width / 2, y: height / 2 },
  step: Math.max(width / room.value.width, height / room.value.height) * 1.04,
});

function placeOf(
  frame: HTMLElement | null,
  event: MouseEvent,
  seen: PlanePoint,
  step: number,
): PlanePoint {
  const box = frame?.getBoundingClientRect();
  return {
    x: seen.x + (event.clientX - (box?.left ?? 0)) * step,
    y: seen.y + (event.clientY - (box?.top ?? 0)) * step,
  };
}

function takeHold(at: PlanePoint, event: PointerEvent, now: Look): void {
  const spots = marks.value === null ? [] : spotsOf(marks.value);
  const distances = spots.map(({ x, y }) => Math.max(Math.abs(x - at.x), Math.abs(y - at.y)));
  const nearest = distances.indexOf(Math.min(...distances));
  const spot = spots[nearest];
  event.preventDefault();
  if (spot !== undefined && (distances[nearest] ?? 0) <= GRIP * now.step && event.button === 0) {
    chooseMark(nearest);
    // A locked mark is looked at, not moved.
    if (!isLocked.value)
      hand = { kind: "mark", index: nearest, off: { x: spot.x - at.x, y: spot.y - at.y } };
  } else hand = { kind: "pan", from: { x: event.clientX, y: event.clientY }, look: now };
}

function follow(at: PlanePoint, event: PointerEvent): void {
  switch (hand.kind) {
    case "idle":
      return;
    case "mark":
      holdMark(hand.index, { x: at.x + hand.off.x, y: at.y + hand.off.y });
      return;
    case "pan": {
      const { from, look: before } = hand;
      look.value = {
        ...before,
        middle: {
          x: before.middle.x - (event.clientX - from.x) * before.step,
          y: before.middle.y - (event.clientY - from.y) * before.step,
        },
      };
    }
  }
}

function letGo(): void {
  if (hand.kind === "mark") letMarkGo();
  hand = { kind: "idle" };
}

export function chooseMark(index: number): void {
  chosenMark.value = index;
  const now = marks.value;
  const spot = now === null ? undefined : spotsOf(now)[index];
  if (now !== null && spot !== undefined)
    say(`${markName(index, now.kind)}: ${spot.x} across, ${spot.y} down.`);
}

const ARROWS: Readonly<Record<string, PlanePoint>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** An arrow moves by a pixel; with Shift by ten, with Alt by a tenth. */
function markKey(event: KeyboardEvent, picture: Picture): void {
  if (event.ctrlKey || event.metaKey) return;
  const arrow = ARROWS[event.key];
  const far = event.shiftKey ? 10 : event.altKey ? 0.1 : 1;
  const act =
    arrow === undefined
      ? deedOf(latinKey(event), picture)
      : () => nudgeMark({ x: arrow.x * far, y: arrow.y * far });
  if (act === null) return;
  act();
  event.preventDefault();
}

function deedOf(key: string, picture: Picture): (() => void) | null {
  const count = marks.value === null ? 0 : spotsOf(marks.value).length;
  const step = (by: number) => () => chooseMark((chosenMark.value + by + count) % count);
  if (/^[1-9]$/.test(key)) return Number(key) > count ? null : () => chooseMark(Number(key) - 1);
  switch (key) {
    case "PageDown":
      return count === 0 ? null : step(1);
    case "PageUp":
      return count === 0 ? null : step(-1);
    case "+":
      return () => larger(1.5, picture);
    case "-":
      return () => larger(1 / 1.5, picture);
    case "0":
      return () => {
        look.value = null;
      };
    default:
      return null;
  }
}

/** About the chosen mark, so that it comes into sight. */
function larger(by: number, picture: Picture): void {
  const now = look.value ?? whole(picture);
  const spot = marks.value === null ? undefined : spotsOf(marks.value)[chosenMark.value];
  look.value = { middle: spot ?? now.middle, step: bounded(now.step / by, picture) };
}

/** From twenty pixels of the screen a pixel to a picture half the size of its room. */
const bounded = (step: number, picture: Picture): number =>
  Math.min(2 * whole(picture).step, Math.max(0.05, step));

const WHEEL = 0.0015;

/** Set by hand: the page must not scroll while the picture is made larger, which a passive listener can't prevent. */
function useFrame(frame: { readonly current: HTMLDivElement | null }, picture: Picture): void {
  useEffect(() => {
    const own = frame.current;
    if (own === null) return;
    const turned = (event: WheelEvent): void => {
      event.preventDefault();
      const now = look.value ?? whole(picture);
      const { width, height } = room.value;
      const corner = {
        x: now.middle.x - (width * now.step) / 2,
        y: now.middle.y - (height * now.step) / 2,
      };
      const about = placeOf(own, event, corner, now.step);
      const step = bounded(now.step * Math.exp(event.deltaY * WHEEL), picture);
      const share = step / now.step;
      look.value = {
        step,
        middle: {
          x: about.x + (now.middle.x - about.x) * share,
          y: about.y + (now.middle.y - about.y) * share,
        },
      };
    };
    const watch = new ResizeObserver(([entry]) => {
      if (entry === undefined) return;
      const { width, height } = entry.contentRect;
      if (width > 0 && height > 0) room.value = { width, height };
    });
    own.addEventListener("wheel", turned, { passive: false });
    watch.observe(own);
    look.value = null;
    return () => {
      own.removeEventListener("wheel", turned);
      watch.disconnect();
    };
  }, [frame, picture]);
}

/** Pixels of the picture that the magnifier shows across. */
const MAGNIFIED = 25;

/** The chosen mark and what lies about it, each pixel to be seen. */
export function Magnifier({ picture }: { readonly picture: Picture }): JSX.Element | null {
  const spot = marks.value === null ? undefined : spotsOf(marks.value)[chosenMark.value];
  if (spot === undefined) return null;
  const half = MAGNIFIED / 2;
  return (
    <svg
      class="magnifier"
      viewBox={`${spot.x - half} ${spot.y - half} ${MAGNIFIED} ${MAGNIFIED}`}
      role="img"
      aria-label={`Mark ${chosenMark.value + 1}, enlarged`}
    >
      <image href={picture.address} width={picture.width} height={picture.height} />
      {(["under", "over"] as const).map((layer) => (
        <path
          key={layer}
          class={layer}
          d={`M${spot.x - half} ${spot.y}h${half - 1}m2 0h${half - 1}M${spot.x} ${spot.y - half}v${half - 1}m0 2v${half - 1}`}
        />
      ))}
    </svg>
  );
}
