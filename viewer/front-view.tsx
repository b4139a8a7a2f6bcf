// The panel from the front, drawn from its layout: one group a layer, hidden by its switch. Built as elements, never as
// markup text, so that nothing in a design can become part of the page.

import type { JSX } from "preact";
import {
  type Extent,
  extentHeight,
  extentWidth,
  grownExtent,
  joinedExtent,
} from "../src/geometry/extent.ts";
import { contourExtent } from "../src/geometry/measure.ts";
import type {
  LayerLayout,
  PanelLayout,
  PlacedComponent,
  PlacedMarking,
} from "../src/layout/panel-layout.ts";
import { contourData, pathData, regionData } from "./contour-path.ts";
import { hidden, panel, pointedAt } from "./desk.ts";
import { lineClass } from "./layer-list.tsx";

/** Paper round the panel, mm. */
const MARGIN = 6;

export function FrontView(): JSX.Element | null {
  const shown = panel.value;
  if (shown === null) return null;
  if (shown.layout === null)
    return <p class="no-drawing">{shown.title} could not be laid out: see its faults.</p>;
  return <Drawing layout={shown.layout} title={shown.title} />;
}

interface DrawingProps {
  readonly layout: PanelLayout;
  readonly title: string;
}

function Drawing({ layout, title }: DrawingProps): JSX.Element {
  const box = grownExtent(contourExtent(layout.outline), MARGIN);
  const isShown = (name: string): boolean => !hidden.value.has(name);
  return (
    <svg class="front" viewBox={viewBoxOf(box)} role="img" aria-label={describe(layout, title)}>
      <path class="outline" d={contourData(layout.outline)} />
      {[...layout.layers]
        .reverse()
        .filter(({ id }) => isShown(id))
        .map((layer) => (
          <LayerGroup key={layer.id} layer={layer} />
        ))}
      {isShown(":components") && <Components components={layout.components} />}
      {isShown(":markings") && <Markings markings={layout.markings} />}
      <Pointer layout={layout} />
    </svg>
  );
}

function LayerGroup({ layer }: { readonly layer: LayerLayout }): JSX.Element {
  return (
    <g class={lineClass(layer)} data-layer={layer.id}>
      {layer.cutOuts.map(({ id, contour }) => (
        <path key={id} d={contourData(contour)} />
      ))}
    </g>
  );
}

function Components(props: { readonly components: readonly PlacedComponent[] }): JSX.Element {
  return (
    <g class="components">
      {props.components.map(({ id, face }) => (
        <g key={id} data-component={id}>
          {face.map((contour) => (
            <path key={contourData(contour)} d={contourData(contour)} />
          ))}
        </g>
      ))}
    </g>
  );
}

function Markings(props: { readonly markings: readonly PlacedMarking[] }): JSX.Element {
  return (
    <g class="markings">
      {props.markings.map(({ id, fills, strokes }) => (
        <g key={id} data-marking={id}>
          {fills.length > 0 && <path class="fill" d={fills.map(regionData).join("")} />}
          {strokes.map(({ path, width }) => (
            <path key={pathData(path)} class="stroke" d={pathData(path)} stroke-width={width} />
          ))}
        </g>
      ))}
    </g>
  );
}

/** A frame round each thing that the chosen finding speaks of. */
function Pointer({ layout }: { readonly layout: PanelLayout }): JSX.Element | null {
  const subjects = pointedAt.value?.finding.subjects ?? [];
  const frames = subjects.flatMap((subject) => frameOf(layout, subject) ?? []);
  if (frames.length === 0) return null;
  return (
    <g class="pointer">
      {frames.map((box) => (
        <rect
          key={viewBoxOf(box)}
          x={box.minX}
          y={-box.maxY}
          width={extentWidth(box)}
          height={extentHeight(box)}
          rx={1}
        />
      ))}
    </g>
  );
}

/** Room between a thing and its frame, mm. */
const FRAME_GAP = 1;

function frameOf(layout: PanelLayout, subject: string): Extent | null {
  const cutOuts = layout.layers
    .flatMap((layer) => layer.cutOuts)
    .filter(({ id, owner }) => id === subject || owner === subject)
    .map(({ contour }) => contourExtent(contour));
  const markings = layout.markings.filter(({ id }) => id === subject).map(({ box }) => box);
  const [first, ...rest] = [...cutOuts, ...markings];
  return first === undefined ? null : grownExtent(rest.reduce(joinedExtent, first), FRAME_GAP);
}

const viewBoxOf = (box: Extent): string =>
  [box.minX, -box.maxY, extentWidth(box), extentHeight(box)].join(" ");

const describe = (layout: PanelLayout, title: string): string =>
  `${title} from the front: ${layout.components.length} components, ${layout.layers.length} layers`;
