// A file with bodies in it, seen in space as it was read back. A large one takes its time to be read, by a worker that ends when
// it is given up or another file is looked at. What draws it is loaded when the first one is looked at.

import type { JSX } from "preact";
import { useEffect, useRef, useState } from "preact/hooks";
import type { PackFile } from "../../src/pack/pack-file.ts";
import { latinKey } from "../panel/latin-key.ts";
import { NearButtons } from "./near-buttons.tsx";
import type { SolidKind } from "./read-solids.ts";
import type { ShownSolids, SolidReply, SolidRequest, SolidStep } from "./solid.worker.ts";
import type { SolidStage } from "./solid-stage.ts";

type Reading =
  /** `step` is null until the bodies are read and counted. */
  | { readonly kind: "reading"; readonly step: SolidStep | null }
  | { readonly kind: "read"; readonly solids: ShownSolids }
  | { readonly kind: "given-up" }
  | { readonly kind: "failed"; readonly why: string };

export function SolidPreview(props: {
  readonly file: PackFile;
  readonly kind: SolidKind;
}): JSX.Element {
  const { file, kind } = props;
  const [now, setNow] = useState<Reading>(BEGUN);
  const [isWanted, setWanted] = useState(true);
  const [isDrawn, setDrawn] = useState(false);
  useEffect(() => {
    if (!isWanted) {
      setNow({ kind: "given-up" });
      return;
    }
    setNow(BEGUN);
    setDrawn(false);
    const worker = new Worker(new URL("./solid.worker.ts", import.meta.url), { type: "module" });
    worker.onmessage = ({ data }: MessageEvent<SolidReply>) => {
      if (data.kind === "step") setNow({ kind: "reading", step: data.step });
      else {
        setNow({ kind: "read", solids: data.solids });
        worker.terminate();
      }
    };
    worker.onerror = ({ message }) => setNow({ kind: "failed", why: message });
    const request: SolidRequest = { kind, file };
    worker.postMessage(request);
    return () => worker.terminate();
  }, [kind, file, isWanted]);
  return (
    <div class="solid-preview">
      {(now.kind === "reading" || (now.kind === "read" && !isDrawn)) && (
        <Doing path={file.path} now={now} giveUp={() => setWanted(false)} />
      )}
      {now.kind === "given-up" && (
        <p>
          {file.path} was not read.{" "}
          <button type="button" class="act" onClick={() => setWanted(true)}>
            Read it
          </button>
        </p>
      )}
      {now.kind === "failed" && <p role="alert">The program itself has failed: {now.why}</p>}
      {now.kind === "read" && (
        <Shown
          path={file.path}
          solids={now.solids}
          isDrawn={isDrawn}
          drawn={() => setDrawn(true)}
        />
      )}
    </div>
  );
}

const BEGUN: Reading = { kind: "reading", step: null };

/** One line from the first byte to the picture: each step begun anew would wait its half second before it is shown. */
function Doing(props: {
  readonly path: string;
  readonly now: Extract<Reading, { readonly kind: "reading" | "read" }>;
  readonly giveUp: () => void;
}): JSX.Element {
  const { path, now, giveUp } = props;
  const step = now.kind === "reading" ? now.step : null;
  return (
    <p class="making">
      {step === null ? (
        <progress aria-label="Working on the file" />
      ) : (
        <progress aria-label="Working on the file" value={step.done} max={step.of} />
      )}
      <span role="status">{doingWords(path, now)}</span>
      {now.kind === "reading" && (
        <button type="button" class="act" onClick={giveUp}>
          Give it up
        </button>
      )}
    </p>
  );
}

const doingWords = (
  path: string,
  now: Extract<Reading, { readonly kind: "reading" | "read" }>,
): string => {
  if (now.kind === "read") return `Drawing ${path} …`;
  if (now.step === null) return `Reading ${path} …`;
  return `Finding the edges of ${path}, ${now.step.done} of ${now.step.of} bodies …`;
};

function Shown(props: {
  readonly path: string;
  readonly solids: ShownSolids;
  readonly isDrawn: boolean;
  readonly drawn: () => void;
}): JSX.Element {
  const { path, solids, isDrawn, drawn } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  const stage = useRef<SolidStage | null>(null);
  useEffect(() => {
    let isGone = false;
    let size: ResizeObserver | null = null;
    void import("./solid-stage.ts").then(({ solidStage }) => {
      if (isGone || canvas.current === null) return;
      const isDark = matchMedia("(prefers-color-scheme: dark)").matches;
      const isPlain = new URLSearchParams(location.search).get("picture") === "plain";
      const made = solidStage(canvas.current, solids, { isDark, isPlain });
      stage.current = made;
      size = new ResizeObserver(() => made.resize());
      size.observe(canvas.current);
      made.resize();
      // Behind its first picture.
      requestAnimationFrame(drawn);
    });
    return () => {
      isGone = true;
      size?.disconnect();
      stage.current?.dispose();
      stage.current = null;
    };
  }, [solids]);
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
      {isDrawn && <p>{[...solids.words, ...undrawnWords(solids.undrawn)].join(" ")}</p>}
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
