// Drawn over the picture: frames round what is selected, the rubber band, guides with their numbers, the part in hand.

import type { JSX } from "preact";
import { figureIn } from "../../src/design/length-text.ts";
import { type Extent, extentHeight, extentWidth, grownExtent } from "../../src/geometry/extent.ts";
import { drag, inHand, type Sight, selectedThings, unit } from "./board.ts";
import { RULER } from "./board-places.ts";
import { band } from "./board-pointer.ts";
import type { Guide, GuideAxis } from "./snap.ts";

/** Room between a thing and its frame, mm. */
const FRAME_GAP = 0.8;

export function Selected(): JSX.Element {
  const held = band.value;
  return (
    <>
      {selectedThings.value.map(({ id, box }) => (
        <g key={id} class="selected" data-owner={id}>
          <path d={corners(grownExtent(box, FRAME_GAP))} />
        </g>
      ))}
      {held !== null && <rect class="band" {...rectOf(held)} />}
    </>
  );
}

/** A flat line still gets corners that are seen, mm. */
const LEAST_ARM = 0.6;

/** Four corner ticks, as a fitter scribes them: the thing itself stays in sight. */
function corners({ minX, minY, maxX, maxY }: Extent): string {
  const arm = Math.max(LEAST_ARM, Math.min(3, (maxX - minX) / 3, (maxY - minY) / 3));
  const tick = (x: number, y: number, dx: number, dy: number): string =>
    `M${x + dx} ${-y}H${x}V${-(y + dy)}`;
  return [
    tick(minX, minY, arm, arm),
    tick(maxX, minY, -arm, arm),
    tick(minX, maxY, arm, -arm),
    tick(maxX, maxY, -arm, -arm),
  ].join("");
}

const rectOf = (
  box: Extent,
): { readonly x: number; readonly y: number; readonly width: number; readonly height: number } => ({
  x: box.minX,
  y: -box.maxY,
  width: extentWidth(box),
  height: extentHeight(box),
});

interface GuidesProps {
  readonly sight: Sight;
  /** The panel, beside which the figures stand. */
  readonly panel: Extent;
}

export function Guides({ sight, panel }: GuidesProps): JSX.Element | null {
  const now = drag.value;
  if (now === null) return null;
  return (
    <g class="guides">
      {now.guides.map((guide, index) => (
        <GuideLine key={`${index} ${guide.kind}`} guide={guide} sight={sight} panel={panel} />
      ))}
    </g>
  );
}

/** Pixels. */
const LETTERS = 12;
const BEYOND = 14;
/** Stroke, gap, dot, gap. */
const CHAIN = [12, 3, 1.5, 3];

/** A figure on a ground of its own: whatever lies under it, it is read. */
function Figure(props: {
  readonly words: string;
  /** Middle, mm, y down. */
  readonly x: number;
  readonly y: number;
  readonly scale: number;
}): JSX.Element {
  const { words, x, y, scale } = props;
  const width = words.length * LETTERS * LETTER_WIDTH + 8;
  return (
    <g transform={`translate(${x} ${y}) scale(${1 / scale})`}>
      <rect x={-width / 2} y={-HIGH / 2} width={width} height={HIGH} rx={2} />
      <text y={LETTERS * 0.36} font-size={LETTERS} text-anchor="middle">
        {words}
      </text>
    </g>
  );
}

/** Of a letter's height: figures are narrower than this in the usual fonts. */
const LETTER_WIDTH = 0.6;
const HIGH = 16;

/**
 * Where the figure of a line stands: beyond the panel's upper or right edge, where no legend is; where that edge is out of sight,
 * at the edge of the sheet.
 */
function figurePlace(axis: GuideAxis, { sight, panel }: GuidesProps): number {
  const beyond = HIGH / 2 + 3;
  if (axis === "y") return panel.maxX + (beyond + HIGH) / sight.scale;
  return Math.max(-panel.maxY - beyond / sight.scale, (RULER + beyond - sight.y) / sight.scale);
}

function GuideLine(props: GuidesProps & { readonly guide: Guide }): JSX.Element {
  const { guide, sight } = props;
  const { scale } = sight;
  const words = (value: number): string => figureIn(unit.value, Math.round(value * 1000) / 1000);
  if (guide.kind === "line") {
    const over = BEYOND / scale;
    const [low, high] = [guide.from - over, guide.to + over];
    const isUpright = guide.axis === "x";
    const end = figurePlace(guide.axis, props);
    const [x, y] = isUpright ? [guide.value, end] : [end, -guide.value];
    return (
      <>
        <path
          d={
            isUpright ? `M${x} ${-low}V${Math.min(-high, y)}` : `M${low} ${y}H${Math.max(high, x)}`
          }
          stroke-width={1.2 / scale}
          stroke-dasharray={CHAIN.map((part) => part / scale).join(" ")}
        />
        <Figure words={`${guide.axis} ${words(guide.value)}`} x={x} y={y} scale={scale} />
      </>
    );
  }
  const { from, to, beside } = guide;
  const middle = (from + to) / 2;
  const tick = 4 / scale;
  const isAcross = guide.axis === "x";
  const line = isAcross
    ? `M${from} ${-beside - tick}v${2 * tick}M${from} ${-beside}H${to}M${to} ${-beside - tick}v${2 * tick}`
    : `M${beside - tick} ${-from}h${2 * tick}M${beside} ${-from}V${-to}M${beside - tick} ${-to}h${2 * tick}`;
  const [x, y] = isAcross ? [middle, -beside - 3 * tick] : [beside + 6 * tick, -middle];
  return (
    <>
      <path d={line} stroke-width={1.2 / scale} />
      <Figure words={words(to - from)} x={x} y={y} scale={scale} />
    </>
  );
}

/** The part that waits to be put down: its face and its hole. */
export function HeldPart(): JSX.Element | null {
  const held = inHand.value;
  if (held.kind === "nothing") return null;
  const { card, at } = held;
  return (
    <g class="held-part" transform={`translate(${at.x} ${-at.y})`}>
      <path class="held-face" d={card.outline} />
      <path class="held-hole" d={card.hole} />
      <path class="held-cross" d="M-4 0H4M0 -4V4" />
    </g>
  );
}
