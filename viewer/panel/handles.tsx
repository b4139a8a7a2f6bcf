// What can be taken hold of and has no piece of its own in the picture, or one too thin for a finger: unseen areas under the
// components. While one is dragged its outline is shown.

import type { JSX } from "preact";
import { extentHeight, extentWidth, grownExtent } from "../../src/geometry/extent.ts";
import type { SheetThing } from "./sheet-things.ts";

/** Half of what a finger hits, pixels: WCAG 2.2, 2.5.8, asks for 24. */
const FINGER = 12;

export function Handles(props: {
  readonly things: readonly SheetThing[];
  readonly scale: number;
}): JSX.Element {
  return (
    <g class="handles">
      {props.things
        .filter(({ grip }) => grip.kind !== "picture")
        .map((thing) => (
          <Handle key={thing.id} thing={thing} reach={FINGER / props.scale} />
        ))}
    </g>
  );
}

function Handle(props: { readonly thing: SheetThing; readonly reach: number }): JSX.Element | null {
  const { thing, reach } = props;
  const { id, grip, at } = thing;
  switch (grip.kind) {
    case "picture":
      return null;
    case "area":
      return <rect class="handle" data-owner={id} {...rectOf(thing, reach)} />;
    case "ring":
      return (
        <rect class="handle ring" data-owner={id} {...rectOf(thing, 0)} stroke-width={reach} />
      );
    case "round":
      return (
        <g class="handle" data-owner={id}>
          <circle class="reach" cx={at.x} cy={-at.y} r={Math.max(grip.radius, reach)} />
          <circle class="rim" cx={at.x} cy={-at.y} r={grip.radius} />
        </g>
      );
    case "run":
      return (
        <path
          class="handle ring"
          data-owner={id}
          d={`M${grip.from.x} ${-grip.from.y}L${grip.to.x} ${-grip.to.y}`}
          stroke-width={2 * reach}
        />
      );
  }
}

/** At least as large as a finger. */
function rectOf(
  { box }: SheetThing,
  reach: number,
): {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
} {
  const short = Math.min(extentWidth(box), extentHeight(box));
  const { minX, maxX, minY, maxY } = grownExtent(box, Math.max(0, reach - short / 2));
  return { x: minX, y: -maxY, width: maxX - minX, height: maxY - minY };
}
