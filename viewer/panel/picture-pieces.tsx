// The picture's pieces as elements: sheets, components and markings, each drawn again only where its data has changed. Built
// as elements, never as markup text, so that nothing in a design can become part of the page.

import type { Component, JSX } from "preact";
import { DASHES, INK_COLOURS } from "../../src/export/ink-colours.ts";
import type { PicturePiece, PictureShape } from "./panel-picture.ts";

interface PieceProps {
  readonly piece: PicturePiece;
}

/**
 * What a reading leaves as it was is the same object, and is not drawn again: its letters are not looked at. Elements are not
 * kept for that: each holds on to the page that it was first drawn in, and with it to every reading since.
 */
export function Piece(this: Component<PieceProps>, { piece }: PieceProps): JSX.Element {
  this.shouldComponentUpdate = (next) => next.piece !== this.props.piece;
  const { kind, id, owner, shapes } = piece;
  const name = kind === "component" ? { "data-component": id } : { "data-marking": id };
  return (
    <g class={kind} data-owner={owner} {...name}>
      <Shapes shapes={shapes} />
    </g>
  );
}

export function Shapes({ shapes }: { readonly shapes: readonly PictureShape[] }): JSX.Element {
  return (
    <>
      {shapes.map((shape, index) => (
        // The order of painting is what tells them apart.
        <path key={index} {...lookOf(shape)} d={shape.data} transform={movedTo(shape)} />
      ))}
    </>
  );
}

function lookOf({ ink, width, dashed }: PictureShape): JSX.IntrinsicElements["path"] {
  const colour = INK_COLOURS[ink];
  if (width === null) return { fill: colour, "fill-rule": "evenodd" };
  return {
    fill: "none",
    stroke: colour,
    "stroke-width": width,
    "stroke-linecap": "round",
    "stroke-linejoin": "round",
    ...(dashed ? { "stroke-dasharray": DASHES.join(" ") } : {}),
  };
}

const movedTo = ({ x, y }: PictureShape): string => `translate(${x} ${y})`;
