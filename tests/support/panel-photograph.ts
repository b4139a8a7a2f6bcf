// A photograph of a flat panel with round holes, made by a pinhole camera that looks at it aslant: each pixel is a ray from
// the camera to the panel's plane, so that nothing of the program's own maps is in it. Places: mm from the panel's lower
// left corner, y up; pixels from the picture's upper left corner, y down.

import { deflateSync } from "node:zlib";

export interface Hole {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

export interface Panel {
  readonly width: number;
  readonly height: number;
  readonly holes: readonly Hole[];
}

export interface Camera {
  /** Between its axis and the panel's normal, degrees. */
  readonly slant: number;
  /** From the pinhole to the middle of the panel, mm. */
  readonly distance: number;
  /** About its own axis, degrees. */
  readonly roll: number;
  /** Focal length, in widths of the picture. */
  readonly focal: number;
  /** Of the picture, pixels. */
  readonly width: number;
  readonly height: number;
}

type Triple = readonly [number, number, number];

export interface Photograph {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray<ArrayBuffer>;
  /** Where a place of the panel is seen, in pixels. */
  readonly seen: (x: number, y: number) => { readonly x: number; readonly y: number };
}

/** Grey of a hole, of the panel, and of the table that it lies on. */
const [HOLE, FACE, TABLE] = [20, 230, 120];
/** Rays a pixel, in each direction. */
const RAYS = 3;

export function panelPhotograph(panel: Panel, camera: Camera): Photograph {
  const { width, height } = camera;
  const view = viewOf(panel, camera);
  const data = new Uint8ClampedArray(width * height * 4);
  for (let v = 0; v < height; v += 1)
    for (let u = 0; u < width; u += 1) {
      let sum = 0;
      for (let i = 0; i < RAYS * RAYS; i += 1)
        sum += greyAt(
          panel,
          view.met(u + ((i % RAYS) + 0.5) / RAYS, v + (((i / RAYS) | 0) + 0.5) / RAYS),
        );
      const at = (v * width + u) * 4;
      data.fill(sum / (RAYS * RAYS), at, at + 3);
      data[at + 3] = 255;
    }
  return { width, height, data, seen: view.seen };
}

function greyAt({ width, height, holes }: Panel, [x, y]: readonly [number, number]): number {
  if (x < 0 || y < 0 || x > width || y > height) return TABLE;
  return holes.some((hole) => (x - hole.x) ** 2 + (y - hole.y) ** 2 < hole.radius ** 2)
    ? HOLE
    : FACE;
}

function viewOf(panel: Panel, { slant, distance, roll, focal, width, height }: Camera) {
  const long = focal * width;
  const [s, r] = [(slant * Math.PI) / 180, (roll * Math.PI) / 180];
  const middle: Triple = [panel.width / 2, panel.height / 2, 0];
  // The camera is swung to the right and, half as far, down from straight ahead.
  const way = unit([Math.sin(s), -Math.sin(s) / 2, 0]);
  const back = unit([way[0] * Math.sin(s), way[1] * Math.sin(s), Math.cos(s)]);
  const pinhole = plus(middle, back, distance);
  const forward: Triple = [-back[0], -back[1], -back[2]];
  const level = unit(cross(forward, [0, 1, 0]));
  const plumb = cross(forward, level);
  const right = plus(times(level, Math.cos(r)), plumb, Math.sin(r));
  const down = plus(times(plumb, Math.cos(r)), level, -Math.sin(r));
  const seen = (x: number, y: number) => {
    const to: Triple = [x - pinhole[0], y - pinhole[1], -pinhole[2]];
    const depth = dot(to, forward);
    return {
      x: width / 2 + (long * dot(to, right)) / depth,
      y: height / 2 + (long * dot(to, down)) / depth,
    };
  };
  const met = (u: number, v: number): readonly [number, number] => {
    const ray = plus(plus(times(forward, long), right, u - width / 2), down, v - height / 2);
    const far = -pinhole[2] / ray[2];
    return [pinhole[0] + far * ray[0], pinhole[1] + far * ray[1]];
  };
  return { seen, met };
}

const dot = (a: Triple, b: Triple): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const times = (a: Triple, by: number): Triple => [a[0] * by, a[1] * by, a[2] * by];
const plus = (a: Triple, b: Triple, by: number): Triple => [
  a[0] + by * b[0],
  a[1] + by * b[1],
  a[2] + by * b[2],
];
const unit = (a: Triple): Triple => times(a, 1 / Math.sqrt(dot(a, a)));
const cross = (a: Triple, b: Triple): Triple => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

export interface Seen {
  readonly width: number;
  readonly height: number;
  readonly data: Uint8ClampedArray | readonly number[];
}

/** The middle of what is dark within some pixels of a spot, weighted by how dark it is; pixel middles at one half. */
export function darkMiddle(
  { width, height, data }: Seen,
  about: { readonly x: number; readonly y: number },
  reach: number,
): { readonly x: number; readonly y: number } {
  let [sum, x, y] = [0, 0, 0];
  for (
    let v = Math.max(0, Math.floor(about.y - reach));
    v < Math.min(height, about.y + reach);
    v += 1
  )
    for (
      let u = Math.max(0, Math.floor(about.x - reach));
      u < Math.min(width, about.x + reach);
      u += 1
    ) {
      const dark = Math.max(0, (FACE + HOLE) / 2 - (data[(v * width + u) * 4] ?? FACE));
      sum += dark;
      x += dark * (u + 0.5);
      y += dark * (v + 0.5);
    }
  return { x: x / sum, y: y / sum };
}

/** As PNG (W3C PNG, 5 and 11.2): grey turned to colour, no filter, one block of data. */
export function pngOf({ width, height, data }: Photograph): Buffer {
  const rows = Buffer.alloc(height * (1 + 3 * width));
  for (let v = 0; v < height; v += 1)
    for (let u = 0; u < width; u += 1)
      rows.fill(
        data[(v * width + u) * 4] ?? 0,
        v * (1 + 3 * width) + 1 + 3 * u,
        v * (1 + 3 * width) + 4 + 3 * u,
      );
  return pngFile({ width, height, depth: 8, colours: 2 }, rows);
}

/** A black one, of one bit a pixel: rows begin at whole bytes. */
export function blackPng(width: number, height: number): Buffer {
  const rows = Buffer.alloc(height * (1 + Math.ceil(width / 8)));
  return pngFile({ width, height, depth: 1, colours: 0 }, rows);
}

interface PngHead {
  readonly width: number;
  readonly height: number;
  readonly depth: number;
  readonly colours: number;
}

function pngFile({ width, height, depth, colours }: PngHead, rows: Buffer): Buffer {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([depth, colours, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", head),
    chunk("IDAT", deflateSync(rows)),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

function chunk(name: string, body: Buffer): Buffer {
  const named = Buffer.concat([Buffer.from(name, "latin1"), body]);
  const framed = Buffer.alloc(body.length + 12);
  framed.writeUInt32BE(body.length, 0);
  named.copy(framed, 4);
  framed.writeUInt32BE(crc(named), body.length + 8);
  return framed;
}

/** W3C PNG, annex D. */
function crc(bytes: Buffer): number {
  let value = 0xffffffff;
  for (const byte of bytes) {
    value ^= byte;
    for (let bit = 0; bit < 8; bit += 1)
      value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  }
  return (value ^ 0xffffffff) >>> 0;
}
