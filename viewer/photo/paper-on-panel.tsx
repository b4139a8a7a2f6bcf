// The sheet of paper on the panel while it is in hand: its outline to be drawn, and a round grip that turns it about its lower
// left corner. Places are millimetres of the panel, up; the drawing's y goes down.

import type { JSX } from "preact";
import { useRef } from "preact/hooks";
import { sheetCorners } from "../../src/design/photo-plane.ts";
import type { PlanePoint } from "../../src/geometry/homography-pair.ts";
import { degrees } from "../../src/geometry/quantity.ts";
import { arcTangent2, direction, toDegrees } from "../../src/geometry/trigonometry.ts";
import { holdPaper, letPaperGo } from "./paper-acts.ts";
import { marks, type PaperPlace } from "./photo-state.ts";

type Hand =
  | { readonly kind: "idle" }
  | { readonly kind: "moved" | "turned"; readonly from: PlanePoint; readonly before: PaperPlace };

let hand: Hand = { kind: "idle" };

/** Pixels: of the grip and its target (WCAG 2.2, 2.5.8, asks for 24), and from the corner to it at most. */
const GRIP = 7;
const TARGET = 14;
const ARM = 150;

export function PaperOnPanel({ scale }: { readonly scale: number }): JSX.Element | null {
  const place = useRef<SVGGElement>(null);
  const now = marks.value;
  if (now?.kind !== "sheet") return null;
  const { sheet } = now;
  const corners = sheetCorners(sheet);
  const [pivot, end] = corners;
  const width = Math.max(Math.abs(end.x - pivot.x), Math.abs(end.y - pivot.y));
  const toward = direction(sheet.turn);
  const arm = Math.min(ARM / scale, width);
  const grip = { x: pivot.x + arm * toward.x, y: pivot.y + arm * toward.y };
  const begin = (kind: "moved" | "turned") => (event: PointerEvent) => {
    if (event.button !== 0) return;
    event.stopPropagation();
    event.preventDefault();
    if (event.currentTarget instanceof Element)
      event.currentTarget.setPointerCapture(event.pointerId);
    hand = { kind, from: placeIn(place.current, event), before: sheet };
  };
  const follow = (event: PointerEvent): void => {
    if (hand.kind === "idle") return;
    event.stopPropagation();
    holdPaper(placeAfter(hand, placeIn(place.current, event)), event.altKey);
  };
  const letGo = (event: PointerEvent): void => {
    event.stopPropagation();
    if (hand.kind !== "idle") letPaperGo();
    hand = { kind: "idle" };
  };
  const follows = { onPointerMove: follow, onPointerUp: letGo, onPointerCancel: letGo };
  return (
    <g ref={place} class="paper-on-panel">
      <path
        class="paper-outline"
        d={`M${corners.map(({ x, y }) => `${x} ${-y}`).join("L")}Z`}
        onPointerDown={begin("moved")}
        {...follows}
      />
      <path class="paper-arm" d={`M${pivot.x} ${-pivot.y}L${grip.x} ${-grip.y}`} />
      <circle class="paper-grip" cx={grip.x} cy={-grip.y} r={GRIP / scale} />
      <circle
        class="paper-target"
        cx={grip.x}
        cy={-grip.y}
        r={TARGET / scale}
        onPointerDown={begin("turned")}
        {...follows}
      />
    </g>
  );
}

function placeAfter(held: Exclude<Hand, { readonly kind: "idle" }>, to: PlanePoint): PaperPlace {
  const { kind, from, before } = held;
  const { at, turn } = before;
  if (kind === "moved") return { turn, at: { x: at.x + to.x - from.x, y: at.y + to.y - from.y } };
  return { at, turn: degrees(turn + angle(at, to) - angle(at, from)) };
}

const angle = (about: PlanePoint, { x, y }: PlanePoint): number =>
  toDegrees(arcTangent2(y - about.y, x - about.x));

function placeIn(drawn: SVGGElement | null, { clientX, clientY }: PointerEvent): PlanePoint {
  const onScreen = drawn?.getScreenCTM() ?? null;
  if (onScreen === null) return { x: 0, y: 0 };
  const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(onScreen.inverse());
  return { x, y: -y };
}
