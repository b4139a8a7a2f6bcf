// Sizes from the heads of pictures: written by hand from the formats' own documents, and by a browser's encoders elsewhere
// (tests/browser/photo.test.ts opens what a browser has written).

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { photoFindings } from "../../src/inspection/photo-file.ts";
import { pictureSize } from "../../src/inspection/picture-size.ts";
import { readPanel } from "../design/reading.ts";
import { blackPng } from "../support/panel-photograph.ts";

const bytes = (...parts: readonly (string | readonly number[])[]): Uint8Array =>
  Uint8Array.from(
    parts.flatMap((part) => (typeof part === "string" ? [...Buffer.from(part, "latin1")] : part)),
  );

// W3C PNG, 11.2.1: width and height follow the name of the first chunk, each four bytes, high byte first.
const PNG = bytes(
  [0x89],
  "PNG\r\n",
  [0x1a, 0x0a],
  [0, 0, 0, 13],
  "IHDR",
  [0, 0, 2, 0x80, 0, 0, 1, 0xe0],
);

// ITU-T T.81, B.2.2: length, precision, lines, samples a line.
const FRAME = [0xff, 0xc0, 0, 17, 8, 0x03, 0x20, 0x04, 0xb0, 3, 1, 0x22, 0, 2, 0x11, 1, 3, 0x11, 1];
const TABLE = [0xff, 0xc4, 0, 4, 0, 0];
const JPEG = bytes([0xff, 0xd8], TABLE, [0xff], FRAME);

/** Exif 2.32, 4.6.4: an IFD with one entry, tag 274 (0x0112), type SHORT, count 1. */
const exif = (
  orientation: number,
  isLittle: boolean,
  entry: { readonly type: number; readonly count: number } = { type: 3, count: 1 },
): readonly number[] => {
  const body = [...Buffer.from("Exif\0\0", "latin1"), ...tiff(orientation, isLittle, entry)];
  return [0xff, 0xe1, 0, body.length + 2, ...body];
};

const tiff = (
  orientation: number,
  isLittle: boolean,
  entry: { readonly type: number; readonly count: number } = { type: 3, count: 1 },
): readonly number[] => {
  const short = (value: number): readonly number[] =>
    isLittle ? [value & 255, value >> 8] : [value >> 8, value & 255];
  const long = (value: number): readonly number[] =>
    isLittle ? [...short(value), 0, 0] : [0, 0, ...short(value)];
  return [
    ...(isLittle ? [0x49, 0x49] : [0x4d, 0x4d]),
    ...short(42),
    ...long(8),
    ...short(1),
    ...short(274),
    ...short(entry.type),
    ...long(entry.count),
    ...short(orientation),
    0,
    0,
    ...long(0),
  ];
};

/** Length, name, contents and check (W3C PNG, 5.3); nothing here reads the check. */
const chunk = (name: string, contents: readonly number[]): readonly number[] => [
  ...[0, 0, 0, contents.length],
  ...Buffer.from(name, "latin1"),
  ...contents,
  ...[0, 0, 0, 0],
];

describe("the size of a picture", () => {
  test("PNG", () => {
    expect(pictureSize(PNG)).toEqual({ kind: "picture", width: 640, height: 480 });
  });

  test("JPEG: a table before the frame is passed over, and so is filling", () => {
    expect(pictureSize(JPEG)).toEqual({ kind: "picture", width: 1200, height: 800 });
  });

  // Exif 2.32, table for tag 274: 1 to 4 keep rows, 5 to 8 exchange rows and columns.
  test.each([1, 2, 3, 4, 5, 6, 7, 8])("JPEG with orientation %i", (orientation) => {
    for (const isLittle of [true, false]) {
      const turned = bytes([0xff, 0xd8], exif(orientation, isLittle), FRAME);
      const [width, height] = orientation < 5 ? [1200, 800] : [800, 1200];
      expect(pictureSize(turned)).toEqual({ kind: "picture", width, height });
    }
  });

  // Other values are reserved: nothing is turned by them. An entry of another type or count is none of this tag's.
  test.each([0, 9, 300])("JPEG with orientation %i, which is none", (orientation) => {
    for (const isLittle of [true, false])
      expect(pictureSize(bytes([0xff, 0xd8], exif(orientation, isLittle), FRAME))).toEqual({
        kind: "picture",
        width: 1200,
        height: 800,
      });
  });

  test.each([
    { type: 1, count: 1 },
    { type: 4, count: 1 },
    { type: 3, count: 2 },
  ])("JPEG whose orientation is of type $type, count $count", (entry) => {
    for (const isLittle of [true, false])
      expect(pictureSize(bytes([0xff, 0xd8], exif(6, isLittle, entry), FRAME))).toEqual({
        kind: "picture",
        width: 1200,
        height: 800,
      });
  });

  // RFC 9649: 2.5 lossy (RFC 6386, 9.1: 14 bits each), 2.6 lossless (14 bits each less one), 2.7 extended (24 bits less one).
  test("WebP, in its three forms", () => {
    const head = (name: string): readonly (string | readonly number[])[] => [
      "RIFF",
      [40, 0, 0, 0],
      "WEBP",
      name,
      [20, 0, 0, 0],
    ];
    const size = { kind: "picture", width: 1200, height: 800 };
    const lossy = bytes(...head("VP8 "), [0, 0, 0, 0x9d, 1, 0x2a], [0xb0, 0x04, 0x20, 0x03]);
    const packed = 1199 + 799 * 16384;
    const lossless = bytes(
      ...head("VP8L"),
      [0x2f, packed & 255, (packed >> 8) & 255, (packed >> 16) & 255, (packed >> 24) & 255],
      Array.from({ length: 8 }, () => 0),
    );
    const extended = bytes(...head("VP8X"), [0, 0, 0, 0], [0xaf, 0x04, 0, 0x1f, 0x03, 0]);
    for (const one of [lossy, lossless, extended]) expect(pictureSize(one)).toEqual(size);
  });

  test("what is no picture is refused, and no bytes at all make it fail", () => {
    expect(pictureSize(bytes("GIF89a"))).toMatchObject({ kind: "refused" });
    expect(pictureSize(bytes([0xff, 0xd8], FRAME.slice(0, 8)))).toMatchObject({ kind: "refused" });
    const heads = [PNG, JPEG, bytes([0xff, 0xd8], exif(6, true), FRAME)];
    fc.assert(
      fc.property(fc.constantFrom(...heads), fc.nat(60), fc.uint8Array(), (head, keep, rest) => {
        const mixed = Uint8Array.from([...head.subarray(0, keep), ...rest]);
        expect(["picture", "refused"]).toContain(pictureSize(mixed).kind);
      }),
    );
  });
});

describe("a picture that asks to be turned, in a format whose note is not always followed", () => {
  // Exif 2.32, tag 274, in the chunk eXIf of W3C PNG, third edition, 11.3.4.5, before or behind the pixels.
  test.each([0, 1, 2, 3, 6, 8, 9])("PNG whose note asks for orientation %i", (orientation) => {
    const pixels = [...chunk("IDAT", [1, 2, 3])];
    for (const isLittle of [true, false]) {
      const note = chunk("eXIf", tiff(orientation, isLittle));
      for (const rest of [
        [...note, ...pixels],
        [...pixels, ...note],
      ])
        expect(pictureSize(bytes([...PNG], [8, 2, 0, 0, 0, 0, 0, 0, 0], rest))).toMatchObject(
          orientation > 1 && orientation < 9
            ? { kind: "refused", why: expect.stringContaining(`Exif orientation ${orientation}`) }
            : { kind: "picture", width: 640, height: 480 },
        );
    }
  });

  // RFC 9649, 2.7.1.5: EXIF chunk behind the pixels; some programs write the name of a JPEG's note before it.
  test.each([1, 6])("WebP whose note asks for orientation %i", (orientation) => {
    for (const named of ["", "Exif\0\0"]) {
      const body = [...Buffer.from(named, "latin1"), ...tiff(orientation, true)];
      const webp = bytes(
        ["RIFF", [0, 0, 0, 0], "WEBP", "VP8X", [10, 0, 0, 0], [8, 0, 0, 0]].flatMap((part) =>
          typeof part === "string" ? [...Buffer.from(part, "latin1")] : part,
        ),
        [0xaf, 0x04, 0, 0x1f, 0x03, 0],
        [...Buffer.from("ALPH", "latin1"), 3, 0, 0, 0, 7, 7, 7, 0],
        [...Buffer.from("EXIF", "latin1"), body.length, 0, 0, 0, ...body],
      );
      expect(pictureSize(webp)).toMatchObject(
        orientation === 6
          ? { kind: "refused", works: expect.stringContaining("Turn it") }
          : { kind: "picture", width: 1200, height: 800 },
      );
    }
  });
});

const POINTS =
  "[{ in-picture: [10, 470], on-panel: [0, 0] }, { in-picture: [630, 470], on-panel: [90, 0] }, { in-picture: [630, 9], on-panel: [90, 50] }, { in-picture: [10, 9], on-panel: [0, 50] }]";

const found = (
  points: string,
  binaries: ReadonlyMap<string, Uint8Array | null>,
): readonly string[] => {
  const { panel } = readPanel(`photo: { file: ../old.png, points: ${points} }`);
  if (panel === null) throw new Error("it was not read");
  return photoFindings(panel, binaries).map(({ code, message }) => `${code} ${message}`);
};

describe("the photograph of a panel", () => {
  const WHOLE = new Uint8Array(blackPng(640, 480));

  test("is looked for below the root, from the panel's own folder", () => {
    expect(found(POINTS, new Map([["old.png", WHOLE]]))).toEqual([]);
    expect(found(POINTS, new Map())).toEqual([
      expect.stringMatching(/^layout\/photo-missing .*old\.png is not there/),
    ]);
    // Whoever could not read it has said so.
    expect(found(POINTS, new Map([["old.png", null]]))).toEqual([]);
  });

  test("is told of where its data are cut off or altered, and only there", () => {
    const told = (png: Uint8Array): readonly string[] => found(POINTS, new Map([["old.png", png]]));
    expect(told(WHOLE)).toEqual([]);
    // Something behind the end is no part of the picture.
    expect(told(Uint8Array.from([...WHOLE, 1, 2, 3]))).toEqual([]);
    for (const left of [33, 40, 60, WHOLE.length - 12, WHOLE.length - 1])
      expect(told(WHOLE.slice(0, left))).toEqual([
        expect.stringMatching(
          new RegExp(`^layout/photo-picture old\\.png .* cut off: it has ${left} bytes, and `),
        ),
      ]);
    // 8 bytes of signature, 25 of the head: the data of the pixels begin at 33, their contents at 41.
    const altered = WHOLE.with(45, (WHOLE[45] ?? 0) ^ 1);
    expect(told(altered)).toEqual([
      expect.stringMatching(/ do not agree with their check from byte 33 on \(chunk IDAT\)/),
    ]);
  });

  // ITU-T T.81, B.2.1: segments with their lengths, a scan whose FF is followed by 00 (B.1.1.5) and whose intervals end with
  // RST (E.1.4), another scan, and the end. A preview within a note (Exif 2.32, 4.5.7) has an end of its own.
  test("is told of where a JPEG ends before its end, and only there", () => {
    const preview = [0xff, 0xe1, 0, 8, 0xff, 0xd8, 0xff, 0xd9, 0, 0];
    const frame = [0xff, 0xc0, 0, 11, 8, 0x01, 0xe0, 0x02, 0x80, 1, 1, 0x11, 0];
    const scan = [0xff, 0xda, 0, 8, 1, 1, 0, 0, 63, 0];
    const coded = [0x12, 0xff, 0x00, 0x34, 0xff, 0xd0, 0x56, 0xff, 0xff, 0xd1, 0x78];
    const head = [0xff, 0xd8, ...preview, ...frame, ...TABLE];
    const jpeg = bytes(head, scan, coded, TABLE, scan, coded, [0xff, 0xff, 0xd9]);
    const told = (one: Uint8Array): readonly string[] => found(POINTS, new Map([["old.png", one]]));
    expect(told(jpeg)).toEqual([]);
    expect(told(bytes([...jpeg], [0, 1, 2]))).toEqual([]);
    for (let left = head.length; left < jpeg.length; left += 1)
      expect(told(jpeg.slice(0, left))).toEqual([
        expect.stringMatching(
          new RegExp(
            `^layout/photo-picture old\\.png .* cut off: it has ${left} bytes, and the mark`,
          ),
        ),
      ]);
    const table = head.length - TABLE.length;
    expect(told(jpeg.with(table, 0x00))).toEqual([
      expect.stringContaining(`altered from byte ${table} on: no marker stands there`),
    ]);
  });

  test("has its marks within it", () => {
    const beyond = POINTS.replace("[630, 9]", "[641, 9]");
    expect(found(beyond, new Map([["old.png", WHOLE]]))).toEqual([
      expect.stringMatching(
        /^layout\/photo-picture point 3 of the photograph lies at \[641, 9\], 1 pixel beyond .*old\.png, which is 640 by 480 pixels/,
      ),
    ]);
    const { panel } = readPanel(`photo: { file: ../old.png, points: ${beyond} }`);
    const [one] = panel === null ? [] : photoFindings(panel, new Map([["old.png", WHOLE]]));
    expect(one).toMatchObject({
      measured: { value: 641, unit: "pixels" },
      limit: { value: 640, unit: "pixels" },
    });
  });
});
