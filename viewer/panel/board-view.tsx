// The sheet: the panel from the front to scale, between two rulers, with what is selected, dragged and found drawn over it.

import { effect, useSignal } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { INK_COLOURS } from "../../src/export/ink-colours.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import type { PanelReading } from "../core-messages.ts";
import { hidden } from "../desk.ts";
import { lineClass } from "../layer-list.tsx";
import { PaperOnSheet, PhotoUnderSheet } from "../photo/photo-door.tsx";
import { drawingStrength, isOverPhoto } from "../photo/photo-state.ts";
import { selectionWords } from "./acts.ts";
import {
  drag,
  type Extra,
  extras,
  inHand,
  isSectionShown,
  type Sight,
  sight,
  things,
} from "./board.ts";
import { type BoardKeys, boardKey } from "./board-keys.ts";
import { fitted, type Room, zoomed } from "./board-places.ts";
import { pointerDown, pointerLost, pointerMove, pointerUp, type Touch } from "./board-pointer.ts";
import { FindingMarks } from "./finding-marks.tsx";
import { Handles } from "./handles.tsx";
import { Guides, HeldPart, Selected } from "./overlays.tsx";
import type { PanelPicture } from "./panel-picture.ts";
import { Piece } from "./picture-pieces.tsx";
import { Rulers } from "./rulers.tsx";
import type { SheetThing } from "./sheet-things.ts";

interface BoardProps {
  readonly reading: PanelReading;
  readonly layout: PanelLayout;
  readonly picture: PanelPicture;
  readonly openDrawer: () => void;
  readonly toTicket: () => void;
}

/** Before the browser has told how large the drawing is. */
const FIRST_ROOM: Room = { width: 600, height: 400 };

export function BoardView(props: BoardProps): JSX.Element {
  const { reading, layout, picture } = props;
  const drawing = useRef<SVGSVGElement>(null);
  const room = useSignal(FIRST_ROOM);
  useRoom(drawing, room);
  useWheel(drawing);
  useShift(drawing);
  const now = sight.value ?? fitted(layout.nominal, room.value, ticketOver(room.value));
  seen = now;
  const touch = (event: PointerEvent): Touch => ({
    at: placeIn(drawing.current, event),
    now,
    event,
  });
  const keys = keysOf(props, now, room.value);
  return (
    // The drawing itself is hidden from screen readers: the sheet's own words tell what is selected and what was done.
    <div
      class={`board${inHand.value.kind === "part" ? " placing" : ""}${isOverPhoto.value ? " over-photo" : ""}`}
      style={{ "--over-photo": `${drawingStrength.value}` }}
      role="application"
      aria-roledescription="sheet"
      aria-label={describe(layout, reading.title)}
      aria-describedby="sheet-selected"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: an application takes keys, which is what it is for
      tabIndex={0}
      onKeyDown={(event) => boardKey(event, keys)}
      onPointerDown={(event) => {
        event.currentTarget.focus({ preventScroll: true });
        event.currentTarget.setPointerCapture(event.pointerId);
        pointerDown(touch(event));
      }}
      onPointerMove={(event) => pointerMove(touch(event))}
      onPointerUp={(event) => pointerUp(touch(event))}
      onPointerCancel={pointerLost}
    >
      <p id="sheet-selected" class="only-read">
        {selectionWords()}
      </p>
      <svg ref={drawing} class="front" aria-hidden="true">
        <g class="panel-place" transform={`translate(${now.x} ${now.y}) scale(${now.scale})`}>
          <Sheet layout={layout} picture={picture} scale={now.scale} />
          <KeepOuts picture={picture} />
          <Selected />
          <FindingMarks layout={layout} picture={picture} scale={now.scale} />
          <Guides sight={now} panel={layout.nominal} />
          <HeldPart />
          <PaperOnSheet scale={now.scale} />
        </g>
        <Rulers sight={now} room={room.value} />
      </svg>
    </div>
  );
}

/**
 * What a ticket may take of the sheet beyond its one line (`ticket.css` holds it to that), less the paper that is left under a
 * panel; pixels. On a narrow sheet its fields need more lines. Over the section it takes nothing of the sheet.
 */
const ticketOver = ({ width, height }: Room): number =>
  isSectionShown.value || height < LOW ? 0 : width < NARROW ? 124 : 96;

const NARROW = 640;
/** Here nothing can be spared: the list's door or what was found stands above the sheet. */
const LOW = 300;

function keysOf({ openDrawer, toTicket }: BoardProps, now: Sight, room: Room): BoardKeys {
  const middle = { x: room.width / 2, y: room.height / 2 };
  return {
    zoom: (by) => {
      sight.value = zoomed(now, by, middle);
    },
    pan: (by) => {
      sight.value = { ...now, x: now.x + by.x, y: now.y + by.y };
    },
    openDrawer,
    toTicket,
  };
}

/** The sight as it is drawn, for the wheel: its listener is set once. */
let seen: Sight = { scale: 1, x: 0, y: 0 };

function Sheet(props: {
  readonly layout: PanelLayout;
  readonly picture: PanelPicture;
  readonly scale: number;
}): JSX.Element {
  const { layout, picture, scale } = props;
  const isShown = (name: string): boolean => !hidden.value.has(name);
  const front = picture.sheets[0];
  return (
    <>
      <path class="outline" d={front?.outline ?? ""} fill={INK_COLOURS[picture.face]} />
      <PhotoUnderSheet />
      <Handles
        things={things.value.filter(({ kind }) => HOLES.includes(kind) || isShown(":markings"))}
        scale={scale}
      />
      {[...layout.layers]
        .reverse()
        .filter(({ id }) => isShown(id))
        .map((layer) => (
          <g key={layer.id} class={lineClass(layer)} data-layer={layer.id}>
            <path d={picture.sheets.find(({ id }) => id === layer.id)?.openings ?? ""} />
          </g>
        ))}
      {picture.pieces
        .filter(({ kind }) => isShown(kind === "component" ? ":components" : ":markings"))
        .map((piece) => (
          <Piece key={`${piece.kind} ${piece.id}`} piece={piece} />
        ))}
    </>
  );
}

/** What is a hole is there whatever is shown of the face. */
const HOLES: readonly SheetThing["kind"][] = ["window", "screw", "dowel"];

function KeepOuts({ picture }: { readonly picture: PanelPicture }): JSX.Element {
  const isShown = (kind: Extra): boolean => extras.value.has(kind);
  return (
    <g class="keep-outs">
      {picture.keepOuts
        .filter(({ kind }) => isShown(kind))
        .map(({ kind, owner, data }) => (
          <path key={`${kind} ${owner}`} class={kind} data-owner={owner} d={data} />
        ))}
    </g>
  );
}

const describe = (layout: PanelLayout, title: string): string =>
  `${title} from the front: ${counted(layout.components.length, "component")}, ${counted(layout.layers.length, "layer")}`;

const counted = (count: number, what: string): string =>
  `${count} ${what}${count === 1 ? "" : "s"}`;

function placeIn(drawing: SVGSVGElement | null, event: MouseEvent): { x: number; y: number } {
  const box = drawing?.getBoundingClientRect();
  return { x: event.clientX - (box?.left ?? 0), y: event.clientY - (box?.top ?? 0) };
}

interface Held<Value> {
  readonly current: Value | null;
}

function useRoom(drawing: Held<SVGSVGElement>, room: { value: Room }): void {
  useEffect(() => {
    if (drawing.current === null) return;
    const watch = new ResizeObserver(([entry]) => {
      if (entry === undefined) return;
      const { width, height } = entry.contentRect;
      if (width > 0 && height > 0) room.value = { width, height };
    });
    watch.observe(drawing.current);
    return () => watch.disconnect();
  }, [drawing, room]);
}

/** A wheel's notch is about a hundred pixels; it makes the panel a sixth larger. */
const WHEEL = 0.0015;

/** Set by hand: the page must not scroll while the sheet is made larger, which a passive listener can't prevent. */
function useWheel(drawing: Held<SVGSVGElement>): void {
  useEffect(() => {
    const own = drawing.current;
    if (own === null) return;
    const turned = (event: WheelEvent): void => {
      event.preventDefault();
      sight.value = zoomed(seen, Math.exp(-event.deltaY * WHEEL), placeIn(own, event));
    };
    own.addEventListener("wheel", turned, { passive: false });
    return () => own.removeEventListener("wheel", turned);
  }, [drawing]);
}

/**
 * What is dragged is shifted on the elements themselves: nothing is drawn again while the hand moves. By an effect of its own and
 * not by a hook's, which waits for the next frame: the new picture would be seen for a frame with the old shift on it.
 */
function useShift(drawing: Held<SVGSVGElement>): void {
  useEffect(() => {
    let shifted: readonly Element[] = [];
    return effect(() => {
      for (const element of shifted) element.removeAttribute("transform");
      const now = drag.value;
      shifted = now === null || drawing.current === null ? [] : shiftedBy(now, drawing.current);
    });
  }, [drawing]);
}

function shiftedBy(
  { across, along, shift }: NonNullable<typeof drag.value>,
  drawing: SVGSVGElement,
): readonly Element[] {
  return [...drawing.querySelectorAll("[data-owner]")].filter((element) => {
    const owner = element.getAttribute("data-owner") ?? "";
    const x = across.has(owner) ? shift.x : 0;
    const y = along.has(owner) ? -shift.y : 0;
    if (!across.has(owner) && !along.has(owner)) return false;
    element.setAttribute("transform", `translate(${x} ${y})`);
    return true;
  });
}
