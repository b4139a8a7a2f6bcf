import { unzlibSync } from "fflate";
import { expect, test } from "vitest";
import { solidPicture } from "../../src/drawings/solid-picture.ts";
import { pngFile } from "../../src/export/png.ts";
import { circle, point } from "../../src/geometry/contour.ts";
import { extent } from "../../src/geometry/extent.ts";
import { mm } from "../../src/geometry/quantity.ts";
import { rectangle } from "../../src/geometry/shapes.ts";
import { meshSolid } from "../../src/geometry/solid/mesh-solid.ts";
import { solidRegion } from "../../src/geometry/solid/solid.ts";
import { openKernel } from "../support/kernel.ts";

const SIZE = { width: 240, height: 180 };

/** A plate with a hole through its middle. */
const plate = async (hole: number): Promise<ReturnType<typeof meshSolid>> => {
  const region = { outline: rectangle(extent(0, 0, 60, 60)), holes: [circle(point(30, 30), hole)] };
  const layers = [{ from: mm(0), to: mm(4), regions: [solidRegion(region)] }];
  return meshSolid({ kind: "layered", layers }, await openKernel());
};

const pixelAt = (rgb: Uint8Array, x: number, y: number): readonly number[] => [
  ...rgb.subarray(3 * (y * SIZE.width + x), 3 * (y * SIZE.width + x) + 3),
];

test("a hole shows the paper behind it, and the plate round it hides the paper", async () => {
  const mesh = await plate(18);
  const { rgb } = solidPicture([{ mesh, colour: [90, 100, 110] }], SIZE);
  const paper = pixelAt(rgb, 2, 2);
  expect(pixelAt(rgb, SIZE.width / 2, SIZE.height / 2 + 6)).toEqual(paper);
  expect(pixelAt(rgb, SIZE.width / 2 + 60, SIZE.height / 2)).not.toEqual(paper);
});

test("what lies behind stays hidden, whatever is drawn first", async () => {
  const near = await plate(1);
  const far = {
    ...near,
    positions: near.positions.map((value, at) => (at % 3 === 2 ? value - 20 : value)),
  };
  const one = { mesh: near, colour: [90, 100, 110] } as const;
  const other = { mesh: far, colour: [200, 40, 40] } as const;
  const options = { ...SIZE, side: "front" } as const;
  const there = solidPicture([one, other], options);
  const back = solidPicture([other, one], options);
  expect(back.rgb).toEqual(there.rgb);
});

test("the PNG holds exactly the picture's pixels (W3C PNG, filter type 1 undone by hand)", async () => {
  const raster = solidPicture([{ mesh: await plate(12), colour: [90, 100, 110] }], SIZE);
  const png = pngFile(raster);
  const view = new DataView(png.buffer);
  expect([...png.subarray(0, 8)]).toEqual([137, 80, 78, 71, 13, 10, 26, 10]);
  expect([view.getUint32(16), view.getUint32(20)]).toEqual([SIZE.width, SIZE.height]);
  const length = view.getUint32(33);
  const rows = unzlibSync(png.subarray(41, 41 + length));
  const stride = 3 * SIZE.width;
  const read = new Uint8Array(raster.rgb.length);
  for (let row = 0; row < SIZE.height; row += 1)
    for (let at = 0; at < stride; at += 1) {
      const left = at < 3 ? 0 : (read[row * stride + at - 3] ?? 0);
      read[row * stride + at] = (rows[row * (stride + 1) + 1 + at] ?? 0) + left;
    }
  expect(read).toEqual(raster.rgb);
});
