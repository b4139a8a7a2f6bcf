// A numbered mark at each thing that a finding speaks of: the number is the finding's in the list. Faults are round and full,
// queries square, notes small: told apart without their colour.

import type { JSX } from "preact";
import type { Extent } from "../../src/geometry/extent.ts";
import { extentCentre, extentHeight, extentWidth, grownExtent } from "../../src/geometry/extent.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { pointAt, pointedAt } from "../desk.ts";
import { type NumberedFinding, panelFindings } from "./board.ts";
import type { PanelPicture } from "./panel-picture.ts";

interface MarksProps {
  readonly layout: PanelLayout;
  readonly picture: PanelPicture;
  readonly scale: number;
}

export function FindingMarks({ layout, picture, scale }: MarksProps): JSX.Element {
  const places = placesIn(layout, picture);
  const taken = new Map<string, number>();
  const pointed = pointedAt.value;
  return (
    <g class="finding-marks">
      {pointed !== null && <Frames subjects={pointed.finding.subjects} places={places} />}
      {panelFindings.value
        .filter(({ placed }) => placed.finding.severity !== "note")
        .map((numbered) => {
          const subject = numbered.placed.finding.subjects.find((id) => places.has(id));
          const box = subject === undefined ? undefined : places.get(subject);
          if (subject === undefined || box === undefined) return null;
          const nth = taken.get(subject) ?? 0;
          taken.set(subject, nth + 1);
          return (
            // It goes along with what it speaks of while that is dragged.
            <g key={numbered.number} data-owner={subject}>
              <Mark numbered={numbered} box={box} nth={nth} scale={scale} />
            </g>
          );
        })}
    </g>
  );
}

/** Boxes of components, openings and markings by every name that a finding may use. */
function placesIn(layout: PanelLayout, picture: PanelPicture): ReadonlyMap<string, Extent> {
  const places = new Map<string, Extent>();
  for (const { id, box } of layout.markings) places.set(id, box);
  for (const { cutOuts } of layout.layers)
    for (const { id, owner, centre } of cutOuts) {
      const spot = { minX: centre.x, minY: centre.y, maxX: centre.x, maxY: centre.y };
      if (!places.has(owner)) places.set(owner, spot);
      places.set(id, spot);
    }
  for (const { id, entry } of layout.components) {
    const box = picture.boxes[id];
    if (box === undefined) continue;
    places.set(id, box);
    if (!places.has(entry)) places.set(entry, box);
  }
  return places;
}

function Frames(props: {
  readonly subjects: readonly string[];
  readonly places: ReadonlyMap<string, Extent>;
}): JSX.Element {
  const boxes = props.subjects.flatMap((id) => props.places.get(id) ?? []);
  return (
    <g class="pointer">
      {boxes.map((found, index) => {
        const box = grownExtent(found, 1.5);
        return (
          <rect
            key={props.subjects[index]}
            x={box.minX}
            y={-box.maxY}
            width={extentWidth(box)}
            height={extentHeight(box)}
            rx={1}
          />
        );
      })}
    </g>
  );
}

/** Pixels. */
const RADIUS = 8;

interface MarkProps {
  readonly numbered: NumberedFinding;
  readonly box: Extent;
  readonly nth: number;
  readonly scale: number;
}

function Mark({ numbered, box, nth, scale }: MarkProps): JSX.Element {
  const { number, placed } = numbered;
  const { severity } = placed.finding;
  const size = RADIUS / scale;
  const { x: middle } = extentCentre(box);
  const x = Math.max(box.maxX, middle) + nth * size * 1.9;
  // At the lower right: legends usually stand above.
  const y = -box.minY;
  const isPointed = pointedAt.value === placed;
  return (
    <g
      class={`mark ${severity}${isPointed ? " pointed" : ""}`}
      data-finding={number}
      transform={`translate(${x} ${y}) scale(${size})`}
      onPointerDown={(event) => {
        event.stopPropagation();
        pointAt(isPointed ? null : placed);
      }}
    >
      {severity === "fault" ? (
        <circle r={1} />
      ) : (
        <rect x={-0.9} y={-0.9} width={1.8} height={1.8} />
      )}
      <text y={0.42} font-size={1.15} text-anchor="middle">
        {number}
      </text>
    </g>
  );
}
