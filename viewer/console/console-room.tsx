// The console as a room of the page: the picture, and beside it what works on it. Loaded only when a console is opened.

import type { JSX } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { ConsoleFit } from "./console-fit.tsx";
import { takeHands } from "./console-hands.ts";
import { ConsolePicture } from "./console-picture.ts";
import { PanelReadout } from "./console-readout.tsx";
import {
  buildAgain,
  followDesign,
  giveUpBuilding,
  giveUpTrueShapes,
  hand,
  isFramed,
  look,
  opening,
  said,
  scene,
  trueShapes,
  wanted,
} from "./console-state.ts";
import { ConsoleTools } from "./console-tools.tsx";
import { followPointer } from "./finding-pointer.ts";
import { cancelDrag, followChosen } from "./panel-drag.ts";
import { PictureKey } from "./picture-key.tsx";
import { shownPicture } from "./shown-picture.ts";
import { standingViews } from "./standing-views.ts";
import "./console.css";

export function ConsoleRoom(): JSX.Element {
  const canvas = useRef<HTMLCanvasElement>(null);
  const labels = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (canvas.current === null || labels.current === null) return;
    return hung({ canvas: canvas.current, labels: labels.current });
  }, []);
  return (
    <section class="console" aria-label="Console">
      <ConsoleTools />
      <div class={`console-picture hand-${hand.value}`}>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: the picture is turned, measured and worked on by keys. */}
        <div class="stage" role="application" tabIndex={0} aria-label={pictureName()}>
          <canvas ref={canvas} />
        </div>
        <div ref={labels} class="console-labels" aria-hidden="true" />
        {hand.value === "measure" && <span class="cross" aria-hidden="true" />}
        <OpeningWords />
        <ShapingWords />
      </div>
      <PictureKey />
      <p class="console-said" role="log" aria-label="What happened">
        {said.value}
      </p>
    </section>
  );
}

/** What stands beside the picture: the panels, the chosen one, the fit. */
export function ConsoleSide(): JSX.Element {
  return (
    <div class="console-side">
      <PanelReadout />
      <ConsoleFit />
    </div>
  );
}

const pictureName = (): string => {
  const keys = {
    look: "arrow keys turn it, with shift they shift it, plus and minus bring it nearer or farther",
    move: "arrow keys move the chosen panel by a module, Enter writes it, Escape puts it back",
    measure: "arrow keys turn it, Enter takes the place under the cross",
  }[hand.value];
  return `${scene.value?.title ?? "The console"} as a picture: ${keys}`;
};

function OpeningWords(): JSX.Element | null {
  const now = opening.value;
  switch (now.kind) {
    case "open":
      return null;
    case "reading":
      return (
        <p class="console-opening">
          Building the console …{" "}
          <button type="button" class="act" onClick={giveUpBuilding}>
            Give it up
          </button>
        </p>
      );
    case "given-up":
      return (
        <p class="console-opening">
          The console was not built.{" "}
          <button type="button" class="act" onClick={buildAgain}>
            Build it
          </button>
        </p>
      );
    case "none":
      return <p class="console-opening">No console could be laid out: see the findings.</p>;
    case "failed":
      return <p class="console-opening">The program itself has failed: {now.why}</p>;
  }
}

function ShapingWords(): JSX.Element | null {
  const now = trueShapes.value;
  if (now.kind !== "asked") return null;
  const { step } = now;
  return (
    <p class="console-shaping">
      True shapes of prints
      {step === null || step.done === 0 ? (
        <progress aria-label="Working out true shapes" />
      ) : (
        <progress aria-label="Working out true shapes" value={step.done} max={step.of} />
      )}
      {step !== null && `${step.done} of ${step.of}, ${step.words} …`}
      <button type="button" onClick={giveUpTrueShapes}>
        Give them up
      </button>
    </p>
  );
}

/** Without smoothing where the address asks for it: for drawing by software. */
const isPlain = (): boolean => new URLSearchParams(location.search).get("picture") === "plain";

const isStill = (): boolean => matchMedia("(prefers-reduced-motion: reduce)").matches;

const hung = (on: {
  readonly canvas: HTMLCanvasElement;
  readonly labels: HTMLElement;
}): (() => void) => {
  const { canvas, labels } = on;
  const picture = new ConsolePicture({ canvas, labels, plain: isPlain(), isStill });
  shownPicture.value = picture;
  const size = new ResizeObserver(() => picture.resize());
  size.observe(canvas);
  picture.resize();
  const night = matchMedia("(prefers-color-scheme: dark)");
  const toNight = (): void => {
    look.value = { ...look.value, dark: night.matches };
  };
  night.addEventListener("change", toNight);
  toNight();
  // Wherever the focus is: what is held is put back.
  const toBack = (event: KeyboardEvent): void => {
    if (event.key === "Escape") cancelDrag();
  };
  document.addEventListener("keydown", toBack);
  isFramed.value = false;
  const stops = [
    scene.subscribe((next) => {
      if (next === null) return;
      picture.show(next);
      if (isFramed.peek()) return;
      isFramed.value = true;
      const first = standingViews(next, picture.opening(), look.peek())[0];
      if (first !== undefined) picture.goTo(first.goal);
    }),
    look.subscribe((next) => picture.look(next)),
    wanted.subscribe((goal) => {
      if (goal !== null) picture.goTo(goal, !isStill());
    }),
    followDesign(),
    followPointer(),
    followChosen(),
    takeHands(canvas, picture),
  ];
  return () => {
    for (const stop of stops) stop();
    night.removeEventListener("change", toNight);
    document.removeEventListener("keydown", toBack);
    size.disconnect();
    shownPicture.value = null;
    wanted.value = null;
    picture.dispose();
  };
};
