// A file with bodies in it, seen in space as it was read back. A large one takes its time to be read, by a worker that ends when
// another file is looked at. What draws it is loaded when the first one is looked at.

import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { latinKey } from "../panel/latin-key.ts";
import { NearButtons } from "./near-buttons.tsx";
import type { SolidKind } from "./read-solids.ts";
import type { SolidReply, SolidRequest } from "./solid.worker.ts";
import type { SolidStage } from "./solid-stage.ts";

type Reading =
  | { readonly kind: "reading" }
  | { readonly kind: "read"; readonly reply: SolidReply }
  | { readonly kind: "failed"; readonly why: string };

export function SolidPreview(props: {
  readonly file: PackFile;
  readonly kind: SolidKind;
}): JSX.Element {
  const { file, kind } = props;
  const [now, setNow] = useState<Reading>({ kind: "reading" });
  useEffect(() => {
    setNow({ kind: "reading" });
    const worker = new Worker(new URL("./solid.worker.ts", import.meta.url), { type: "module" });
    worker.onmessage = ({ data }: MessageEvent<SolidReply>) => {
      setNow({ kind: "read", reply: data });
      worker.terminate();
    };
    worker.onerror = ({ message }) => setNow({ kind: "failed", why: message });
    const request: SolidRequest = { kind, file };
    worker.postMessage(request);
    return () => worker.terminate();
  }, [kind, file]);
  return (
    <div class="solid-preview">
      {now.kind === "reading" && (
        <p class="making">
          <progress aria-label="Reading the file" />
          <span role="status">Reading {file.path} …</span>
        </p>
      )}
      {now.kind === "failed" && <p role="alert">The program itself has failed: {now.why}</p>}
      {now.kind === "read" && <ShownSolids path={file.path} reply={now.reply} />}
    </div>
  );
}

function ShownSolids(props: { readonly path: string; readonly reply: SolidReply }): JSX.Element {
  const { path, reply } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  const stage = useRef<SolidStage | null>(null);
  useEffect(() => {
    let isGone = false;
    let size: ResizeObserver | null = null;
    void import("./solid-stage.ts").then(({ solidStage }) => {
      if (isGone || canvas.current === null) return;
      const isDark = matchMedia("(prefers-color-scheme: dark)").matches;
      const isPlain = new URLSearchParams(location.search).get("picture") === "plain";
      const made = solidStage(canvas.current, reply.bodies, { isDark, isPlain });
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
  }, [reply]);
  return (
    <>
      <div class="solid-view">
        <Turning path={path} now={() => stage.current}>
          <canvas ref={canvas} />
        </Turning>
        <NearButtons
          isWhole={false}
          isNearest={false}
          go={(direction) => go(stage.current, direction)}
        />
      </div>
      <p>{[...reply.words, ...undrawnWords(reply.undrawn)].join(" ")}</p>
    </>
  );
}

const go = (stage: SolidStage | null, direction: -1 | 0 | 1): void => {
  if (direction === 0) stage?.whole();
  else stage?.nearer(NEARER ** direction);
};

const undrawnWords = (undrawn: number): readonly string[] => {
  if (undrawn === 0) return [];
  const faces = undrawn === 1 ? "One face is" : `${undrawn} faces are`;
  return [`${faces} shown by the edges alone.`];
};

function Turning(props: {
  readonly path: string;
  readonly now: () => SolidStage | null;
  readonly children: JSX.Element;
}): JSX.Element {
  const { path, now, children } = props;
  return (
    <div
      class="solid-stage"
      role="application"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: it is turned by keys.
      tabIndex={0}
      aria-label={`${path} in space: arrow keys turn it, plus and minus bring it nearer or farther, 0 shows all of it`}
      onKeyDown={(event) => {
        const stage = now();
        const act = stage === null ? undefined : keyActs(stage).get(latinKey(event));
        if (act === undefined) return;
        event.preventDefault();
        act();
      }}
      onPointerDown={(event) => event.currentTarget.setPointerCapture(event.pointerId)}
      onPointerMove={(event) => {
        if (event.buttons === 0) return;
        now()?.turn(-event.movementX / PIXELS, event.movementY / PIXELS);
      }}
      onWheel={(event) => {
        event.preventDefault();
        now()?.nearer(event.deltaY < 0 ? NEARER : 1 / NEARER);
      }}
    >
      {children}
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
    ["0", stage.whole],
  ]);
