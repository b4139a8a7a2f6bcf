// A frame round a drawing that is seen whole or nearer: by buttons, by plus, minus and 0, by the wheel where the pointer is; moved
// by hand, by arrow keys and by scrolling. What is drawn in it fills it and keeps its own proportions.

import type { JSX } from "preact";
import { useLayoutEffect, useRef, useState } from "preact/hooks";
import { latinKey } from "../panel/latin-key.ts";
import { NearButtons } from "./near-buttons.tsx";
import { type Held, isNearest, scrolledTo, stepped } from "./near-steps.ts";

export function NearView(props: {
  /** What is in it, for those who don't see it. */
  readonly name: string;
  readonly children: JSX.Element;
}): JSX.Element {
  const { name, children } = props;
  const frame = useRef<HTMLElement>(null);
  const [times, setTimes] = useState(1);
  const hold = useRef<Held | null>(null);
  const go = (
    direction: -1 | 0 | 1,
    at: { readonly x: number; readonly y: number } | null,
  ): void => {
    const now = frame.current;
    const next = stepped(times, direction);
    if (now === null || next === times) return;
    const { clientWidth, clientHeight, scrollLeft, scrollTop } = now;
    const { x, y } = at ?? { x: clientWidth / 2, y: clientHeight / 2 };
    hold.current = { x, y, left: scrollLeft, top: scrollTop, by: next / times };
    setTimes(next);
  };
  // What lay under the pointer, or in the middle, stays there.
  useLayoutEffect(() => {
    if (hold.current === null) return;
    frame.current?.scrollTo(scrolledTo(hold.current));
    hold.current = null;
  }, [times]);
  const size = `${100 * times}%`;
  return (
    <div class="near-view">
      <section
        ref={frame}
        class="near-frame"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it is scrolled by keys.
        tabIndex={0}
        aria-label={`${name}: plus and minus bring it nearer or farther, 0 shows all of it`}
        onKeyDown={(event) => {
          const direction = KEYS.get(latinKey(event));
          if (direction === undefined || event.ctrlKey || event.metaKey) return;
          event.preventDefault();
          go(direction, null);
        }}
        onWheel={(event) => {
          event.preventDefault();
          const { left, top } = event.currentTarget.getBoundingClientRect();
          go(event.deltaY < 0 ? 1 : -1, { x: event.clientX - left, y: event.clientY - top });
        }}
        onPointerDown={(event) => {
          if (event.pointerType === "mouse") event.currentTarget.setPointerCapture(event.pointerId);
        }}
        onPointerMove={(event) => {
          // A finger scrolls by itself.
          if (event.pointerType !== "mouse" || event.buttons === 0) return;
          event.currentTarget.scrollBy(-event.movementX, -event.movementY);
        }}
      >
        <div class="near-sheet" style={{ width: size, height: size }}>
          {children}
        </div>
      </section>
      <NearButtons
        isWhole={times === 1}
        isNearest={isNearest(times)}
        go={(direction) => go(direction, null)}
      />
    </div>
  );
}

const KEYS: ReadonlyMap<string, -1 | 0 | 1> = new Map([
  ["+", 1],
  ["=", 1],
  ["-", -1],
  ["0", 0],
]);
