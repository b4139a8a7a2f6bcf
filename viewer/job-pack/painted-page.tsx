// A page of a PDF as a drawing of the page: in true size where it is printed, as wide as there is room where it is looked at.

import type { JSX } from "preact";
import { type PaintedPage, type PaintedShape, type Rectangle, written } from "./pdf-paint.ts";

export function PaintedPaper(props: {
  readonly page: PaintedPage;
  /** Name for those who don't see it. */
  readonly name: string;
  readonly isTrueSize: boolean;
}): JSX.Element {
  const { page, name, isTrueSize } = props;
  const { width, height } = page;
  const [across, down] = [written(width), written(height)];
  const size = isTrueSize ? { width: `${across}mm`, height: `${down}mm` } : {};
  return (
    <svg
      class="painted-paper"
      role="img"
      aria-label={name}
      viewBox={`0 0 ${across} ${down}`}
      {...size}
    >
      {clipped(page.shapes).map(({ clip, shapes }, index) =>
        clip === null ? (
          <Shapes key={index} shapes={shapes} />
        ) : (
          // A nested drawing of its own size shows nothing beyond its edges, and needs no name that others could take.
          <svg
            key={index}
            aria-hidden="true"
            x={written(clip.x)}
            y={written(clip.y)}
            width={written(clip.width)}
            height={written(clip.height)}
            viewBox={[clip.x, clip.y, clip.width, clip.height].map(written).join(" ")}
          >
            <Shapes shapes={shapes} />
          </svg>
        ),
      )}
    </svg>
  );
}

function Shapes({ shapes }: { readonly shapes: readonly PaintedShape[] }): JSX.Element {
  return (
    <g>
      {shapes.map(({ data, fill, stroke }, index) => (
        <path
          key={index}
          d={data}
          fill={fill ?? "none"}
          fill-rule="evenodd"
          {...(stroke === null
            ? {}
            : {
                stroke: stroke.colour,
                "stroke-width": written(stroke.width),
                ...(stroke.dashes === "" ? {} : { "stroke-dasharray": stroke.dashes }),
              })}
        />
      ))}
    </g>
  );
}

interface ClippedShapes {
  readonly clip: Rectangle | null;
  readonly shapes: readonly PaintedShape[];
}

/** Neighbours with one edge round them are drawn together. */
const clipped = (shapes: readonly PaintedShape[]): readonly ClippedShapes[] => {
  const runs: { clip: Rectangle | null; shapes: PaintedShape[] }[] = [];
  for (const shape of shapes) {
    const last = runs.at(-1);
    if (last !== undefined && last.clip === shape.clip) last.shapes.push(shape);
    else runs.push({ clip: shape.clip, shapes: [shape] });
  }
  return runs;
};
