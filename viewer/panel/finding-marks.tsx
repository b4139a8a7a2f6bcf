// A numbered mark at each thing that a finding speaks of: the number is the finding's in the list. Faults are round and full,
// queries square, notes small: told apart without their colour.

import type { JSX } from "preact";
import type { Point } from "../../src/geometry/contour.ts";
import type { Extent } from "../../src/geometry/extent.ts";
import { extentCentre, extentHeight, extentWidth, grownExtent } from "../../src/geometry/extent.ts";
import type { PanelLayout } from "../../src/layout/panel-layout.ts";
import { pointAt, pointedAt } from "../desk.ts";
import { badgePlaces } from "./badge-places.ts";
import { type NumberedFinding, panelFindings } from "./board.ts";
import type { PanelPicture } from "./panel-picture.ts";

interface MarksProps {
  readonly layout: PanelLayout;
  readonly picture: PanelPicture;
  readonly scale: number;
}

export function FindingMarks({ layout, picture, scale }: MarksProps): JSX.Element {
  const places = placesIn(layout, picture);
  const marks = placedMarks(places, { layout, picture, scale });
  const pointed = pointedAt.value;
  return (
    <g class="finding-marks">
      {pointed !== null && <Frames subjects={pointed.finding.subjects} places={places} />}
      {marks.map(({ numbered, subject, at }) => (
        // It goes along with what it speaks of while that is dragged.
        <g key={numbered.number} data-owner={subject}>
          <Mark numbered={numbered} at={at} scale={scale} />
        </g>
      ))}
    </g>
  );
}

interface PlacedMark {
  readonly numbered: NumberedFinding;
  readonly subject: string;
  readonly at: Point;
}

function placedMarks(
  places: ReadonlyMap<string, Extent>,
  { layout, picture, scale }: MarksProps,
): readonly PlacedMark[] {
  const marked = panelFindings.value.flatMap((numbered) => {
    if (numbered.placed.finding.severity === "note") return [];
    const subject = numbered.placed.finding.subjects.find((id) => places.has(id));
    const box = subject === undefined ? undefined : places.get(subject);
    return subject === undefined || box === undefined ? [] : [{ numbered, subject, box }];
  });
  const spots = badgePlaces({
    subjects: marked.map(({ box }) => box),
    seen: [...Object.values(picture.boxes), ...layout.markings.flatMap(({ words }) => words)],
    radius: RADIUS / scale,
  });
  return marked.map(({ numbered, subject, box }, index) => ({
    numbered,
    subject,
    at: spots[index] ?? extentCentre(box),
  }));
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
  addOwnPlaces(places, layout);
  for (const { id, entry } of layout.components) {
    const box = picture.boxes[id];
    if (box === undefined) continue;
    places.set(id, box);
    if (!places.has(entry)) places.set(entry, box);
  }
  return places;
}

/** What is wrong with all of a row of windows or words is shown at its first member. */
function addOwnPlaces(places: Map<string, Extent>, { ownPlaces }: PanelLayout): void {
  for (const { id, entry, at } of ownPlaces) {
    const spot = places.get(id) ?? { minX: at.x, minY: at.y, maxX: at.x, maxY: at.y };
    places.set(id, spot);
    if (!places.has(entry)) places.set(entry, spot);
  }
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
  readonly at: Point;
  readonly scale: number;
}

function Mark({ numbered, at, scale }: MarkProps): JSX.Element {
  const { number, placed } = numbered;
  const { severity } = placed.finding;
  const size = RADIUS / scale;
  const isPointed = pointedAt.value === placed;
  return (
    <g
      class={`mark ${severity}${isPointed ? " pointed" : ""}`}
      data-finding={number}
      transform={`translate(${at.x} ${-at.y}) scale(${size})`}
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
