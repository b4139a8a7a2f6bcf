// The guided start: a few steps, each of which points at the real control and is done by doing it. It stands in nobody's way,
// takes no keys, and can be left at any step.

import { useSignalEffect } from "@preact/signals";
import type { JSX } from "preact";
import { useEffect } from "preact/hooks";
import { exampleNames } from "../files/examples.ts";
import { GUIDE_STEPS, type GuideStep } from "./guide-steps.ts";
import { endGuide, guideStep, isGuided, openStart } from "./start-state.ts";
import "./start.css";

export function Guide(): JSX.Element | null {
  usePassing();
  useDoing();
  const number = guideStep.value;
  const step = number === null ? undefined : GUIDE_STEPS[number];
  usePointing(step);
  if (number === null || step === undefined) return null;
  // Of a design without findings or console those steps are no steps.
  const there = GUIDE_STEPS.filter(
    (each) => each === step || passed.has(each) || each.isThere() || each.isComing(),
  );
  const place = there.indexOf(step) + 1;
  return (
    <section
      class="guide"
      aria-label="Guided start"
      onKeyDown={(event) => {
        if (event.key === "Escape") endGuide();
      }}
    >
      <p role="status">
        <b>
          {place} of {there.length}: {step.title}
        </b>{" "}
        {step.words}
      </p>
      {number === 0 && exampleNames.value.length > 0 && (
        <p>
          Or begin elsewhere:{" "}
          <button type="button" class="act" onClick={openStart}>
            Examples, a list, your own folder
          </button>
        </p>
      )}
      <p>
        <button type="button" class="act" onClick={next}>
          {place === there.length ? "Done" : "Next"}
        </button>{" "}
        <button type="button" class="act" onClick={endGuide}>
          Leave the guide
        </button>
      </p>
    </section>
  );
}

/** Steps that were shown: they count, whatever has become of what they were about. */
const passed = new Set<GuideStep>();

/** On to the next step that this design has something for. */
function next(): void {
  const now = guideStep.peek();
  if (now === null) return;
  const following = GUIDE_STEPS.findIndex(({ isThere }, index) => index > now && isThere());
  if (following < 0) endGuide();
  else guideStep.value = following;
}

/** From the first step on, once for each that is shown. */
function usePassing(): void {
  useSignalEffect(() => {
    const number = guideStep.value;
    const step = number === null ? undefined : GUIDE_STEPS[number];
    if (number === 0) passed.clear();
    if (step !== undefined) passed.add(step);
  });
}

/** Goes on when the step's deed has been done since it was shown. */
function useDoing(): void {
  useSignalEffect(() => {
    if (!isGuided()) endGuide();
  });
  useSignalEffect(() => {
    const number = guideStep.value;
    const step = number === null ? undefined : GUIDE_STEPS[number];
    if (step === undefined) return;
    const before = startOf(step);
    if (step.state() !== before && step.isDone()) queueMicrotask(next);
  });
}

/** What the step's state was when it was shown, so that an old selection is not taken for a new one. */
let shown: { readonly step: GuideStep; readonly state: unknown } | null = null;

function startOf(step: GuideStep): unknown {
  if (shown?.step !== step) shown = { step, state: step.state() };
  return shown.state;
}

/** How often the page is looked through for what is pointed at: it may come only now, ms. */
const LOOK_MS = 300;

function usePointing(step: GuideStep | undefined): void {
  useEffect(() => {
    if (step === undefined) return;
    const point = (): void => {
      const target = document.querySelector(step.target);
      for (const other of document.querySelectorAll("[data-guided]"))
        if (other !== target) other.removeAttribute("data-guided");
      target?.setAttribute("data-guided", "");
    };
    point();
    const timer = setInterval(point, LOOK_MS);
    return () => {
      clearInterval(timer);
      for (const one of document.querySelectorAll("[data-guided]"))
        one.removeAttribute("data-guided");
    };
  }, [step]);
}
