// How large a picture is, from its head alone: JPEG (ITU-T T.81, annex B), PNG (W3C PNG, 11.2.1), WebP (RFC 9649). Nothing
// is decoded. Sizes are those of the picture upright: a JPEG's note of how the camera was held (Exif 2.32, tag 274) is
// followed, as browsers do. One that asks for a turn in a PNG (W3C PNG, third edition, 11.3.4.5: chunk eXIf) or a WebP
// (RFC 9649, 2.7.1.5: chunk EXIF) some programs follow and some do not: such a picture has no one upright, and is refused.

export type PictureSize =
  | { readonly kind: "picture"; readonly width: number; readonly height: number }
  /** With what makes it one that can be laid under a drawing. */
  | { readonly kind: "refused"; readonly why: string; readonly works: string };

export const pictureSize = (bytes: Uint8Array): PictureSize => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const size = starts(bytes, [0xff, 0xd8, 0xff])
    ? jpegSize(view)
    : starts(bytes, PNG_SIGNATURE)
      ? pngSize(view)
      : tagAt(view, 0) === "RIFF" && tagAt(view, 8) === "WEBP"
        ? webpSize(view)
        : null;
  if (size === null)
    return refused("it is no JPEG, PNG or WebP picture, or its head is damaged", SAVED_AGAIN);
  const { width, height, turn } = size;
  if (turn !== USUAL)
    return refused(
      `a note in it asks that it be turned or mirrored (Exif orientation ${turn}), which only some programs do`,
      "Turn it in a picture program until it is upright without the note, or save it as JPEG.",
    );
  return width > 0 && height > 0
    ? { kind: "picture", width, height }
    : refused("its head says that it has no pixels", SAVED_AGAIN);
};

const SAVED_AGAIN = "Save it again as JPEG or PNG.";

const refused = (why: string, works: string): PictureSize => ({ kind: "refused", why, works });

interface Size {
  readonly width: number;
  readonly height: number;
  /** An orientation that is asked for and that width and height do not follow. */
  readonly turn: number;
}

const PNG_SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

const starts = (bytes: Uint8Array, head: readonly number[]): boolean =>
  head.every((value, index) => bytes[index] === value);

const tagAt = (view: DataView, at: number): string =>
  at + 4 > view.byteLength
    ? ""
    : String.fromCharCode(...[0, 1, 2, 3].map((index) => view.getUint8(at + index)));

const pngSize = (view: DataView): Size | null =>
  view.byteLength < 24 || tagAt(view, 12) !== "IHDR"
    ? null
    : { width: view.getUint32(16), height: view.getUint32(20), turn: pngTurn(view) };

/** Length, name, contents and check of each chunk (W3C PNG, 5.3); the note may stand on either side of the pixels. */
const pngTurn = (view: DataView): number => {
  let at = PNG_SIGNATURE.length;
  while (at + 8 <= view.byteLength) {
    if (tagAt(view, at + 4) === "eXIf") return orientationOf(view, at + 8);
    at += 12 + view.getUint32(at);
  }
  return USUAL;
};

/** Markers of a frame's head: C0 to CF less the tables C4, C8 and CC (T.81, table B.1). */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

const jpegSize = (view: DataView): Size | null => {
  let at = 2;
  let isOnItsSide = false;
  while (at + 4 <= view.byteLength) {
    const marker = view.getUint8(at + 1);
    if (view.getUint8(at) !== 0xff) return null;
    // A marker may have any number of FF before it.
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const length = view.getUint16(at + 2);
    if (marker === 0xe1) isOnItsSide ||= ON_ITS_SIDE.includes(jpegOrientation(view, at + 4));
    if (isFrame(marker)) {
      if (at + 9 > view.byteLength) return null;
      const [height, width] = [view.getUint16(at + 5), view.getUint16(at + 7)];
      return isOnItsSide
        ? { width: height, height: width, turn: USUAL }
        : { width, height, turn: USUAL };
    }
    at += 2 + length;
  }
  return null;
};

/** Orientations 5 to 8 exchange rows and columns; 1 to 4 keep them, others are reserved (Exif 2.32, 4.6.4 A). */
const ON_ITS_SIDE: readonly number[] = [5, 6, 7, 8];
const ORIENTATION = 274;
const USUAL = 1;
const MOST_ORIENTATION = 8;
/** A short whole number, one of it (TIFF 6.0, section 2): as the tag must be written. */
const [SHORT, ONE] = [3, 1];

/** "Exif" and two zeros stand before the note in a JPEG (Exif 2.32, 4.7.2), and in WebPs of some programs. */
const EXIF_NAME_LENGTH = 6;

const jpegOrientation = (view: DataView, at: number): number =>
  tagAt(view, at) === "Exif" ? orientationOf(view, at + EXIF_NAME_LENGTH) : USUAL;

/** Of the note that begins there with its order of bytes (TIFF 6.0, section 2). */
const orientationOf = (view: DataView, tiff: number): number => {
  if (tiff + 8 > view.byteLength) return USUAL;
  const isLittle = view.getUint16(tiff) === 0x4949;
  const directory = tiff + view.getUint32(tiff + 4, isLittle);
  if (directory + 2 > view.byteLength) return USUAL;
  const count = view.getUint16(directory, isLittle);
  for (let index = 0; index < count; index += 1) {
    const entry = directory + 2 + 12 * index;
    if (entry + 12 > view.byteLength) return USUAL;
    if (view.getUint16(entry, isLittle) !== ORIENTATION) continue;
    const value = view.getUint16(entry + 8, isLittle);
    return view.getUint16(entry + 2, isLittle) === SHORT &&
      view.getUint32(entry + 4, isLittle) === ONE &&
      value <= MOST_ORIENTATION
      ? Math.max(value, USUAL)
      : USUAL;
  }
  return USUAL;
};

const webpSize = (view: DataView): Size | null => {
  if (view.byteLength < 30) return null;
  switch (tagAt(view, 12)) {
    case "VP8X":
      return { width: 1 + wordOf3(view, 24), height: 1 + wordOf3(view, 27), turn: webpTurn(view) };
    case "VP8 ":
      return {
        width: view.getUint16(26, true) & 0x3fff,
        height: view.getUint16(28, true) & 0x3fff,
        turn: USUAL,
      };
    case "VP8L": {
      const packed = view.getUint32(21, true);
      return { width: 1 + (packed & 0x3fff), height: 1 + ((packed >>> 14) & 0x3fff), turn: USUAL };
    }
    default:
      return null;
  }
};

/** Name, size and contents of each chunk, filled up to an even size (RFC 9649, 2.3); only the extended form has a note. */
const webpTurn = (view: DataView): number => {
  let at = 12;
  while (at + 8 <= view.byteLength) {
    const note = at + 8;
    if (tagAt(view, at) === "EXIF")
      return orientationOf(view, tagAt(view, note) === "Exif" ? note + EXIF_NAME_LENGTH : note);
    const size = view.getUint32(at + 4, true);
    at = note + size + (size % 2);
  }
  return USUAL;
};

const wordOf3 = (view: DataView, at: number): number =>
  view.getUint16(at, true) + view.getUint8(at + 2) * 65536;
