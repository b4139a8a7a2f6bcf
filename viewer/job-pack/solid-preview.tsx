// A print file in space, as it was read back. What draws it is loaded when the first one is looked at.

import type { JSX } from "preact";
import { useEffect, useMemo, useRef } from "preact/hooks";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { type SolidKind, solidMeshes } from "./solid-meshes.ts";
import type { SolidStage } from "./solid-stage.ts";

interface SolidShown {
  readonly file: PackFile;
  readonly kind: SolidKind;
  readonly files: readonly PackFile[];
}

export function SolidPreview(props: SolidShown): JSX.Element {
  const { file, kind, files } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  const stage = useRef<SolidStage | null>(null);
  const read = useMemo(() => solidMeshes(kind, file, files), [kind, file, files]);
  useEffect(() => {
    let isGone = false;
    let size: ResizeObserver | null = null;
    void import("./solid-stage.ts").then(({ solidStage }) => {
      if (isGone || canvas.current === null) return;
      const isDark = matchMedia("(prefers-color-scheme: dark)").matches;
      const isPlain = new URLSearchParams(location.search).get("picture") === "plain";
      const made = solidStage(canvas.current, read.bodies, { isDark, isPlain });
      stage.current = made;
      size = new ResizeObserver(() => made.resize());
      size.observe(canvas.current);
      made.resize();
    });
    return () => {
      isGone = true;
      size?.disconnect();
      stage.current?.dispose();
      stage.current = null;
    };
  }, [read]);
  return (
    <div class="solid-preview">
      <div
        class="solid-stage"
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it is turned by keys.
        tabIndex={0}
        aria-label={`${file.path} in space: arrow keys turn it, plus and minus bring it nearer or farther`}
        onKeyDown={(event) => {
          const now = stage.current;
          const act = now === null ? undefined : keyActs(now).get(event.key);
          if (act === undefined) return;
          event.preventDefault();
          act();
        }}
        onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
        onPointerMove={(event) => {
          if (event.buttons === 0) return;
          stage.current?.turn(-event.movementX / PIXELS, event.movementY / PIXELS);
        }}
        onWheel={(event) => {
          event.preventDefault();
          stage.current?.nearer(event.deltaY < 0 ? NEARER : 1 / NEARER);
        }}
      >
        {/* A canvas keeps its drawing to itself: another file gets another one. */}
        <canvas ref={canvas} key={file.path} />
      </div>
      <p>{read.words}</p>
    </div>
  );
}

/** Of the pointer, for a step of a key. */
const PIXELS = 25;
const NEARER = 1.2;

const keyActs = (stage: SolidStage): ReadonlyMap<string, () => void> =>
  new Map([
    ["ArrowLeft", () => stage.turn(-1, 0)],
    ["ArrowRight", () => stage.turn(1, 0)],
    ["ArrowUp", () => stage.turn(0, 1)],
    ["ArrowDown", () => stage.turn(0, -1)],
    ["+", () => stage.nearer(NEARER)],
    ["-", () => stage.nearer(1 / NEARER)],
  ]);
