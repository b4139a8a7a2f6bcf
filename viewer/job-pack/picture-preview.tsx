// A drawing or a picture as an image: a browser runs nothing inside an image and loads nothing for it, so that no text of a
// design that stands in an SVG can do anything.

import type { JSX } from "preact";
import { useMemo } from "preact/hooks";
import type { PackFile } from "../../src/pack/pack-file.ts";

export function PicturePreview(props: {
  readonly file: PackFile;
  /** For who doesn't see it; its path where it stands by itself. */
  readonly name?: string;
}): JSX.Element {
  const { file, name = file.path } = props;
  const address = useMemo(() => imageAddress(file), [file]);
  return <img class="picture-preview" src={address} alt={name} />;
}

/** As data in the address, which goes with the image: an address of a blob would have to be given back. */
const imageAddress = ({ path, bytes }: PackFile): string => {
  const type = path.endsWith(".png") ? "image/png" : "image/svg+xml";
  let letters = "";
  for (let at = 0; at < bytes.length; at += CHUNK)
    letters += String.fromCharCode(...bytes.subarray(at, at + CHUNK));
  return `data:${type};base64,${btoa(letters)}`;
};

/** As many arguments as any browser takes at once. */
const CHUNK = 8192;
